import type { Length } from '../../quantity/index.js';
import { toNm } from './nanometres.js';
import { type Option, searchOptions } from './option-search.js';

export type ThickerHalf = 'upper' | 'lower' | 'either';
export interface ShellClass {
  readonly wall: Length;
  /** Halves on hand; absent: as many as needed. */
  readonly stock?: number;
  /** Whether more of it can be bought, where buying is allowed at all; left out: it can. */
  readonly forSale?: boolean;
}
export interface ShellPosition {
  readonly housing: Length;
  readonly journal: Length;
  /** Clearances accepted here, where the maker treats positions apart; left out: the window of all. */
  readonly window?: ShellsInput['window'];
}
export interface ShellsInput {
  readonly positions: readonly ShellPosition[];
  readonly classes: readonly ShellClass[];
  readonly target: Length;
  /** Clearances accepted, ends included. */
  readonly window: { readonly low: Length; readonly high: Length };
  /** Largest difference between the walls of two halves; 0: never mix. */
  readonly widestMix: Length;
  /** Where the thicker half goes. */
  readonly thicker: ThickerHalf;
  /** Whether halves beyond the stock may be bought. */
  readonly mayBuy: boolean;
}
/** Halves by their class, counted from 0. */
export interface ShellPair {
  readonly upper: number;
  readonly lower: number;
  readonly clearance: Length;
}
export interface ShellsPlan {
  /** Halves of each position; undefined where nothing fits or is left. */
  readonly pairs: readonly (ShellPair | undefined)[];
  readonly unserved: number;
  /** Halves to buy of each class. */
  readonly buy: readonly number[];
  readonly total: Length;
  /** Whether no better plan exists; false when the search ended early. */
  readonly proven: boolean;
  /** When not proven: no plan leaves fewer without, or buys fewer at that number, than these. */
  readonly bound: { readonly unserved: number; readonly bought: number; readonly total: Length };
}

const mayPair = (input: ShellsInput, upper: Length, lower: Length): boolean =>
  Math.abs(toNm(upper - lower)) <= toNm(input.widestMix) &&
  (input.thicker !== 'upper' || upper >= lower) &&
  (input.thicker !== 'lower' || lower >= upper);

/** Every pair of halves that may go into a position; with no rule of place a pair is named once, the thicker half above. */
function pairsFor(input: ShellsInput, position: ShellsInput['positions'][number]): readonly ShellPair[] {
  const { classes } = input;
  const window = position.window ?? input.window;
  return classes.flatMap((above, upper) =>
    classes.flatMap((below, lower) => {
      const clearance = (position.housing - above.wall - below.wall - position.journal) as Length;
      const twice =
        input.thicker === 'either' && (above.wall < below.wall || (above.wall === below.wall && upper > lower));
      const fits = toNm(window.low) <= toNm(clearance) && toNm(clearance) <= toNm(window.high);
      return fits && !twice && mayPair(input, above.wall, below.wall) ? [{ upper, lower, clearance }] : [];
    }),
  );
}

/** Wishes in order as one whole number: none left without, then fewest bought, then least deviation in nanometres. */
function weightsOf(input: ShellsInput): { readonly bought: number; readonly unserved: number } {
  const windows = [input.window, ...input.positions.flatMap(({ window }) => window ?? [])];
  const ends = windows.flatMap(({ low, high }) => [low, high]);
  const widest = Math.max(...ends.map((end) => Math.abs(toNm(end - input.target))));
  const bought = input.positions.length * widest + 1;
  return { bought, unserved: bought * (2 * input.positions.length + 1) };
}

/**
 * Upper and lower half of every bearing position from the classes on hand: as few positions as possible without halves,
 * then the fewest halves bought, then the least total deviation from the clearance wanted.
 *
 *   clearance = housing - upper wall - lower wall - journal
 *
 * | symbol | argument    | unit | meaning                                                          |
 * |--------|-------------|------|------------------------------------------------------------------|
 * |        | `positions` | m    | housing bore without shells and journal, up to 20, each below 3 m |
 * |        | `classes`   | m, 1 | wall of each class and halves on hand                            |
 * |        | `target`, `window` | m | clearance wanted and accepted                                |
 * |        | `widestMix` | m    | largest wall difference of two halves                            |
 *
 * Assumes walls at the crown and clearance on diameter. Exact unless the search ends early; the plan says so.
 * Source: `searchOptions`; clearance by definition, see calc/bearings.
 */
export function shellsToJournals(input: ShellsInput, mostSteps?: number): ShellsPlan {
  const { positions, classes, target } = input;
  const weight = weightsOf(input);
  const pairs = positions.map((position) => pairsFor(input, position));
  const places = pairs.map((list): readonly Option[] => [
    ...list.map(({ upper, lower, clearance }) => ({
      cost: Math.abs(toNm(clearance - target)),
      uses: [upper, lower],
    })),
    { cost: weight.unserved, uses: [] },
  ]);
  const plenty = 2 * positions.length;
  const stock = classes.map((one) => Math.min(one.stock ?? plenty, plenty));
  const beyond = classes.map(({ forSale = true }) =>
    input.mayBuy && forSale ? weight.bought : Number.POSITIVE_INFINITY,
  );
  const found = searchOptions({ places, stock, beyond }, mostSteps);
  const chosen = found.chosen.map((way, place) => pairs[place]![way]);
  const used = classes.map(
    (_, kind) => chosen.flatMap((one) => [one?.upper, one?.lower]).filter((one) => one === kind).length,
  );
  const deviations = chosen.map((one) => (one ? Math.abs(one.clearance - target) : 0));
  return {
    pairs: chosen,
    unserved: chosen.filter((one) => one === undefined).length,
    buy: used.map((count, kind) => Math.max(0, count - stock[kind]!)),
    total: deviations.reduce((sum, one) => sum + one, 0) as Length,
    proven: found.bound === found.cost,
    bound: boundOf(found.bound, weight),
  };
}

function boundOf(bound: number, weight: { readonly bought: number; readonly unserved: number }): ShellsPlan['bound'] {
  const rest = bound % weight.unserved;
  return {
    unserved: Math.floor(bound / weight.unserved),
    bought: Math.floor(rest / weight.bought),
    total: ((rest % weight.bought) / 1e9) as Length,
  };
}
