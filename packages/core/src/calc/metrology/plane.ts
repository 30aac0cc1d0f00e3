/** Flatness of a face from heights at points: least squares and the true minimum zone. */
import { solve } from './linear-solve.js';
import { mean, spread } from './repeats.js';
import { smallestZone } from './smallest-zone.js';

export interface Flatness {
  /** z = intercept + slopeX·x + slopeY·y, least squares. */
  readonly intercept: number;
  readonly slopeX: number;
  readonly slopeY: number;
  readonly residuals: readonly number[];
  /** Highest less lowest residual of the least-squares plane. */
  readonly leastSquares: number;
  /** Distance of the two nearest parallel planes that hold all points; never more than by least squares. */
  readonly minimumZone: number;
  /** Highest less lowest height with the tilt still in it: not a flatness. */
  readonly raw: number;
}

export interface Points {
  readonly x: readonly number[];
  readonly y: readonly number[];
  readonly z: readonly number[];
}

/**
 * Flatness of three or more points that do not lie on one line in x and y; undefined when they do. Any one unit.
 *
 * Heights are taken across the plane, good while the tilt is small. Source: least squares and linear programme, derived;
 * ISO 12781 (recalled) for the definitions.
 */
export function flatnessOf({ x, y, z }: Points): Flatness | undefined {
  const [xMean, yMean, zMean] = [mean(x), mean(y), mean(z)];
  const reach = Math.max(spread(x), spread(y));
  const u = x.map((one) => (one - xMean) / reach);
  const v = y.map((one) => (one - yMean) / reach);
  const w = z.map((one) => one - zMean);
  const dot = (a: readonly number[], b: readonly number[]) => a.reduce((sum, one, at) => sum + one * b[at]!, 0);
  const slopes =
    reach > 0
      ? solve(
          [
            [dot(u, u), dot(u, v)],
            [dot(u, v), dot(v, v)],
          ],
          [dot(u, w), dot(v, w)],
        )
      : undefined;
  if (!slopes) return undefined;
  const [a, b] = slopes as [number, number];
  const residuals = w.map((one, at) => one - a * u[at]! - b * v[at]!);
  const scale = Math.max(...residuals.map(Math.abs));
  const rows = u.map((one, at) => [1, one, v[at]!]);
  const zone =
    scale === 0
      ? undefined
      : smallestZone(
          rows,
          residuals.map((one) => one / scale),
        );
  const leastSquares = spread(residuals);
  return {
    intercept: zMean - (a * xMean + b * yMean) / reach,
    slopeX: a / reach,
    slopeY: b / reach,
    residuals,
    leastSquares,
    minimumZone: zone ? Math.min(leastSquares, 2 * scale * zone.half) : 0,
    raw: spread(z),
  };
}
