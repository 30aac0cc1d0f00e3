/** How wide a ring gap must be: by the ring maker's factor, and as the sheet prints it. */
import { GAP_TABLES, gapByFactor } from '../../calc/cylinder/index.js';
import type { Stated, Window } from '../../engine/index.js';
import type { Length, Ratio } from '../../quantity/index.js';
import type { Assessment, Place } from '../model.js';
import { limitAt, origin, placesOf } from './decision.js';
import { finishedBore } from './finished-bore.js';
import type { LengthWords } from './length-words.js';

export type GapRing = 'top' | 'second' | 'oil';
export const gapProperty = (ring: GapRing): string => `ring-gap-${ring}.gap`;

export interface GapTarget {
  readonly place: Place;
  readonly window: Window<number>;
}
/** One rule for all cylinders, with where it comes from. */
export interface GapRule {
  readonly id: 'factor' | 'printed';
  readonly words: string;
  readonly from: string;
  readonly targets: readonly GapTarget[];
  /** What speaks against it beside the other rule. */
  readonly against: readonly string[];
}

const factorOf = ({ engine }: Assessment, ring: GapRing): Stated<Ratio> | undefined =>
  ring === 'oil' ? undefined : engine.machining?.ringGapFactor?.[ring];

/** Printed gap of the sheet for each cylinder; undefined where it prints none for some. */
function printedRule(assessment: Assessment, ring: GapRing, words: LengthWords): GapRule | undefined {
  const places = placesOf(assessment, `ring-gap-${ring}`);
  const targets = places.flatMap((place) => {
    const asked = limitAt(assessment, gapProperty(ring), place.id, 'new');
    return asked === undefined ? [] : [{ place, asked }];
  });
  const [first] = targets;
  if (first === undefined || targets.length < places.length) return undefined;
  return {
    id: 'printed',
    words: `File into the printed gap, ${words.window(first.asked.window)}`,
    from: origin(first.asked.limit),
    targets: targets.map(({ place, asked }) => ({ place, window: asked.window })),
    against: [],
  };
}

/**
 * Smallest gap by factor and bore for each cylinder, with the printed largest gap above it where there is room. Undefined without a
 * factor or where a bore is not known. Source: `gapByFactor`.
 */
function factorRule(assessment: Assessment, ring: GapRing, words: LengthWords): GapRule | undefined {
  const factor = factorOf(assessment, ring);
  const places = placesOf(assessment, `ring-gap-${ring}`);
  if (factor === undefined) return undefined;
  const found = places.flatMap((place) => {
    const bore = finishedBore(assessment, place);
    if (bore === undefined) return [];
    const printed = limitAt(assessment, gapProperty(ring), place.id, 'new')?.window;
    return [{ place, low: gapByFactor(bore.value as Length, factor.value) as number, printed }];
  });
  if (found.length < places.length) return undefined;
  return {
    id: 'factor',
    words: `File to the factor ${factor.text} of the bore`,
    from: factor.from.text,
    targets: found.map(({ place, low, printed }) => ({
      place,
      window: { low, ...(printed?.high !== undefined && printed.high > low ? { high: printed.high } : {}) },
    })),
    against: found.flatMap(({ place, low, printed }) => againstPrinted(place, low, printed, words)).slice(0, 1),
  };
}

function againstPrinted(place: Place, low: number, printed: Window<number> | undefined, words: LengthWords) {
  if (printed?.low !== undefined && low < printed.low)
    return [`${words.length(low)} for ${place.name} is less than the sheet prints (${words.window(printed)})`];
  if (printed?.high !== undefined && low > printed.high)
    return [`${words.length(low)} for ${place.name} is more than the sheet prints (${words.window(printed)})`];
  return [];
}

/** Rules for a ring, the one that contradicts nothing first; of two that contradict each other the printed gap. */
export function gapRules(assessment: Assessment, ring: GapRing, words: LengthWords): readonly GapRule[] {
  const factor = factorRule(assessment, ring, words);
  const printed = printedRule(assessment, ring, words);
  const order = factor && factor.against.length > 0 ? [printed, factor] : [factor, printed];
  return order.flatMap((rule) => rule ?? []);
}

const wider = (top: number, second: number): string => (second < top ? 'smaller' : second > top ? 'larger' : 'equal');

/**
 * Whether the second gap is to be smaller or larger than the top one: what the factors and the printed gaps of this sheet say where
 * they differ, and that tables in print differ too. Shown, never settled here.
 */
export function gapConflicts(assessment: Assessment, words: LengthWords): readonly string[] {
  const [top, second] = [factorOf(assessment, 'top'), factorOf(assessment, 'second')];
  const [place] = placesOf(assessment, 'ring-gap-top');
  if (place === undefined) return [];
  const printed = (ring: GapRing) => limitAt(assessment, gapProperty(ring), place.id, 'new')?.window.low;
  const [printedTop, printedSecond] = [printed('top'), printed('second')];
  const byFactor = top && second && wider(top.value, second.value);
  const byPrint =
    printedTop === undefined || printedSecond === undefined ? undefined : wider(printedTop, printedSecond);
  const own =
    byFactor !== undefined && byPrint !== undefined && byFactor !== byPrint
      ? [
          `The sheet contradicts itself: by its factors the second gap is ${byFactor} than the top one, by its printed gaps ${byPrint}. Ask the ring maker.`,
        ]
      : [];
  const bore = finishedBore(assessment, place);
  return bore === undefined ? own : [...own, tablesDisagree(bore.value, words)];
}

function tablesDisagree(bore: number, words: LengthWords): string {
  const gap = (factor: number) => words.length(gapByFactor(bore as Length, factor as Ratio));
  const five = GAP_TABLES['five applications'].rows;
  const rows = [
    ['street', five.street],
    ['racing', five.racing],
  ] as const;
  const said = rows.map(
    ([name, { top, second }]) => `${name}: top ${gap(top)}, second ${gap(second)}, ${wider(top, second)}`,
  );
  return `Tables in print do not agree whether the second gap is larger or smaller (rule of thumb for this bore: ${said.join('; ')}). The maker of the ring at hand decides.`;
}
