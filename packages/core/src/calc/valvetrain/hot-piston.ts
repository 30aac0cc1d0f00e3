/** How much nearer a piston comes when hot and at speed: an estimate. */
import type { AngularSpeed, Area, Force, Length, Mass, Pressure } from '../../quantity/index.js';
import type { SliderCrank } from '../crank/index.js';

/**
 * Pull on a connecting rod at the top of the exhaust stroke [N]: m·r·ω²·(1 + r/l).
 *
 * `mass` [kg] piston, pin, rings, locks and small end with about a third of the rod's shank; ω `speed` [rad/s]. No gas pressure.
 * Source: exact slider-crank at the dead centre without offset (J. B. Heywood, section 2.2, from memory).
 */
export function pullAtTop({ crankRadius, rodLength }: SliderCrank, mass: Mass, speed: AngularSpeed): Force {
  return (mass * crankRadius * speed ** 2 * (1 + crankRadius / rodLength)) as Force;
}

/** Stretch of a bar under a pull [m]: F·l/(E·A). Source: definition of the modulus. */
export function stretch(pull: Force, length: Length, modulus: Pressure, section: Area): Length {
  return ((pull * length) / (modulus * section)) as Length;
}
