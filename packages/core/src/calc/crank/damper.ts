import type { Angle, Length } from '../../quantity/index.js';

/**
 * Distance to mark off along the rim of a damper or flywheel for a crank angle: s = D·φ/2 (that is π·D·degrees/360).
 *
 * D rim diameter [m], φ angle [rad]. Measure with a tape along the rim: straight across is shorter, see `rimChord`.
 * Example: 6.75 in damper, 34° gives 2.003 in. Source: derived (arc of a circle).
 */
export function rimDistance(diameter: Length, angle: Angle): Length {
  return ((diameter * angle) / 2) as Length;
}

/**
 * Straight distance between two rim marks an angle apart: c = D·sin(φ/2).
 *
 * D rim diameter [m], φ angle [rad], 0 to 2π. Example: 6.75 in damper, 34° gives 1.974 in. Source: derived.
 */
export function rimChord(diameter: Length, angle: Angle): Length {
  return (diameter * Math.sin(angle / 2)) as Length;
}

/**
 * Crank angle [rad] of a distance along the rim: φ = 2·s/D. D and s in [m], D above 0. Turns `rimDistance` round.
 * Source: derived.
 */
export function rimAngle(diameter: Length, distance: Length): Angle {
  return ((2 * distance) / diameter) as Angle;
}
