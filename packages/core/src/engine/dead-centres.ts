import { done, type Outcome, refused } from '../quantity/outcome.js';
import type { Angle } from '../quantity/quantity.js';
import { CYCLE, ONE_TURN, wrapped } from './angles.js';
import type { Bank, CylinderNumber, Layout } from './model.js';

export interface FiringOrderNotStated {
  readonly code: 'firing-order-not-stated';
}

/** Crank angle from each firing to the next, in firing order: as stated, else even (720 degrees / count). */
export function firingIntervals(layout: Layout): readonly Angle[] {
  const count = layout.firingOrder.length;
  return layout.firingIntervals ?? layout.firingOrder.map(() => (CYCLE / count) as Angle);
}

/**
 * Crank angle [rad] of every cylinder's firing dead centre, counted from the firing dead centre of cylinder 1 in the
 * running sense, in [0, 4π).
 *
 *   d(c) = sum of the intervals before c in the firing order, less the same sum for cylinder 1, modulo 720 degrees
 *
 * Holds for four-stroke engines. Refuses with `firing-order-not-stated` where the sheet does not print the order.
 * Example: order 1-3-4-2, even: cylinder 1 at 0, 3 at 180, 4 at 360, 2 at 540 degrees.
 * Source: definition; cycle of two turns (720 degrees).
 */
export function firingDeadCentres(layout: Layout): Outcome<ReadonlyMap<CylinderNumber, Angle>, FiringOrderNotStated> {
  if (layout.firingOrder.length === 0) return refused({ code: 'firing-order-not-stated' });
  const intervals = firingIntervals(layout);
  const running = new Map<CylinderNumber, number>();
  let sum = 0;
  layout.firingOrder.forEach((cylinder, turn) => {
    running.set(cylinder, sum);
    sum += intervals[turn] ?? 0;
  });
  const zero = running.get(1) ?? 0;
  return done(new Map([...running].map(([cylinder, at]) => [cylinder, wrapped(at - zero, CYCLE)])));
}

/** The bank's angle from straight up in the running sense [rad]: the stated angle is clockwise seen from the front. */
export function bankAngleInRunningSense(layout: Layout, bank: Bank): Angle {
  return (layout.rotation === 'clockwise' ? bank.angle : -bank.angle) as Angle;
}

/** Angle [rad] of the cylinder's axis past cylinder 1's axis, in the running sense; 0 where either bank is unknown. */
export function axisPastFirst(layout: Layout, number: CylinderNumber): Angle {
  const axis = (wanted: CylinderNumber) => {
    const cylinder = layout.cylinders.find((each) => each.number === wanted);
    const bank = layout.banks.find((each) => each.id === cylinder?.bank);
    return bank === undefined ? 0 : bankAngleInRunningSense(layout, bank);
  };
  return (axis(number) - axis(1)) as Angle;
}

/**
 * Crankpin direction [rad] of every cylinder relative to cylinder 1's, in the running sense, in [0, 2π): as stated,
 * else from the firing order.
 *
 *   t(c) = β(c) − β(1) − d(c)   modulo 360 degrees
 *
 * | symbol | meaning                                                      | unit |
 * |--------|--------------------------------------------------------------|------|
 * | t      | direction of the crankpin when cylinder 1 is at dead centre   | rad  |
 * | β      | direction of the cylinder axis from straight up, running sense | rad  |
 * | d      | firing dead centre, see `firingDeadCentres`                    | rad  |
 *
 * Holds for: pins without offset, cylinder axes through the crank centreline. A cylinder is at dead centre when its
 * pin points along its axis: d + t = β, up to whole turns and the choice of reference.
 * Refuses with `firing-order-not-stated` where neither throw angles nor the order are stated.
 * Example: inline four 1-3-4-2 gives 0, 180, 180, 0 degrees for cylinders 1 to 4.
 * Source: derivation above; compare the constant pin-mate difference of the reference file, row MO-36.
 */
export function throwAngles(layout: Layout): Outcome<ReadonlyMap<CylinderNumber, Angle>, FiringOrderNotStated> {
  const first = layout.cylinders.find((each) => each.number === 1)?.throwAngle ?? 0;
  const centres = firingDeadCentres(layout);
  const angles = new Map<CylinderNumber, Angle>();
  for (const cylinder of layout.cylinders) {
    if (cylinder.throwAngle !== undefined) {
      angles.set(cylinder.number, wrapped(cylinder.throwAngle - first, ONE_TURN));
      continue;
    }
    if (!centres.ok) return refused(centres.fault);
    const at = centres.value.get(cylinder.number) ?? 0;
    angles.set(cylinder.number, wrapped(axisPastFirst(layout, cylinder.number) - at, ONE_TURN));
  }
  return done(angles);
}
