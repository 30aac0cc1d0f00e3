import type { OptimalityProof } from './types.js';

interface State {
  readonly costs: readonly (readonly number[])[];
  readonly rowPrices: number[];
  readonly columnPrices: number[];
  /** Row that holds each column, -1 for a free one. */
  readonly rowOf: number[];
}
interface Path {
  readonly distance: number[];
  /** Column before each column on the shortest way, -1 when it is reached from the starting row. */
  readonly via: number[];
  readonly settled: boolean[];
  readonly end: number;
  readonly startRow: number;
}

function nearestOpen(distance: readonly number[], settled: readonly boolean[]): number {
  let best = -1;
  for (let j = 0; j < distance.length; j += 1) {
    if (!settled[j] && (best < 0 || distance[j]! < distance[best]!)) best = j;
  }
  return best;
}

/** Shortest way from a row without a column to a free column, in costs less prices (never negative). */
function shortestWay(state: State, startRow: number): Path {
  const columns = state.columnPrices.length;
  const distance = new Array<number>(columns).fill(Number.POSITIVE_INFINITY);
  const via = new Array<number>(columns).fill(-1);
  const settled = new Array<boolean>(columns).fill(false);
  let row = startRow;
  let at = -1;
  let walked = 0;
  for (;;) {
    for (let j = 0; j < columns; j += 1) {
      const through = walked + state.costs[row]![j]! - state.rowPrices[row]! - state.columnPrices[j]!;
      if (settled[j] || through >= distance[j]!) continue;
      distance[j] = through;
      via[j] = at;
    }
    at = nearestOpen(distance, settled);
    walked = distance[at]!;
    settled[at] = true;
    if (state.rowOf[at]! < 0) return { distance, via, settled, end: at, startRow };
    row = state.rowOf[at]!;
  }
}

/** Moves the prices so that the way found costs nothing and no pair costs less than its prices. */
function reprice(state: State, path: Path): void {
  const walked = path.distance[path.end]!;
  state.rowPrices[path.startRow]! += walked;
  path.settled.forEach((settled, j) => {
    if (!settled || j === path.end) return;
    const gain = walked - path.distance[j]!;
    state.rowPrices[state.rowOf[j]!]! += gain;
    state.columnPrices[j]! -= gain;
  });
}

/** Gives every column on the way to the row before it. */
function flip(state: State, path: Path): void {
  let column = path.end;
  while (column >= 0) {
    const before = path.via[column]!;
    state.rowOf[column] = before < 0 ? path.startRow : state.rowOf[before]!;
    column = before;
  }
}

/**
 * Gives each row its own column so that the sum of the costs is smallest, with prices that prove it.
 *
 * `costs[row][column]` are finite whole numbers; at least as many columns as rows, every row of the same length. Rows
 * are added one at a time along the shortest way to a free column. About rows^2 x columns steps.
 * The answer is exact as long as rows x the greatest cost stays below 2^53. Throws when there are fewer columns than rows:
 * callers add a column "bought" or "left out" for each row.
 * Source: successive shortest paths with node prices (linear programming duality), textbook; own implementation.
 */
export function cheapestAssignment(costs: readonly (readonly number[])[]): OptimalityProof & { readonly cost: number } {
  const columns = costs[0]?.length ?? 0;
  if (columns < costs.length) throw new Error('cheapestAssignment needs a column for each row');
  const state: State = {
    costs,
    rowPrices: costs.map(() => 0),
    columnPrices: new Array<number>(columns).fill(0),
    rowOf: new Array<number>(columns).fill(-1),
  };
  for (let row = 0; row < costs.length; row += 1) {
    const path = shortestWay(state, row);
    reprice(state, path);
    flip(state, path);
  }
  const columnOf = costs.map((_, row) => state.rowOf.indexOf(row));
  const cost = columnOf.reduce((sum, column, row) => sum + costs[row]![column]!, 0);
  return { costs, columnOf, rowPrices: state.rowPrices, columnPrices: state.columnPrices, cost };
}

/**
 * Checks a proof without trusting the search: every row has its own column, no pair costs less than its two prices, no
 * column price is above 0, and the assignment costs exactly the sum of all prices.
 */
export function provesOptimal(proof: OptimalityProof): boolean {
  const { costs, columnOf, rowPrices, columnPrices } = proof;
  const apart = new Set(columnOf).size === costs.length && columnOf.length === costs.length;
  const payable = costs.every((row, i) => row.every((cost, j) => rowPrices[i]! + columnPrices[j]! <= cost));
  const belowZero = columnPrices.every((price) => price <= 0);
  const sum = (numbers: readonly number[]) => numbers.reduce((total, n) => total + n, 0);
  const cost = sum(columnOf.map((column, row) => costs[row]![column] ?? Number.NaN));
  return apart && payable && belowZero && cost === sum(rowPrices) + sum(columnPrices);
}
