/** From standard to expanded uncertainty. */
import { studentQuantile } from './distributions.js';

/**
 * Coverage factor k: the true value lies within ±k·u with the level asked for.
 *
 * `level` share inside 0 to 1; `degrees` of freedom at least 1, or infinite for the normal distribution.
 * Example: 95.45 %, 10 degrees: 2.28. Source: JCGM 100, table G.2 (recalled), computed here.
 */
export const coverageFactor = (level: number, degrees: number): number => studentQuantile((1 + level) / 2, degrees);

export interface RectanglePair {
  /** Top over base of the trapezoid that the two make, 0 to 1. */
  readonly edgeRatio: number;
  readonly coverage: number;
}

/**
 * Coverage factor where two rectangular contributions outweigh the rest: together they make a trapezoid.
 *
 *   β = |a1 − a2|/(a1 + a2);  k = (1 − √((1 − p)·(1 − β²)))/√((1 + β²)/6), flat part: k = p·(1 + β)/2/√((1 + β²)/6)
 *
 * a1, a2 half widths in one unit, not both 0; p `level` inside 0 to 1.
 * Example: 50 and 25, 95 %: β 0.33, k 1.83. Source: EA-4/02, supplement 2, S10 (recalled); flat part derived here.
 */
export function rectanglePairCoverage(one: number, other: number, level: number): RectanglePair {
  const edgeRatio = Math.abs(one - other) / (one + other);
  const standard = Math.sqrt((1 + edgeRatio ** 2) / 6);
  const onTheSlope = level >= (2 * edgeRatio) / (1 + edgeRatio);
  const reach = onTheSlope ? 1 - Math.sqrt((1 - level) * (1 - edgeRatio ** 2)) : (level * (1 + edgeRatio)) / 2;
  return { edgeRatio, coverage: reach / standard };
}
