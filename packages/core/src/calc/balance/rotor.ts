import {
  type Angle,
  type AngularSpeed,
  done,
  type Length,
  type Mass,
  type Outcome,
  refused,
} from '../../quantity/index.js';
import { angleOf, type Complex, length, plus, polar, sum, times } from './complex.js';

/** A mass out of the middle of a rotor; angle in any one sense from any one mark. */
export interface Unbalance {
  readonly mass: Mass;
  readonly radius: Length;
  readonly angle: Angle;
  readonly position: Length;
}

/** A mass to put on (or, opposite to it, to take off). */
export interface Correction {
  readonly mass: Mass;
  readonly angle: Angle;
}
export interface SamePlane {
  readonly code: 'same-plane';
}

const moment = ({ mass, radius, angle }: Unbalance): Complex => polar(mass * radius, angle);

/** Static unbalance of a rotor [kg·m] as a vector: Σ m·r. Source: definition. */
export const staticUnbalance = (parts: readonly Unbalance[]): Complex => sum(parts.map(moment));

/**
 * Masses in two planes that balance a rotor for force and couple, first order.
 *
 *   ΣU + U1 + U2 = 0,  Σ(z·U) + z1·U1 + z2·U2 = 0  with  U = m·r·e^(iα)
 *   U2 = −Σ (z − z1)·U/(z2 − z1),  U1 = −ΣU − U2
 *
 * z1, z2 `planes` [m] along the axis, `radii` [m] at which the masses go. Refuses with `same-plane` when z1 = z2.
 * Example: 10 g at 50 mm, 0°, in the middle between the planes: 5 g at 50 mm, 180°, in each.
 * Source: `khurmi-balance` (from memory), rotating masses in different planes; derived.
 */
export function twoPlaneCorrection(
  parts: readonly Unbalance[],
  planes: readonly [Length, Length],
  radii: readonly [Length, Length],
): Outcome<readonly [Correction, Correction], SamePlane> {
  const apart = planes[1] - planes[0];
  if (apart === 0) return refused({ code: 'same-plane' });
  const couple = sum(parts.map((part) => times(moment(part), part.position - planes[0])));
  const second = times(couple, -1 / apart);
  const first = times(plus(staticUnbalance(parts), second), -1);
  return done([correction(first, radii[0]), correction(second, radii[1])]);
}

/** A vector of unbalance [kg·m] as a mass at a radius [m]. */
export const correction = (vector: Complex, radius: Length): Correction => ({
  mass: (length(vector) / radius) as Mass,
  angle: angleOf(vector) as Angle,
});

/**
 * Residual unbalance that a balance quality grade allows [kg·m]: U = m·G/ω.
 *
 * m `mass` of the rotor [kg], G `grade` [m/s] (G 6.3 is 6.3 mm/s), ω `speed` [rad/s] above 0.
 * Example: 25 kg, G 16, 6000 r/min: 637 g·mm. Source: ISO 21940-11 (from memory).
 */
export const allowedUnbalance = (mass: Mass, grade: number, speed: AngularSpeed): number => (mass * grade) / speed;
