import type { Angle } from '../../quantity/index.js';

export interface EqualLifts {
  /** Middle of each pair of readings. */
  readonly middles: readonly Angle[];
  /** Mean of the middles. */
  readonly centreline: Angle;
  /** Largest middle minus smallest: repeat error, or flanks that are unlike. */
  readonly spread: Angle;
  /** Standard deviation of the mean; undefined from one pair. */
  readonly standardUncertainty: Angle | undefined;
}

/**
 * Centreline of a lobe from pairs of wheel readings, each pair at one lift, one reading on each flank.
 *
 *   middle i = (a i + b i)/2 − top,  CL = mean,  u = s(middles)/√n
 *
 * | symbol | argument  | unit  | meaning                                                              |
 * |--------|-----------|-------|----------------------------------------------------------------------|
 * | a      | `opening` | [rad] | readings on the opening flank, at least one                          |
 * | b      | `closing` | [rad] | readings at the same lifts on the closing flank, as many             |
 * | top    | `top`     | [rad] | what the wheel reads at true top dead centre, signed; 0 when it is right |
 *
 * Readings are signed, before the dead centre negative, and taken turning in the running sense. An error of the wheel
 * moves every reading alike, so it is taken off with its sign. Unlike flanks make the middles drift with the lift.
 * Example: 60.0° and 145.5°, wheel right: 102.75°. Source: derived; type A evaluation of JCGM 100, 4.2.
 */
export function equalLifts(opening: readonly Angle[], closing: readonly Angle[], top: Angle): EqualLifts {
  const middles = opening.map((a, at) => (a + closing[at]!) / 2 - top);
  const mean = middles.reduce((sum, one) => sum + one, 0) / middles.length;
  const squares = middles.reduce((sum, one) => sum + (one - mean) ** 2, 0);
  const count = middles.length;
  return {
    middles: middles as Angle[],
    centreline: mean as Angle,
    spread: (Math.max(...middles) - Math.min(...middles)) as Angle,
    standardUncertainty: count > 1 ? (Math.sqrt(squares / (count - 1) / count) as Angle) : undefined,
  };
}
