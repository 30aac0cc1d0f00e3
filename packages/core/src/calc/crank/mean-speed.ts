import type { AngularSpeed, Length, Speed } from '../../quantity/index.js';

/**
 * Mean piston speed [m/s]: two strokes a turn, v = 2·S·n = S·ω/π.
 *
 * S stroke [m], ω crank speed [rad/s]; both at least 0. Exact by definition.
 * Example: stroke 86.0 mm at 3600 r/min gives 10.32 m/s.
 * Source: definition.
 */
export function meanPistonSpeed(stroke: Length, crankSpeed: AngularSpeed): Speed {
  return ((stroke * crankSpeed) / Math.PI) as Speed;
}
