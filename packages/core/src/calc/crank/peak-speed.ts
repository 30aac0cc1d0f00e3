import { type Angle, type AngularSpeed, done, type Outcome } from '../../quantity/index.js';
import { deadCentres } from './dead-centres.js';
import { pistonAcceleration, type RodTooShort, type SliderCrank } from './slider-crank.js';

/** Enough halvings to use up the digits of a double. */
const HALVINGS = 60;
const UNIT_SPEED = 1 as AngularSpeed;

/**
 * Crank angle [rad] of the highest piston speed on the way down: where the exact acceleration crosses zero.
 *
 * Symbols and units as in `pinHeight`. The angle does not depend on the crank speed. It is found by halving the range
 * between the dead centres. It is not 90°, and it is not the angle at which rod and throw are square to each other.
 * Refuses with `rod-too-short`.
 * Example: rod 6 in, throw 2 in gives 73.1753°; "rod square to throw" would give 71.57°.
 * Source: derived (root of the second derivative of `pinHeight`).
 */
export function peakSpeedAngle(g: SliderCrank): Outcome<Angle, RodTooShort> {
  const centres = deadCentres(g);
  if (!centres.ok) return centres;
  let before: number = centres.value.topAngle;
  let after: number = centres.value.bottomAngle;
  for (let step = 0; step < HALVINGS; step += 1) {
    const middle = ((before + after) / 2) as Angle;
    const acceleration = pistonAcceleration(g, middle, UNIT_SPEED);
    if (!acceleration.ok) return acceleration;
    if (acceleration.value > 0) before = middle;
    else after = middle;
  }
  return done(((before + after) / 2) as Angle);
}
