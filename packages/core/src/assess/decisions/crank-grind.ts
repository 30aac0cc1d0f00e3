/** Grinding all journals of a group to one undersize: whether it serves, the order and the shells. */
import { smallestUndersize } from '../../calc/bearings/index.js';
import { inch, type Length } from '../../quantity/index.js';
import type { Alternative, Assessment, Place } from '../model.js';
import { type Group, positionsOf, shellsOf } from './bearings-of.js';
import { blocked, byText, figure, possible } from './decision.js';
import { aim, type JournalTarget, journalTargets, sharedTarget } from './journal-targets.js';
import { type Closed, chanceOfAll, chanceText, SURE, sameLength } from './judged.js';
import type { LengthWords } from './length-words.js';
import type { StationValue } from './measured-at.js';
import { halvesOf, undersizeText } from './shell-walls.js';
import { buysOf, piecesOf, shareOut } from './stock-taken.js';

/** Ground off a journal before it is round and bright. Common practice, no source. */
const USUAL_GRIND = inch(0.002);
export function grindAllowance({ engine }: Assessment): { readonly value: number; readonly from: string } {
  const stated = engine.machining?.journalCleanUp;
  if (stated !== undefined) return { value: stated.value, from: stated.from.text };
  return { value: USUAL_GRIND, from: 'common practice, no source' };
}

export interface WornJournal {
  readonly place: Place;
  readonly smallest: StationValue;
}

export interface Grinding {
  readonly assessment: Assessment;
  readonly group: Group;
  readonly worn: readonly WornJournal[];
  readonly words: LengthWords;
}

export function grindTo({ assessment, group, worn, words }: Grinding, undersize: number): Alternative {
  const named = {
    id: `grind-${Math.round(undersize * 1e6)}`,
    words: `Grind all to ${undersizeText(undersize, words)}`,
  };
  const shells = shellsOf(assessment.engine, group).filter((one) => sameLength(one.undersize, undersize));
  const positions = positionsOf(assessment, group);
  const journals = worn.map(({ place }) => place);
  const targets = journalTargets(assessment, group, positions, journals, shells, words);
  if (targets === undefined) {
    const against = ['The ground size is not known: measure the housings, or state the new journal or the clearance.'];
    return blocked({ ...named, figures: [], verdict: 'no data', against });
  }
  const shared = sharedTarget(targets);
  const allowance = grindAllowance(assessment).value;
  const rooms = worn.map(({ place, smallest: least }, at) => ({
    place,
    known: { value: least.value - allowance - aim(targets[at] as JournalTarget, shared), u: least.u },
  }));
  const tightest = rooms.reduce((a, b) => (b.known.value < a.known.value ? b : a));
  const cleans = worn.every(({ smallest: least }, at) =>
    reaches(least.value, targets[at] as JournalTarget, shared, undersize, allowance),
  );
  const chance = chanceOfAll(rooms.map(({ known }) => ({ known, window: { low: 0 } })));
  const halves = 2 * positions.length;
  const pieces = shells.reduce((sum, shell) => sum + piecesOf(shell), 0);
  const against = [
    ...(cleans ? [] : [`${tightest.place.name} does not clean up: ${words.length(-tightest.known.value)} short.`]),
    ...(pieces < halves ? [`Only ${pieces} halves of this size can be had; ${halves} are needed.`] : []),
  ];
  const figures = [
    figure(
      'Left at the worst journal',
      `${tightest.known.value < 0 ? `${words.length(-tightest.known.value)} short` : words.sure(tightest.known.value, tightest.known.u)}, ${tightest.place.name}`,
    ),
    figure('Chance that all clean up', chanceText(chance)),
    figure('Ground size', groundText(targets, shared, words)),
    figure('From', [...new Set(targets.map(({ how }) => how))].join('; ')),
  ];
  if (against.length > 0) return blocked({ ...named, figures, verdict: 'out', against });
  const own = targets[0]?.shell;
  const taken = shareOut(own === undefined ? shells : [own], halves).map(({ part, count }) =>
    halvesOf(part, count, group.journals, words),
  );
  return possible({
    ...named,
    figures,
    verdict: chance === undefined ? 'no data' : chance >= SURE ? 'in' : 'near',
    against: shared ? [] : ['No one size suits every journal: the shop grinds each to its own.'],
    orders: [orderOf({ assessment, group, worn, words }, undersize, targets, shared)],
    buys: buysOf(taken),
  });
}

/** By `smallestUndersize`, with the size that would be standard for this target. */
function reaches(
  least: number,
  target: JournalTarget,
  shared: Closed | undefined,
  undersize: number,
  allowance: number,
): boolean {
  const standard = aim(target, shared) + undersize;
  return (
    smallestUndersize(standard as Length, [least as Length], allowance as Length, [undersize as Length]) !== undefined
  );
}

function orderOf(
  { assessment, group, words }: Grinding,
  undersize: number,
  targets: readonly JournalTarget[],
  shared: Closed | undefined,
) {
  const finish = assessment.engine.machining?.journalFinish;
  return {
    id: `${group.id}-journals/all`,
    operation: `grind to ${undersizeText(undersize, words)} and polish`,
    part: `crankshaft, ${group.journals}`,
    property: `${group.journal}.diameter`,
    places: targets.map(({ journal }) => journal.id),
    measured: 'length' as const,
    ...(shared && { target: shared }),
    targets: targets.map(({ journal, window, fittedTo }) => ({
      place: journal.id,
      window: shared ?? window,
      ...(fittedTo === undefined ? {} : { fittedTo }),
    })),
    ...(finish === undefined ? {} : { finish }),
    notes: ['Keep the fillet radius. Measure the shells that will go in before the last cut.'],
  };
}

function groundText(targets: readonly JournalTarget[], shared: Closed | undefined, words: LengthWords): string {
  if (shared) return words.window(shared);
  return byText(targets.map(({ journal, window }) => ({ place: journal, text: words.window(window) })));
}
