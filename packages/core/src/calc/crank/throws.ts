import { type Angle, apart, wrapped } from '../../quantity/index.js';
import { TURN } from './angle.js';
import type { FiringTop } from './firing.js';

/** One cylinder's place on the crank: `throwAngle` in the running sense, `bankAngle` from upright, clockwise seen from the front. */
export interface CylinderThrow {
  readonly cylinder: number;
  readonly throwAngle: Angle;
  readonly bankAngle: Angle;
}

/**
 * Crank angle [rad, 0 to 2π] at which a cylinder is at top dead centre, counted from the crank's reference upright:
 * A = β − τ, with β the bank angle in the running sense and τ the throw's angle ahead of the reference.
 *
 * Source: derived; the crankpin points along its cylinder at top dead centre.
 */
export function topAngleOfThrow(one: CylinderThrow, rotation: 'clockwise' | 'anticlockwise'): Angle {
  const bank = rotation === 'clockwise' ? one.bankAngle : -one.bankAngle;
  return wrapped(bank - one.throwAngle, TURN);
}

/** A cylinder whose throw puts top dead centre elsewhere than the firing order does; both modulo one turn. */
export interface ThrowDisagreement {
  readonly cylinder: number;
  readonly byThrow: Angle;
  readonly byFiringOrder: Angle;
}

/**
 * Cylinders whose firing top dead centre does not fit the crank's throws, both counted from the first in the firing
 * order and modulo one turn. An empty list means that the crank and the firing order agree. A cylinder whose throw is
 * not given is left out: not known is not wrong.
 *
 * `tolerance` [rad] allows for printed rounding. Source: derived (see `topAngleOfThrow`).
 */
export function firingOrderAgainstThrows(
  tops: readonly FiringTop[],
  throws: readonly CylinderThrow[],
  rotation: 'clockwise' | 'anticlockwise',
  tolerance: Angle,
): readonly ThrowDisagreement[] {
  const byCylinder = new Map(throws.map((one) => [one.cylinder, topAngleOfThrow(one, rotation)]));
  const known = tops.flatMap(({ cylinder, angle }) => {
    const byThrow = byCylinder.get(cylinder);
    return byThrow === undefined ? [] : [{ cylinder, byThrow, angle }];
  });
  const first = known[0];
  if (!first) return [];
  return known
    .map(({ cylinder, byThrow, angle }) => ({
      cylinder,
      byThrow: wrapped(byThrow - first.byThrow, TURN),
      byFiringOrder: wrapped(angle - first.angle, TURN),
    }))
    .filter((one) => apart(one.byThrow, one.byFiringOrder, TURN) > tolerance);
}

/** Top dead centre of a crankpin's second cylinder after its first, modulo one turn [rad]. */
export interface PinDifference {
  readonly pin: number;
  readonly first: number;
  readonly second: number;
  readonly difference: Angle;
}

/**
 * For crankpins that carry two cylinders: how far the second cylinder's top dead centre lies after the first's, modulo
 * one turn. On a vee engine with bank angle V and common pins every pin must show the same difference, V or 360° − V;
 * a firing order with two numbers exchanged does not pass. `pins` gives the two cylinders of each pin, in one fixed
 * sense (say left bank first). Cylinders that are not in the firing order are left out.
 *
 * Example: order 1-8-4-3-6-5-7-2, pins (1,2)(3,4)(5,6)(7,8): 270° on all four.
 * Source: derived; a shared pin holds the pair's top dead centres at the bank angle apart.
 */
export function pinDifferences(
  tops: readonly FiringTop[],
  pins: readonly (readonly [number, number])[],
): readonly PinDifference[] {
  const angles = new Map(tops.map((top) => [top.cylinder, top.angle]));
  return pins.flatMap(([first, second], place) => {
    const a = angles.get(first);
    const b = angles.get(second);
    if (a === undefined || b === undefined) return [];
    return [{ pin: place + 1, first, second, difference: wrapped(b - a, TURN) }];
  });
}
