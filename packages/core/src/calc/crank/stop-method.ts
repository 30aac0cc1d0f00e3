import type { Angle } from '../../quantity/index.js';

/** Result of the positive-stop method: readings are signed, before top dead centre negative. */
export interface StopMethod {
  /** Wheel reading of the true top dead centre. */
  readonly trueTop: Angle;
  /** How far the wheel (or pointer) must be turned so that it reads 0 at true top dead centre. */
  readonly correction: Angle;
  /** What the wheel will read against the stop on each side once corrected. */
  readonly eachSide: Angle;
}

/**
 * True top dead centre from the wheel readings at which the piston meets a fixed stop on each side of it.
 *
 *   top = (a + b)/2,  each side = |b − a|/2
 *
 * `a`, `b` wheel readings [rad], signed: before top dead centre negative. With an offset pin the result is the top
 * dead centre of the mechanism as a whole up to the small unlikeness of both sides.
 * Example: −36.75° and 35.25°: true top reads −0.75°, 36.0° on each side.
 * Source: derived (the piston height is alike on both sides of its highest point).
 */
export function topFromStop(a: Angle, b: Angle): StopMethod {
  const trueTop = ((a + b) / 2) as Angle;
  return { trueTop, correction: -trueTop as Angle, eachSide: (Math.abs(b - a) / 2) as Angle };
}
