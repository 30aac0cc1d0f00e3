import { done, type Outcome, refused } from '../../quantity/index.js';
import { cheapestAssignment } from './cheapest-assignment.js';
import { type Allowed, type HallSet, largestMatching } from './largest-matching.js';

/** Whole-number costs of each row in each column; a pair that is not allowed costs infinitely much. */
export type CostTable = readonly (readonly number[])[];

export interface NoAssignment extends HallSet {
  readonly code: 'no-assignment';
}
/** A best assignment and why nothing better exists. */
export interface BestAssignment {
  readonly columnOf: readonly number[];
  /** Sum of the costs. */
  readonly total: number;
  readonly least: number;
  readonly greatest: number;
  /** No assignment has less of what was minimised; equal to what this one has. */
  readonly bound: number;
}
/** Rows that would be short of columns if every cost had to lie below the worst one. */
export interface SmallestWorst extends BestAssignment {
  readonly short: HallSet;
}
type Found<T extends BestAssignment> = Outcome<T, NoAssignment>;

const allowedBetween = (costs: CostTable, low: number, high: number): Allowed =>
  costs.map((row) => [...row.keys()].filter((column) => low <= row[column]! && row[column]! <= high));

const columnsOf = (costs: CostTable): number => costs[0]!.length;

function missing(costs: CostTable): NoAssignment | undefined {
  const { short } = largestMatching(
    allowedBetween(costs, Number.NEGATIVE_INFINITY, Number.MAX_VALUE),
    columnsOf(costs),
  );
  return short && { code: 'no-assignment', ...short };
}

function resultOf(costs: CostTable, columnOf: readonly number[], bound: number): BestAssignment {
  const paid = columnOf.map((column, row) => costs[row]![column]!);
  const total = paid.reduce((sum, one) => sum + one, 0);
  return { columnOf, total, least: Math.min(...paid), greatest: Math.max(...paid), bound };
}

/** Least total among the allowed pairs, when every row is known to find a column. */
function cheapest(costs: CostTable): { readonly columnOf: readonly number[]; readonly bound: number } {
  const finite = costs.flat().filter(Number.isFinite);
  const offset = Math.min(0, ...finite);
  // One forbidden pair costs more than any assignment of allowed ones.
  const forbidden = (Math.max(...finite) - offset) * costs.length + 1;
  const shifted = costs.map((row) => row.map((cost) => (Number.isFinite(cost) ? cost - offset : forbidden)));
  const { columnOf, rowPrices, columnPrices } = cheapestAssignment(shifted);
  const prices = [...rowPrices, ...columnPrices].reduce((sum, price) => sum + price, 0);
  return { columnOf, bound: prices + offset * costs.length };
}

/**
 * Gives each row a column of its own with the least total cost. `bound` is the sum of the prices that prove it.
 *
 * Costs are whole numbers, negative ones too, of at least one row; rows^2 x (greatest - least) stays below 2^53. Refuses with
 * `no-assignment` and the rows that are short of columns. Source: `cheapestAssignment`.
 */
export function leastTotal(costs: CostTable): Found<BestAssignment> {
  const fault = missing(costs);
  if (fault) return refused(fault);
  const { columnOf, bound } = cheapest(costs);
  return done(resultOf(costs, columnOf, bound));
}

/** Costs that occur, rising, each once. */
const steps = (costs: CostTable): readonly number[] =>
  [...new Set(costs.flat().filter(Number.isFinite))].toSorted((a, b) => a - b);

/** The first of rising values for which a property holds that holds from there on; it holds for the last. */
function firstWhere(values: readonly number[], holds: (value: number) => boolean): number {
  let [low, high] = [0, values.length - 1];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (holds(values[middle]!)) high = middle;
    else low = middle + 1;
  }
  return low;
}

const within = (costs: CostTable, low: number, high: number): CostTable =>
  costs.map((row) => row.map((cost) => (low <= cost && cost <= high ? cost : Number.POSITIVE_INFINITY)));

/**
 * Gives each row a column of its own so that the greatest single cost is smallest, and the total least among those
 * assignments. `short` proves it: with only the pairs that cost less, those rows have fewer columns than they are.
 *
 * The smallest threshold with a complete matching is found by bisection over the costs that occur. Refuses as `leastTotal`.
 * Source: bottleneck assignment by thresholds, textbook; own implementation.
 */
export function smallestWorst(costs: CostTable): Found<SmallestWorst> {
  const fault = missing(costs);
  if (fault) return refused(fault);
  const values = steps(costs);
  const matched = (high: number) => largestMatching(allowedBetween(costs, values[0]!, high), columnsOf(costs));
  const at = firstWhere(values, (value) => !matched(value).short);
  const short = largestMatching(
    costs.map((row) => below(row, values[at]!)),
    columnsOf(costs),
  ).short!;
  const { columnOf } = cheapest(within(costs, values[0]!, values[at]!));
  return done({ ...resultOf(costs, columnOf, values[at]!), short });
}

const below = (row: readonly number[], limit: number): readonly number[] =>
  [...row.keys()].filter((column) => row[column]! < limit);

interface Held {
  readonly costs: CostTable;
  readonly columnOf: number[];
  readonly rowOf: number[];
}

/** Whether every row can have a column with a cost between two ends. Rows that are already in such a column start there. */
function completes(held: Held, low: number, high: number): boolean {
  for (const [row, column] of held.columnOf.entries()) {
    if (column < 0 || held.costs[row]![column]! >= low) continue;
    held.columnOf[row] = -1;
    held.rowOf[column] = -1;
  }
  return held.columnOf.every((column, row) => column >= 0 || served(held, row, low, high, new Set()));
}

function served(held: Held, row: number, low: number, high: number, seen: Set<number>): boolean {
  for (const [column, cost] of held.costs[row]!.entries()) {
    if (cost < low || cost > high || seen.has(column)) continue;
    seen.add(column);
    const holder = held.rowOf[column]!;
    if (holder >= 0 && !served(held, holder, low, high, seen)) continue;
    held.columnOf[row] = column;
    held.rowOf[column] = row;
    return true;
  }
  return false;
}

/**
 * Gives each row a column of its own so that greatest less least cost is smallest, and the total least among the
 * assignments between the same two costs.
 *
 * Two pointers go over the costs that occur: for each lowest cost the smallest highest one with a complete matching, so
 * every narrower pair of ends has been refused. Refuses as `leastTotal`.
 * Source: balanced assignment, S. Martello and others, 1984 (from memory); own implementation.
 */
export function smallestSpread(costs: CostTable): Found<BestAssignment> {
  const fault = missing(costs);
  if (fault) return refused(fault);
  const values = steps(costs);
  const held = { costs, columnOf: costs.map(() => -1), rowOf: new Array<number>(columnsOf(costs)).fill(-1) };
  let best = { low: values[0]!, high: values.at(-1)! };
  for (let from = 0, to = 0; Math.max(from, to) < values.length; ) {
    const [low, high] = [values[from]!, values[to]!];
    if (!completes(held, low, high)) to += 1;
    else {
      if (high - low < best.high - best.low) best = { low, high };
      from += 1;
    }
  }
  const { columnOf } = cheapest(within(costs, best.low, best.high));
  return done(resultOf(costs, columnOf, best.high - best.low));
}
