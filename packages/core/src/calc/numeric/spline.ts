/** Cubic splines through points: value, slope and bend anywhere between the first point and the last. */

/** What a spline does at its ends. `periodic` joins the last point to the first, which must have the same value. */
export type SplineEnds =
  | { readonly kind: 'natural' }
  | { readonly kind: 'clamped'; readonly first: number; readonly last: number }
  | { readonly kind: 'periodic' };

export interface Spline {
  readonly x: readonly number[];
  readonly y: readonly number[];
  /** Second derivative at each point. */
  readonly bend: readonly number[];
}
export interface SplinePoint {
  readonly value: number;
  readonly slope: number;
  readonly bend: number;
}

/** One row of a tridiagonal system: left·m[i−1] + own·m[i] + right·m[i+1] = wanted. */
interface Row {
  readonly left: number;
  readonly own: number;
  readonly right: number;
  readonly wanted: number;
}

/**
 * Cubic spline through points.
 *
 * | symbol | argument | meaning                                                       |
 * |--------|----------|---------------------------------------------------------------|
 * | x      | `x`      | places, strictly ascending, at least 3                        |
 * | y      | `y`      | values, as many; with periodic ends the last equals the first |
 *
 * Twice continuously differentiable. A clamped spline reproduces every cubic; a natural one every straight line; the
 * error against a smooth curve falls with the fourth power of the spacing (for natural ends away from the ends).
 * Input is checked by the caller; unordered places give not-a-number, which the catalogue refuses.
 * Source: continuity of slope at each point (C. de Boor, A Practical Guide to Splines, chapter IV, from memory).
 */
export function splineThrough(x: readonly number[], y: readonly number[], ends: SplineEnds): Spline {
  const inner = x.slice(1, -1).map((_, at) => innerRow(x, y, at + 1));
  if (ends.kind === 'periodic') return { x, y, bend: periodicBend(x, y, inner) };
  const [first, last] = ends.kind === 'natural' ? [FREE, FREE] : clampedRows(x, y, ends);
  return { x, y, bend: solveRows([first, ...inner, last]) };
}

const FREE: Row = { left: 0, own: 1, right: 0, wanted: 0 };
const width = (x: readonly number[], at: number): number => x[at + 1]! - x[at]!;
const chord = (x: readonly number[], y: readonly number[], at: number): number => (y[at + 1]! - y[at]!) / width(x, at);

function innerRow(x: readonly number[], y: readonly number[], at: number): Row {
  const left = width(x, at - 1);
  const right = width(x, at);
  return { left, own: 2 * (left + right), right, wanted: 6 * (chord(x, y, at) - chord(x, y, at - 1)) };
}

function clampedRows(x: readonly number[], y: readonly number[], ends: { first: number; last: number }): [Row, Row] {
  const end = x.length - 2;
  const first = width(x, 0);
  const last = width(x, end);
  return [
    { left: 0, own: 2 * first, right: first, wanted: 6 * (chord(x, y, 0) - ends.first) },
    { left: last, own: 2 * last, right: 0, wanted: 6 * (ends.last - chord(x, y, end)) },
  ];
}

/** The ring of equations, cut open at the first point and closed again by the Sherman-Morrison formula. */
function periodicBend(x: readonly number[], y: readonly number[], inner: readonly Row[]): readonly number[] {
  const end = x.length - 2;
  const back = width(x, end);
  const ahead = width(x, 0);
  const first = { left: back, own: 2 * (back + ahead), right: ahead, wanted: 6 * (chord(x, y, 0) - chord(x, y, end)) };
  const rows = [first, ...inner];
  const tail = rows.at(-1)!;
  const shift = -first.own;
  const open = rows.map((row, at) => {
    if (at === 0) return { ...row, own: row.own - shift };
    return at === end ? { ...row, own: row.own - (first.left * tail.right) / shift } : row;
  });
  const edge = rows.map((_, at) => (at === 0 ? shift : at === end ? tail.right : 0));
  const plain = solveRows(open);
  const turned = solveRows(open.map((row, at) => ({ ...row, wanted: edge[at]! })));
  const across = (m: readonly number[]): number => m[0]! + (first.left / shift) * m[end]!;
  const factor = across(plain) / (1 + across(turned));
  const bend = plain.map((one, at) => one - factor * turned[at]!);
  return [...bend, bend[0]!];
}

/** Elimination down the band and substitution back up; every row is diagonally dominant, so no exchange is needed. */
function solveRows(rows: readonly Row[]): readonly number[] {
  const reduced: { right: number; wanted: number }[] = [];
  for (const [at, row] of rows.entries()) {
    const above = reduced[at - 1] ?? { right: 0, wanted: 0 };
    const own = row.own - row.left * above.right;
    reduced.push({ right: row.right / own, wanted: (row.wanted - row.left * above.wanted) / own });
  }
  const found: number[] = [];
  for (const { right, wanted } of reduced.reverse()) found.unshift(wanted - right * (found[0] ?? 0));
  return found;
}

/** Value, slope and bend of a spline at a place. Beyond an end the end piece goes on: the caller keeps inside. */
export function splineAt({ x, y, bend }: Spline, at: number): SplinePoint {
  const piece = pieceAt(x, at);
  const h = width(x, piece);
  const a = (x[piece + 1]! - at) / h;
  const b = (at - x[piece]!) / h;
  const [m, n] = [bend[piece]!, bend[piece + 1]!];
  return {
    value: a * y[piece]! + b * y[piece + 1]! + (((a ** 3 - a) * m + (b ** 3 - b) * n) * h ** 2) / 6,
    slope: chord(x, y, piece) + (((3 * b ** 2 - 1) * n - (3 * a ** 2 - 1) * m) * h) / 6,
    bend: a * m + b * n,
  };
}

function pieceAt(x: readonly number[], at: number): number {
  let [low, high] = [0, x.length - 1];
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (x[middle]! > at) high = middle;
    else low = middle;
  }
  return low;
}
