import { type Angle, done, type Outcome, refused } from '../../quantity/index.js';
import { CYCLE, within } from './angle.js';

/** Firing top dead centre of one cylinder, in crank angle after that of the first in the firing order, 0 to 4π. */
export interface FiringTop {
  readonly cylinder: number;
  readonly angle: Angle;
}

export type FiringFault =
  | { readonly code: 'no-cylinders' }
  | { readonly code: 'cylinder-twice'; readonly cylinder: number }
  | { readonly code: 'interval-count'; readonly intervals: number; readonly cylinders: number }
  | { readonly code: 'intervals-not-720'; readonly sum: Angle };

/** Printed intervals are rounded to a hundredth of a degree at worst. */
const CYCLE_TOLERANCE = (0.01 * Math.PI) / 180;

/**
 * Crank angle of each cylinder's firing top dead centre, in firing order, counted from the first of the order.
 *
 * `firingOrder` lists each cylinder once. `intervals` [rad] go from each firing to the next, the last one back to the
 * first; they sum to 720°. Without intervals the firing is even: 720°/N apart.
 * Refuses an empty order, a cylinder named twice, the wrong number of intervals, and a sum that is not 720° (± 0.01°).
 * Example: order 1-3-4-2 gives 1 at 0°, 3 at 180°, 4 at 360°, 2 at 540°.
 * Source: definition of the firing order.
 */
export function firingTops(
  firingOrder: readonly number[],
  intervals?: readonly Angle[],
): Outcome<readonly FiringTop[], FiringFault> {
  const fault = orderFault(firingOrder) ?? (intervals && intervalFault(firingOrder.length, intervals));
  if (fault) return refused(fault);
  const even = (CYCLE / firingOrder.length) as Angle;
  let angle = 0;
  const tops = firingOrder.map((cylinder, place) => {
    const top = { cylinder, angle: within(angle, CYCLE) };
    angle += intervals?.[place] ?? even;
    return top;
  });
  return done(tops);
}

function orderFault(firingOrder: readonly number[]): FiringFault | undefined {
  if (firingOrder.length === 0) return { code: 'no-cylinders' };
  const twice = firingOrder.find((cylinder, place) => firingOrder.indexOf(cylinder) !== place);
  return twice === undefined ? undefined : { code: 'cylinder-twice', cylinder: twice };
}

function intervalFault(cylinders: number, intervals: readonly Angle[]): FiringFault | undefined {
  if (intervals.length !== cylinders) return { code: 'interval-count', intervals: intervals.length, cylinders };
  const sum = intervals.reduce<number>((total, interval) => total + interval, 0) as Angle;
  return Math.abs(sum - CYCLE) > CYCLE_TOLERANCE ? { code: 'intervals-not-720', sum } : undefined;
}
