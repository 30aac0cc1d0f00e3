import type { Curve, Plot } from './plot.js';

export interface ValueThere {
  readonly curve: string;
  readonly name: string;
  /** Undefined where the curve does not reach. */
  readonly y: number | undefined;
}

/** Value of a curve at x, straight between its two nearest points; undefined outside of it. */
export function valueAt(curve: Curve, x: number): number | undefined {
  const { points } = curve;
  const [first, last] = [points[0], points.at(-1)];
  if (first === undefined || last === undefined || x < first[0] || x > last[0]) return undefined;
  let [low, high] = [0, points.length - 1];
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (points[middle]![0] <= x) low = middle;
    else high = middle;
  }
  const [[x0, y0], [x1, y1]] = [points[low]!, points[high]!];
  return x1 === x0 ? y0 : y0 + ((y1 - y0) * (x - x0)) / (x1 - x0);
}

/** What every curve of a plot says at x, in the order of the curves. */
export const valuesAt = (plot: Plot, x: number): readonly ValueThere[] =>
  plot.curves.map((curve) => ({ curve: curve.id, name: curve.name, y: valueAt(curve, x) }));

/** All x at which some curve has a point, rising: the steps of a reader who goes along by keyboard. */
export function placesAlong(plot: Plot): readonly number[] {
  const all = new Set(plot.curves.flatMap((curve) => curve.points.map(([x]) => x)));
  return [...all].sort((a, b) => a - b);
}

/** Lowest and highest point of a curve; undefined for one without points. */
export function extremesOf(curve: Curve) {
  const [first] = curve.points;
  if (first === undefined) return undefined;
  let [lowest, highest] = [first, first];
  for (const point of curve.points) {
    if (point[1] < lowest[1]) lowest = point;
    if (point[1] > highest[1]) highest = point;
  }
  return { lowest, highest };
}
