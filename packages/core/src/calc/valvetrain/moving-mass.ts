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

/**
 * Lowest crank speed at which the spring no longer holds the gear on a measured lobe, and where.
 *
 *   ω² = (F₀ + k·h)/(m·(−h″)), least over all angles with h″ < 0
 *
 * `curve` valve lift [m] over crank angle [rad]; F₀ `seatLoad` [N], k `rate` [N/m], m `mass` [kg] at the valve. Looked at on each reading and at
 * seven places between two. Undefined for a curve that never bends down. Errors of the readings are magnified by the
 * second derivative. Rigid gear; real gear bends and parts earlier. Source: Newton.
 */
export function firstToPart(curve: Spline, seatLoad: Force, rate: Stiffness, mass: Mass): FirstToPart | undefined {
  const { x } = curve;
  const places = x.slice(1).flatMap((end, at) => {
    const start = x[at]!;
    return Array.from({ length: LOOKS + 1 }, (_, look) => start + ((end - start) * look) / LOOKS);
  });
  const found = places.flatMap((angle) => {
    const { value, bend } = splineAt(curve, angle);
    const load = (seatLoad + rate * Math.max(0, value)) as Force;
    return bend < 0 ? [{ speed: separationSpeed(load, mass, bend), angle, lift: value }] : [];
  });
  return found.length === 0 ? undefined : found.reduce((best, one) => (one.speed < best.speed ? one : best));
}
