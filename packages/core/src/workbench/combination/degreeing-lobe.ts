/** One lobe on the screen: which there are, what was read of it, what looks wrong, and where to read next. */
import type { DegreeingAnswer, LobeDegreed, Makeup } from '../../assess/index.js';
import { figure } from '../../assess/index.js';
import { type ValveId, valveKey, valveName, valvesOf } from '../../engine/index.js';
import { type Bench, givenBy } from '../bench.js';
import type { PlaceView } from '../combination-views.js';
import { worstVerdict } from '../finding-view.js';
import type { ShownIn } from '../measure-views.js';
import { degreesText, fromTop, laterText, wheelText } from './degreeing-shown.js';
import type { NextRow, ReadRow } from './degreeing-views.js';
import { keyedWords } from './keyed-words.js';
import { shownQuantity } from './shown.js';

/** Lobes of the engine, each with how far it has grown. */
export function lobeChoices(bench: Bench, answer: DegreeingAnswer): readonly PlaceView[] {
  return valvesOf(bench.engine).map((valve) => {
    const key = valveKey(valve);
    const degreed = answer.lobes.find(({ lobe }) => valveKey(lobe) === key);
    const verdicts = answer.figures.flatMap((one) => (one.valve === key && one.verdict ? [one.verdict] : []));
    return {
      id: key,
      name: valveName(bench.engine, valve),
      value: degreed === undefined ? '' : `${degreed.readings.length} read`,
      ...(degreed && { verdict: worstVerdict(verdicts) }),
    };
  });
}

/** The lobe that is asked for; without a wish the one read last, else the first intake. */
export function chosenLobe(bench: Bench, asked: string | undefined, last: ValveId | undefined): ValveId {
  const valves = valvesOf(bench.engine);
  return (
    valves.find((one) => valveKey(one) === asked) ??
    last ??
    valves.find(({ kind }) => kind === 'intake') ??
    valves[0] ?? { cylinder: 1, kind: 'intake', index: 1 }
  );
}

/** What is known of a lobe, in one line: "21 readings. Middle 107.4° ±0.3° after top, 0.6° earlier than wanted." */
export function lobeWords(lobe: LobeDegreed | undefined, wanted: number | undefined): string {
  if (lobe === undefined) return 'No reading yet. Three on each flank make a curve; more make it surer.';
  const count = `${lobe.readings.length} ${lobe.readings.length === 1 ? 'reading' : 'readings'}.`;
  if (lobe.middle === undefined) return `${count} No middle yet: it takes both flanks.`;
  const { value, u } = lobe.middle;
  const how = lobe.stage === 'whole-lobe' ? '' : ' by equal lifts';
  const sure = u === undefined ? ', how sure is not known without a stop' : ` ±${degreesText(2 * u)}`;
  const against = wanted === undefined ? '' : `, ${laterText(value - wanted)} than wanted`;
  return `${count} Middle${how} ${fromTop(value)}${sure}${against}.`;
}

/** Newest last, as they were read. */
export function readRows(bench: Bench, lobe: LobeDegreed | undefined, shownIn: ShownIn): readonly ReadRow[] {
  if (lobe === undefined) return [];
  const order = new Map([...bench.entries.keys()].map((id, at) => [id, at]));
  const rank = ({ entry }: { readonly entry?: string }) => order.get(entry ?? '') ?? 0;
  return [...lobe.readings]
    .sort((a, b) => rank(a) - rank(b))
    .flatMap((reading): readonly ReadRow[] => {
      const given = givenBy(bench, reading.entry);
      if (given === undefined) return [];
      const suspect = lobe.suspects.find((one) => one.reading === reading);
      return [
        {
          entry: given.entry,
          words: `${keyedWords(bench, given.entry)}; ${fromTop(reading.angle)}`,
          given,
          ...(suspect && {
            wrong: `${shownQuantity('length', Math.abs(suspect.off), shownIn)} ${suspect.off < 0 ? 'below' : 'above'} the curve of the others${suspect.moves === undefined ? '' : `; without it the middle moves by ${degreesText(suspect.moves)}`}`,
          }),
        },
      ];
    });
}

/** Where further readings would help most, the best first. */
export const nextRows = (lobe: LobeDegreed | undefined): readonly NextRow[] =>
  (lobe?.next ?? []).map(({ angle, wheel, why }) => ({
    wheel: wheelText(wheel),
    words: `${fromTop(angle)}: ${why}`,
  }));

/** What the middle of a lobe should be [rad after its own top of overlap]; undefined where nobody says. */
export function wantedMiddle(makeup: Makeup, lobe: ValveId): number | undefined {
  const wanted = figure(makeup, 'centreline-wanted', lobe)?.value;
  if (wanted === undefined) return undefined;
  return (lobe.kind === 'intake' ? wanted : -wanted) - (figure(makeup, 'cam-advance')?.value ?? 0);
}
