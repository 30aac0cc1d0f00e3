import type { Acceleration, Angle, AngularSpeed, Length, Outcome, Speed } from '../../quantity/index.js';
import { collect } from './collect.js';
import { pistonDrop } from './dead-centres.js';
import { pinHeight, pistonAcceleration, pistonSpeed, type RodTooShort, type SliderCrank } from './slider-crank.js';

/** Everything about the piston at one crank angle. */
export type PistonMotion = {
  readonly pinHeight: Length;
  readonly drop: Length;
  readonly speed: Speed;
  readonly acceleration: Acceleration;
};

/**
 * Position, speed and acceleration of the piston at a crank angle, together. Symbols, signs, refusal and source as in
 * `pinHeight`, `pistonDrop`, `pistonSpeed` and `pistonAcceleration`.
 */
export const pistonMotion = (
  g: SliderCrank,
  crankAngle: Angle,
  crankSpeed: AngularSpeed,
): Outcome<PistonMotion, RodTooShort> =>
  collect({
    pinHeight: pinHeight(g, crankAngle),
    drop: pistonDrop(g, crankAngle),
    speed: pistonSpeed(g, crankAngle, crankSpeed),
    acceleration: pistonAcceleration(g, crankAngle, crankSpeed),
  });
