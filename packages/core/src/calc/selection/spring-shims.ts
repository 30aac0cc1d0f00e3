import { done, type Force, type Length, type Outcome, refused, type Stiffness } from '../../quantity/index.js';
import { toNm } from './nanometres.js';
import { type Option, searchOptions } from './option-search.js';
import { allStacks, distinctStacks, type Stack } from './shim-stacks.js';

export interface SpringShimsInput {
  /** Installed height of each valve's spring without shims. */
  readonly heights: readonly Length[];
  /** Height wanted at each valve. */
  readonly wanted: readonly Length[];
  readonly sizes: readonly Length[];
  /** Shims on hand of each size; absent: as many as needed. */
  readonly stock?: readonly number[];
  /** Most shims under one spring. */
  readonly most: number;
  /** Accepted height less wanted height, ends included; open where left out. */
  readonly window: { readonly low?: Length; readonly high?: Length };
}
export interface SpringShimsPlan {
  /** Shims of each valve; undefined where no stack is accepted or left. */
  readonly stacks: readonly (Stack | undefined)[];
  /** Height as shimmed. */
  readonly heights: readonly (Length | undefined)[];
  readonly total: Length;
  readonly unserved: number;
  readonly proven: boolean;
  /** No plan has less total deviation with as few left without. */
  readonly bound: Length;
}
export interface TooManyStacks {
  readonly code: 'too-many-stacks';
  readonly most: number;
}
const MOST_STACKS = 5000;

/** Number of stacks of up to `most` shims of some sizes: C(sizes + most, most). */
function stackCount(sizes: number, most: number): number {
  let count = 1;
  for (let i = 1; i <= most; i += 1) count = (count * (sizes + i)) / i;
  return count;
}

/**
 * Shims under each valve spring that bring its installed height nearest to what is wanted there.
 *
 *   height = h0 - Σ shims;  minimise (valves without an accepted stack, Σ|height - wanted|)
 *
 * | symbol | argument  | unit | meaning                                                        |
 * |--------|-----------|------|----------------------------------------------------------------|
 * | h0     | `heights` | m    | retainer to seat without shims, valve closed, 1 to 64 of them  |
 * |        | `wanted`  | m    | height wanted, one a valve: the same for equal heights, or that of an equal load |
 * |        | `sizes`   | m    | shim thicknesses                                               |
 * |        | `stock`   | 1    | how many there are of each                                     |
 * |        | `window`  | m    | accepted deviation from the wanted height                      |
 *
 * Without a limited stock each valve is decided alone. With one it is a search with bound, see `searchOptions`.
 * Refuses with `too-many-stacks` more than 5000 different stacks. Source: height by definition.
 */
export function springShims(input: SpringShimsInput, mostSteps?: number): Outcome<SpringShimsPlan, TooManyStacks> {
  const { heights, wanted, sizes, stock } = input;
  if (stackCount(sizes.length, input.most) > MOST_STACKS)
    return refused({ code: 'too-many-stacks', most: MOST_STACKS });
  const stacks = stock ? allStacks(sizes, input.most) : distinctStacks(sizes, input.most);
  const fitting = heights.map((height, at) =>
    stacks.filter((stack) => accepted(input, deviation(height, stack, wanted[at]!))),
  );
  const costs = fitting.map((list, at) => list.map((stack) => Math.abs(deviation(heights[at]!, stack, wanted[at]!))));
  const without = costs.reduce((sum, list) => sum + Math.max(0, ...list), 1);
  const places = fitting.map((list, at): readonly Option[] => [
    ...list.map((stack, way) => ({ cost: costs[at]![way]!, uses: stack.shims })),
    { cost: without, uses: [] },
  ]);
  const plenty = heights.length * input.most;
  const found = searchOptions(
    { places, stock: sizes.map((_, size) => stock?.[size] ?? plenty), beyond: Number.POSITIVE_INFINITY },
    mostSteps,
  );
  const chosen = found.chosen.map((way, at) => fitting[at]![way]);
  const shimmed = chosen.map((stack, at) => (stack ? ((heights[at]! - stack.height) as Length) : undefined));
  const deviations = shimmed.map((height, at) => (height === undefined ? 0 : Math.abs(height - wanted[at]!)));
  return done({
    stacks: chosen,
    heights: shimmed,
    total: deviations.reduce((sum, one) => sum + one, 0) as Length,
    unserved: chosen.filter((stack) => stack === undefined).length,
    proven: found.bound === found.cost,
    bound: ((found.bound % without) / 1e9) as Length,
  });
}

/** Height less wanted height in nanometres. */
const deviation = (height: Length, stack: Stack, wanted: Length): number => toNm(height - stack.height) - toNm(wanted);

const accepted = ({ window: { low, high } }: SpringShimsInput, found: number): boolean =>
  (low === undefined || found >= toNm(low)) && (high === undefined || found <= toNm(high));

export interface CommonHeight {
  readonly stacks: readonly Stack[];
  readonly heights: readonly Length[];
  /** Largest less smallest height: no choice of shims has less. */
  readonly spread: Length;
}

/**
 * Shims that make all springs' heights as equal as they can be, whatever that height is, within accepted heights; of
 * equal spreads the one with the least shims in height.
 *
 * `heights`, `sizes`, `most` as in `springShims`; `window` [m] is of the height itself. For each height that some stack makes,
 * as the lowest of all, every other valve takes its next height at or above it; the least spread is among these.
 * Undefined when some valve has no accepted height. Refuses with `too-many-stacks`.
 * Source: smallest range over several lists, textbook.
 */
export function commonHeight(
  input: Pick<SpringShimsInput, 'heights' | 'sizes' | 'most' | 'window'>,
): Outcome<CommonHeight | undefined, TooManyStacks> {
  if (stackCount(input.sizes.length, input.most) > MOST_STACKS)
    return refused({ code: 'too-many-stacks', most: MOST_STACKS });
  const stacks = distinctStacks(input.sizes, input.most);
  const within = ({ low, high }: SpringShimsInput['window'], nm: number) =>
    (low === undefined || nm >= toNm(low)) && (high === undefined || nm <= toNm(high));
  const lists = input.heights.map((height) =>
    stacks
      .map((stack) => ({ stack, nm: toNm(height - stack.height) }))
      .filter(({ nm }) => within(input.window, nm))
      .toReversed(),
  );
  const lows = [...new Set(lists.flatMap((list) => list.map(({ nm }) => nm)))].toSorted((a, b) => b - a);
  let best: { readonly chosen: readonly (typeof lists)[number][number][]; readonly spread: number } | undefined;
  for (const low of lows) {
    const chosen = lists.map((list) => list.find(({ nm }) => nm >= low)).filter((one) => one !== undefined);
    if (chosen.length < lists.length) continue;
    const spread = Math.max(...chosen.map(({ nm }) => nm)) - Math.min(...chosen.map(({ nm }) => nm));
    if (!best || spread < best.spread) best = { chosen, spread };
  }
  if (!best) return done(undefined);
  const chosen = best.chosen.map(({ stack }) => stack);
  const heights = chosen.map((stack, at) => (input.heights[at]! - stack.height) as Length);
  return done({ stacks: chosen, heights, spread: (Math.max(...heights) - Math.min(...heights)) as Length });
}

/** One spring as the tester shows it. */
export interface TestedSpring {
  readonly load: Force;
  readonly testHeight: Length;
  readonly rate: Stiffness;
}

/** Installed height at which a spring gives a load [m]: hw = ht - (F - Ft)/k. Source: definition of the rate. */
export const heightForLoad = (spring: TestedSpring, load: Force): Length =>
  (spring.testHeight - (load - spring.load) / spring.rate) as Length;

/** Load of a spring at an installed height [N]: F = Ft + k·(ht - h). Source: definition of the rate. */
export const loadAtHeight = (spring: TestedSpring, height: Length): Force =>
  (spring.load + spring.rate * (spring.testHeight - height)) as Force;
