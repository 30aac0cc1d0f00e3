/** Masses of the valve gear referred to one point, and what the spring must hold. */
import type { Acceleration, AngularSpeed, Force, Mass, Ratio, Stiffness } from '../../quantity/index.js';
import { type Spline, splineAt } from '../numeric/index.js';

export interface GearMasses {
  /** Valve, retainer, locks, cap: all that moves with the valve. */
  readonly withValve: Mass;
  /** Whole spring or springs; a third counts. */
  readonly spring: Mass;
  /** Rocker referred to its valve end: moment of inertia over the square of the valve arm. */
  readonly rockerAtValve: Mass;
  /** Lifter and pushrod: all that moves with the lobe. */
  readonly withLobe: Mass;
}

/** A third of a spring moves with its moving end: the energy of coils whose speed grows along the spring. */
const SPRING_SHARE = 1 / 3;

/**
 * Effective mass of the valve gear at the valve [kg]: m = valve + spring/3 + rocker + lobe side/R².
 *
 * R `ratio` valve lift over lobe lift. The lobe side moves R times slower than the valve, so by equal energy it counts 1/R² there;
 * referred to the lobe the whole counts R² of this. Source: equal kinetic energy.
 */
export function massAtValve(m: GearMasses, ratio: Ratio): Mass {
  return (m.withValve + m.spring * SPRING_SHARE + m.rockerAtValve + m.withLobe / ratio ** 2) as Mass;
}

/** Force [N] that holds a mass [kg] on a lobe that falls away with an acceleration [m/s², negative]. Source: Newton. */
export function followForce(mass: Mass, acceleration: Acceleration): Force {
  return Math.max(0, -mass * acceleration) as Force;
}

/**
 * Speed at which the spring load is just what the lobe needs: ω = √(F/(m·|h″|)) [rad/s].
 *
 * `load` F [N], `bend` h″ [m/rad², below 0] of the valve lift by crank angle, `mass` m [kg] at the valve. Source: Newton.
 */
export function separationSpeed(load: Force, mass: Mass, bend: number): AngularSpeed {
  return Math.sqrt(load / (mass * -bend)) as AngularSpeed;
}

/** Where along a lobe the valve gear would part first. */
export interface FirstToPart {
  readonly speed: AngularSpeed;
  /** Crank angle there [rad], and lift [m]. */
  readonly angle: number;
  readonly lift: number;
}

const LOOKS = 8;

/** Valve lift [m] at a crank angle [rad] with its second derivative [m/rad²]. */
export interface LobePlace {
  readonly angle: number;
  readonly lift: number;
  readonly bend: number;
}

/**
 * Lowest crank speed at which the spring no longer holds the gear on a lobe, and where.
 *
 *   ω² = (F₀ + k·h)/(m·(−h″)), least over all `places` with h″ < 0
 *
 * F₀ `seatLoad` [N], k `rate` [N/m], m `mass` [kg] at the valve. Undefined for a curve that never bends down. Rigid gear; real gear bends
 * and parts earlier. Source: Newton.
 */
export function firstToPartAt(
  places: readonly LobePlace[],
  seatLoad: Force,
  rate: Stiffness,
  mass: Mass,
): FirstToPart | undefined {
  let first: FirstToPart | undefined;
  for (const { angle, lift, bend } of places) {
    if (bend >= 0) continue;
    const speed = separationSpeed((seatLoad + rate * Math.max(0, lift)) as Force, mass, bend);
    if (first === undefined || speed < first.speed) first = { speed, angle, lift };
  }
  return first;
}

/**
 * `firstToPartAt` for a measured lobe: `curve` valve lift [m] over crank angle [rad], looked at on each reading and at seven places
 * between two. Errors of the readings are magnified by the second derivative.
 */
export const firstToPart = (curve: Spline, seatLoad: Force, rate: Stiffness, mass: Mass): FirstToPart | undefined =>
  firstToPartAt(placesOn(curve), seatLoad, rate, mass);

/** Each reading of a curve and seven places between two. */
export const placesOn = (curve: Spline): readonly LobePlace[] =>
  curve.x.slice(1).flatMap((end, at) => {
    const start = curve.x[at]!;
    return Array.from({ length: LOOKS + 1 }, (_, look) => {
      const angle = start + ((end - start) * look) / LOOKS;
      const { value: lift, bend } = splineAt(curve, angle);
      return { angle, lift, bend };
    });
  });
