/** Straight line by least squares, with what is known about how good it is. Any units. */
import { mean, squaresAboutMean } from './repeats.js';
import { smallestZone } from './smallest-zone.js';

export interface Line {
  readonly intercept: number;
  readonly slope: number;
  readonly interceptError: number;
  readonly slopeError: number;
  /** Scatter of the points about the line, n − 2 degrees of freedom. */
  readonly scatter: number;
  /** Share of the variation that the line explains; 1 where all points lie on it. */
  readonly explained: number;
  readonly residuals: readonly number[];
  readonly centre: number;
  readonly squares: number;
}

/**
 * y = b0 + b1·x through three or more points whose x are not all alike; undefined otherwise.
 *
 * Standard errors from the scatter. Sums are centred first.
 * Example: NIST StRD Norris: −0.262323073774029, 1.00211681802045. Source: textbook; NIST StRD certified values (read).
 */
export function lineThrough(x: readonly number[], y: readonly number[]): Line | undefined {
  const n = x.length;
  const [xMean, yMean, squares] = [mean(x), mean(y), squaresAboutMean(x)];
  if (n < 3 || !(squares > 0)) return undefined;
  const slope = x.reduce((sum, one, at) => sum + (one - xMean) * (y[at]! - yMean), 0) / squares;
  const residuals = x.map((one, at) => y[at]! - yMean - slope * (one - xMean));
  const left = residuals.reduce((sum, one) => sum + one ** 2, 0);
  const scatter = Math.sqrt(left / (n - 2));
  const total = squaresAboutMean(y);
  return {
    intercept: yMean - slope * xMean,
    slope,
    interceptError: scatter * Math.sqrt(1 / n + xMean ** 2 / squares),
    slopeError: scatter / Math.sqrt(squares),
    scatter,
    explained: total === 0 ? 1 : 1 - left / total,
    residuals,
    centre: xMean,
    squares,
  };
}

/** Value of the line at x, and its standard error there: of the line alone, and of one new point. */
export function lineAt(
  line: Line,
  x: number,
): { readonly value: number; readonly error: number; readonly ofPoint: number } {
  const near = 1 / line.residuals.length + (x - line.centre) ** 2 / line.squares;
  return {
    value: line.intercept + line.slope * x,
    error: line.scatter * Math.sqrt(near),
    ofPoint: line.scatter * Math.sqrt(1 + near),
  };
}

/** Width of the narrowest band parallel to a line that holds all points: minimum-zone straightness. */
export function straightness(x: readonly number[], line: Line): number {
  const reach = Math.max(...x.map((one) => Math.abs(one - line.centre)));
  const scale = Math.max(...line.residuals.map(Math.abs));
  if (scale === 0) return 0;
  const rows = x.map((one) => [1, (one - line.centre) / reach]);
  // The x are not all alike, or there would be no line.
  return (
    2 *
    scale *
    smallestZone(
      rows,
      line.residuals.map((one) => one / scale),
    )!.half
  );
}
