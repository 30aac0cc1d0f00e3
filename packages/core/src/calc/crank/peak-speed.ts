import {
  type Angle,
  type AngularSpeed,
  done,
  type Length,
  type Outcome,
  type Speed,
  type Time,
} from '../../quantity/index.js';
import { type DeadCentres, deadCentres } from './dead-centres.js';
import { bendAt, fallAt, heightAt, type RodTooShort, type SliderCrank } from './slider-crank.js';

/** Enough halvings to use up the digits of a double. */
const HALVINGS = 60;

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
  return centres.ok ? done(steepest(g, centres.value)) : centres;
}

function steepest(g: SliderCrank, centres: DeadCentres): Angle {
  let before: number = centres.topAngle;
  let after: number = centres.bottomAngle;
  for (let step = 0; step < HALVINGS; step += 1) {
    const middle = ((before + after) / 2) as Angle;
    if (bendAt(g, middle) > 0) before = middle;
    else after = middle;
  }
  return ((before + after) / 2) as Angle;
}

/** The piston at its highest speed on the way down. */
export type PeakSpeed = {
  readonly angle: Angle;
  readonly speed: Speed;
  readonly topHeight: Length;
  readonly pinHeight: Length;
  /** From top dead centre. */
  readonly time: Time;
};

/** Highest piston speed on the way down, where and when; symbols, refusal and source as in `peakSpeedAngle`. */
export function peakSpeed(g: SliderCrank, crankSpeed: AngularSpeed): Outcome<PeakSpeed, RodTooShort> {
  const centres = deadCentres(g);
  if (!centres.ok) return centres;
  const { topAngle, topHeight } = centres.value;
  const angle = steepest(g, centres.value);
  return done({
    angle,
    speed: (crankSpeed * fallAt(g, angle)) as Speed,
    topHeight,
    pinHeight: heightAt(g, angle),
    time: ((angle - topAngle) / crankSpeed) as Time,
  });
}
