import { type Length, type Outcome, refused } from '../../quantity/index.js';
import { toNm } from './nanometres.js';
import { leastTotal, type NoAssignment, smallestSpread, smallestWorst } from './table-assignment.js';
import type { ClearanceWindow } from './types.js';

export const GOALS = ['least-total', 'smallest-worst', 'least-spread'] as const;
/** What shall be small: the sum of the deviations, the largest one, or largest less smallest fit. */
export type Goal = (typeof GOALS)[number];

export interface PartsInput {
  /** Sizes of the places: bores, housings. */
  readonly places: readonly Length[];
  /** Sizes of the parts that go into them; those left over stay on the bench. */
  readonly parts: readonly Length[];
  /** Place less part wanted: the clearance, or below zero an interference. */
  readonly target: Length;
  readonly window: ClearanceWindow;
  /** Fits accepted at each place, where they differ from place to place; left out: `window` at all. */
  readonly windows?: readonly ClearanceWindow[];
  readonly goal: Goal;
}
/** Part of each place, counted from 0, and the fits that follow. */
export interface PartsPlan {
  readonly partOf: readonly number[];
  readonly fits: readonly Length[];
  /** Sum of the absolute deviations from the target. */
  readonly total: Length;
  /** Largest absolute deviation from the target. */
  readonly worst: Length;
  /** Largest less smallest fit. */
  readonly spread: Length;
  /** Places that would be short of parts if the worst had to be smaller; only with that goal. */
  readonly short?: { readonly places: readonly number[]; readonly parts: readonly number[] };
}
/** Places that may take too few parts between them, both counted from 0. */
export interface NoPartsPlan {
  readonly code: 'no-parts-plan';
  readonly places: readonly number[];
  readonly parts: readonly number[];
}

/** Fits in nanometres; one that is not accepted is infinite. */
function fitTable({ places, parts, window, windows }: PartsInput): readonly (readonly number[])[] {
  return places.map((place, at) => {
    const own = windows?.[at] ?? window;
    const low = own.low === undefined ? Number.NEGATIVE_INFINITY : toNm(own.low);
    const high = own.high === undefined ? Number.MAX_VALUE : toNm(own.high);
    return parts.map((part) => {
      const fit = toNm(place - part);
      return low <= fit && fit <= high ? fit : Number.POSITIVE_INFINITY;
    });
  });
}

function planOf(input: PartsInput, partOf: readonly number[], short?: PartsPlan['short']): PartsPlan {
  const fits = partOf.map((part, place) => (input.places[place]! - input.parts[part]!) as Length);
  const deviations = fits.map((fit) => Math.abs(fit - input.target));
  return {
    partOf,
    fits,
    total: deviations.reduce((sum, one) => sum + one, 0) as Length,
    worst: Math.max(...deviations) as Length,
    spread: (Math.max(...fits) - Math.min(...fits)) as Length,
    ...(short && { short }),
  };
}

const noPlan = ({ rows, columns }: NoAssignment): NoPartsPlan => ({
  code: 'no-parts-plan',
  places: rows,
  parts: columns,
});

/**
 * Which part goes where, so that the fits are best.
 *
 *   fit = place - part;  least-total: Σ|fit - target|;  smallest-worst: max |fit - target|;  least-spread: max fit - min fit
 *
 * | symbol | argument  | unit | meaning                                                     |
 * |--------|-----------|------|-------------------------------------------------------------|
 * | place  | `places`  | m    | size of each place, 1 to 100 of them                        |
 * | part   | `parts`   | m    | size of each part                                           |
 * | target | `target`  | m    | fit wanted; with least-spread it decides among equals only  |
 * |        | `window`  | m    | fits accepted, ends included; open where left out           |
 * |        | `windows` | m    | the same for each place, where a maker treats places apart  |
 *
 * Fits are compared in whole nanometres. Of plans equal in the goal, the one with the least total deviation (for
 * least-spread the one between the same two fits). The answer is the exact optimum over all ways, of which 8 parts have 40 320.
 * Refuses with `no-parts-plan` when not every place can have a part inside the window: the places named may take only
 * the parts named, which are fewer.
 * Example: bores 80.010, 80.020 and pistons 79.970, 79.980 mm, target 0.040 mm: 79.970 and 79.980, total 0.
 * Source: `leastTotal`, `smallestWorst`, `smallestSpread`; with as many parts as places the order of size, derived.
 */
export function partsToPlaces(input: PartsInput): Outcome<PartsPlan, NoPartsPlan> {
  const alike = input.windows === undefined && input.places.length === input.parts.length;
  const likeRanks = input.goal === 'least-total' && alike;
  const partOf = likeRanks ? inOrder(input) : undefined;
  if (partOf) return { ok: true, value: planOf(input, partOf) };
  const fits = fitTable(input);
  if (input.goal === 'least-spread') {
    const found = smallestSpread(fits);
    return found.ok ? { ok: true, value: spreadPlan(input, fits, found.value) } : refused(noPlan(found.fault));
  }
  const deviations = deviationTable(fits, input.target);
  if (input.goal === 'least-total') {
    const found = leastTotal(deviations);
    return found.ok ? { ok: true, value: planOf(input, found.value.columnOf) } : refused(noPlan(found.fault));
  }
  const found = smallestWorst(deviations);
  if (!found.ok) return refused(noPlan(found.fault));
  const { columnOf, short } = found.value;
  return { ok: true, value: planOf(input, columnOf, { places: short.rows, parts: short.columns }) };
}

/**
 * As many parts as places: part and place of one rank belong together. The deviation is convex in the fit, and so is a
 * window, so uncrossing two pairs never adds to the sum, nor takes a fit out of the window that was in it before.
 * Undefined when a fit lies outside the window: then no other plan has all inside either.
 */
function inOrder({ places, parts, window }: PartsInput): readonly number[] | undefined {
  const smallest = ranked(places);
  const partOf = new Array<number>(places.length);
  for (const [rank, part] of ranked(parts).entries()) partOf[smallest[rank]!] = part;
  const low = window.low === undefined ? Number.NEGATIVE_INFINITY : toNm(window.low);
  const high = window.high === undefined ? Number.POSITIVE_INFINITY : toNm(window.high);
  const inside = partOf.every((part, place) => {
    const fit = toNm(places[place]! - parts[part]!);
    return low <= fit && fit <= high;
  });
  return inside ? partOf : undefined;
}

/** Places of a list by rising size. */
function ranked(sizes: readonly Length[]): readonly number[] {
  return Array.from(sizes, (_, at) => at).sort((a, b) => sizes[a]! - sizes[b]!);
}

const deviationTable = (fits: readonly (readonly number[])[], target: Length) =>
  fits.map((row) => row.map((fit) => Math.abs(fit - toNm(target))));

/** Among the plans between the same two fits the one with the least deviation from the target. */
function spreadPlan(
  input: PartsInput,
  fits: readonly (readonly number[])[],
  { least, greatest }: { readonly least: number; readonly greatest: number },
): PartsPlan {
  const inside = fits.map((row) =>
    row.map((fit) => (least <= fit && fit <= greatest ? fit : Number.POSITIVE_INFINITY)),
  );
  const nearest = leastTotal(deviationTable(inside, input.target));
  /* v8 ignore next -- the plan that gave both ends is itself inside them */
  if (!nearest.ok) throw new Error('a plan inside its own ends is missing');
  return planOf(input, nearest.value.columnOf);
}
