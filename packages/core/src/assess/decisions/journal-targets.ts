/** To which size a journal is ground so that the shells of an undersize give the clearance asked for. */
import type { ShellStock } from '../../engine/index.js';
import type { Assessment, Place } from '../model.js';
import type { Group, Position } from './bearings-of.js';
import { limitAt, origin, sizeAt } from './decision.js';
import { clearedJournal } from './fitted-size.js';
import { type Closed, closed, common, middle, moved } from './judged.js';
import type { LengthWords } from './length-words.js';
import { shellText, wallOf } from './shell-walls.js';

export interface JournalTarget {
  readonly journal: Place;
  readonly window: Closed;
  readonly fittedTo?: string;
  readonly how: string;
  readonly shell?: ShellStock;
}

const widthOf = ({ low, high }: Closed): number => high - low;

/**
 * Ground size of every journal of a group for the shells of one undersize [m]: from the measured housing, the printed wall and the
 * clearance asked for, with the grade that leaves the shop most room at the tightest journal; else the printed new journal less the
 * undersize. Undefined where neither is known for every journal.
 */
export function journalTargets(
  assessment: Assessment,
  group: Group,
  positions: readonly Position[],
  journals: readonly Place[],
  shells: readonly ShellStock[],
  words: LengthWords,
): readonly JournalTarget[] | undefined {
  const byShell = shells
    .map((shell) => withShell(assessment, group, positions, journals, shell, words))
    .filter((targets) => targets !== undefined)
    .toSorted((a, b) => tightest(b) - tightest(a))[0];
  return byShell ?? printed(assessment, group, journals, shells[0]?.undersize ?? 0);
}
const tightest = (targets: readonly JournalTarget[]): number =>
  Math.min(...targets.map(({ window }) => widthOf(window)));

function withShell(
  assessment: Assessment,
  group: Group,
  positions: readonly Position[],
  journals: readonly Place[],
  shell: ShellStock,
  words: LengthWords,
): readonly JournalTarget[] | undefined {
  const found = journals.flatMap((journal): readonly JournalTarget[] => {
    const windows = positions
      .filter((one) => one.journal.id === journal.id)
      .map(({ place }) => {
        const asked = limitAt(assessment, group.clearance, place.id, 'new');
        const clearance = asked && closed(asked.window);
        const housing = sizeAt(assessment, `${group.housing}.diameter`, place.id);
        return clearance && housing && clearedJournal(housing.value, wallOf(shell), clearance);
      });
    const known = windows.filter((one) => one !== undefined);
    const shared = known.length === windows.length && known.length > 0 ? common(known) : undefined;
    const window = shared && closed(shared);
    const fittedTo = `its housing and shells ${shellText(shell, words)}`;
    return window ? [{ journal, window, fittedTo, shell, how: 'measured housing − shells − clearance' }] : [];
  });
  return found.length === journals.length ? found : undefined;
}

function printed(
  assessment: Assessment,
  group: Group,
  journals: readonly Place[],
  undersize: number,
): readonly JournalTarget[] | undefined {
  const found = journals.flatMap((journal): readonly JournalTarget[] => {
    const asked = limitAt(assessment, `${group.journal}.diameter`, journal.id, 'new');
    const window = asked && closed(asked.window);
    if (!asked || !window) return [];
    return [
      { journal, window: moved(window, -undersize), how: `printed journal (${origin(asked.limit)}) − undersize` },
    ];
  });
  return found.length === journals.length ? found : undefined;
}

/** One size for the whole group where there is one; a shop grinds all journals of a group alike. */
export function sharedTarget(targets: readonly JournalTarget[]): Closed | undefined {
  const shared = common(targets.map(({ window }) => window));
  return shared && closed(shared);
}
export const aim = (target: JournalTarget, shared: Closed | undefined): number => middle(shared ?? target.window);
