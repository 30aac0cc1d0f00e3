import { done, type Length, type Outcome, refused } from '../../quantity/index.js';
import { cheapestAssignment } from './cheapest-assignment.js';
import { toNm } from './nanometres.js';

export interface ShopSize {
  readonly size: Length;
  /** Whole price, such as cents; 1 for every size counts the parts bought. */
  readonly price: number;
}
export interface ShopInput {
  readonly places: readonly Length[];
  /** Parts on hand. */
  readonly stock: readonly Length[];
  /** Sizes that can be bought, each as often as needed. */
  readonly shop: readonly ShopSize[];
  /** The most that may be spent, in the unit of the prices; absent: no limit. */
  readonly budget?: number;
  readonly target: Length;
  /** Fits accepted, ends included. */
  readonly window: ShopWindow;
  /** Fits accepted at each place, where they differ from place to place; left out: `window` at all. */
  readonly windows?: readonly ShopWindow[];
}
export interface ShopWindow {
  readonly low: Length;
  readonly high: Length;
}
export type ShopSource =
  | { readonly kind: 'stock'; readonly index: number }
  | { readonly kind: 'shop'; readonly index: number }
  | { readonly kind: 'none' };
export interface ShopPlan {
  readonly sources: readonly ShopSource[];
  /** Fit of each place, absent where it has no part. */
  readonly fits: readonly (Length | undefined)[];
  readonly unserved: number;
  readonly spent: number;
  readonly bought: number;
  /** Sum of the absolute deviations from the target over the places that are served. */
  readonly total: Length;
  /** The least that serving one more place would cost in all; absent when no money can do it, or nothing is missing. */
  readonly nextSpent?: number;
}
export interface TooFine {
  readonly code: 'too-fine';
}

interface Table {
  readonly costs: readonly (readonly number[])[];
  /** Best size of the shop for each place, cheapest first, then nearest; undefined where none fits. */
  readonly buys: readonly (number | undefined)[];
  readonly forbidden: number;
  /** One unit of money, in the unit of the costs. */
  readonly money: number;
}

const deviationOf = (input: ShopInput, place: Length, part: Length): number =>
  Math.abs(toNm(place - part) - toNm(input.target));
function fitsAt(input: ShopInput, row: number, part: Length): boolean {
  const fit = toNm(input.places[row]! - part);
  const { low, high } = input.windows?.[row] ?? input.window;
  return toNm(low) <= fit && fit <= toNm(high);
}

function bestBuy(input: ShopInput, place: Length, row: number): number | undefined {
  const fitting = [...input.shop.entries()].filter(([, { size }]) => fitsAt(input, row, size));
  const near = (size: Length) => deviationOf(input, place, size);
  return fitting.toSorted(([, a], [, b]) => a.price - b.price || near(a.size) - near(b.size))[0]?.[0];
}

/** Money first, deviation second, in one whole number. */
function tableOf(input: ShopInput): Table | undefined {
  const { places, stock, shop } = input;
  const buys = places.map((place, row) => bestBuy(input, place, row));
  const windows = [input.window, ...(input.windows ?? [])].flatMap(({ low, high }) => [low, high]);
  const ends = windows.map((end) => Math.abs(toNm(end) - toNm(input.target)));
  const money = places.length * Math.max(...ends) + 1;
  const forbidden = (places.length * Math.max(0, ...shop.map(({ price }) => price)) + 1) * money;
  if (forbidden * places.length ** 2 > Number.MAX_SAFE_INTEGER) return undefined;
  const costs = places.map((place, row) => [
    ...stock.map((part) => (fitsAt(input, row, part) ? deviationOf(input, place, part) : forbidden)),
    ...buys.map((buy, column) => {
      const offer = column === row && buy !== undefined ? shop[buy] : undefined;
      return offer ? offer.price * money + deviationOf(input, place, offer.size) : forbidden;
    }),
  ]);
  return { costs, buys, forbidden, money };
}

interface Served {
  readonly columnOf: readonly number[];
  readonly spent: number;
}

/** The cheapest way to leave at most `without` places unserved; undefined when even money cannot do it. */
function serving({ costs, forbidden, money }: Table, without: number): Served | undefined {
  const blanks = new Array<number>(without).fill(0);
  const { columnOf, cost } = cheapestAssignment(costs.map((row) => [...row, ...blanks]));
  return cost >= forbidden ? undefined : { columnOf, spent: Math.floor(cost / money) };
}

function planOf(input: ShopInput, table: Table, served: Served, next: Served | undefined): ShopPlan {
  const sources = served.columnOf.map((column, row): ShopSource => {
    if (column < input.stock.length) return { kind: 'stock', index: column };
    const own = column === input.stock.length + row ? table.buys[row] : undefined;
    return own === undefined ? { kind: 'none' } : { kind: 'shop', index: own };
  });
  const fits = sources.map((source, row) => {
    if (source.kind === 'none') return undefined;
    const part = source.kind === 'stock' ? input.stock[source.index]! : input.shop[source.index]!.size;
    return (input.places[row]! - part) as Length;
  });
  const known = fits.filter((fit) => fit !== undefined);
  return {
    sources,
    fits,
    unserved: fits.length - known.length,
    spent: served.spent,
    bought: sources.filter(({ kind }) => kind === 'shop').length,
    total: known.reduce((sum, fit) => sum + Math.abs(fit - input.target), 0) as Length,
    ...(next && { nextSpent: next.spent }),
  };
}

/**
 * Serves places with parts on hand and bought ones: as many places as the budget allows, then the least money, then the
 * least total deviation.
 *
 * | symbol | argument | unit | meaning                                                                  |
 * |--------|----------|------|--------------------------------------------------------------------------|
 * |        | `places` | m    | size of each place, 1 to 100 of them                                      |
 * |        | `stock`  | m    | parts on hand, may be none                                               |
 * |        | `shop`   | m, 1 | sizes for sale with whole prices of 0 or more                            |
 * |        | `budget` | 1    | the most that may be spent                                               |
 * |        | `target`, `window`, `windows` | m | place less part wanted, and accepted (at each place)   |
 *
 * The least money for each number of places served is an assignment problem and grows with that number, so the largest
 * number within the budget is found exactly, and `nextSpent` proves that one more is beyond it.
 * Refuses with `too-fine` prices and windows whose product is too large for exact arithmetic.
 * Source: `cheapestAssignment` with that many empty columns; growth by convexity of least-cost flows, textbook.
 */
export function partsWithShop(input: ShopInput): Outcome<ShopPlan, TooFine> {
  const table = tableOf(input);
  if (!table) return refused({ code: 'too-fine' });
  const budget = input.budget ?? Number.POSITIVE_INFINITY;
  let without = 0;
  let served = serving(table, 0);
  let dearer: Served | undefined;
  while (served === undefined || served.spent > budget) {
    dearer = served;
    without += 1;
    served = serving(table, without);
  }
  return done(planOf(input, table, served, dearer));
}
