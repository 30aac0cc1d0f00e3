import { type Angle, done, type Outcome, refused, wrapped } from '../../quantity/index.js';
import { CYCLE } from './angle.js';
import { CYCLE_DEGREES, crankDegrees, SAME, snap } from './degree-circle.js';

/** Firing top dead centre of one cylinder, in crank angle after that of the first in the firing order, 0 to 4π. */
export interface FiringTop {
  readonly cylinder: number;
  readonly angle: Angle;
}

/** What is wrong with a firing order or its intervals. Places count from 1; angles are in crank degrees, as printed. */
export type FiringFault =
  | { readonly code: 'order-empty' }
  | { readonly code: 'cylinder-out-of-range'; readonly cylinder: number; readonly most: number }
  | { readonly code: 'cylinder-repeated'; readonly cylinder: number }
  | { readonly code: 'cylinder-missing'; readonly cylinder: number; readonly highest: number }
  | { readonly code: 'interval-count'; readonly given: number; readonly needed: number }
  | { readonly code: 'interval-out-of-range'; readonly place: number; readonly degrees: number }
  | { readonly code: 'interval-sum'; readonly degrees: number };

/** Sheets go to 16 cylinders; 18 is the most that the command line takes. */
export const MOST_CYLINDERS = 18;
/** Half of the last place of an interval printed to a hundredth of a degree. */
const PRINTED_ROUNDING = 0.005;

/**
 * Crank angle of each cylinder's firing top dead centre, in firing order, counted from the first of the order.
 *
 *   angle(k) = sum of the intervals before place k; even firing: (k − 1)·720°/N
 *
 * `firingOrder` lists each cylinder from 1 to the highest once. `intervals` [rad] go from each firing to the next, the
 * last one back to the first: 0 (two fire together) or more, 720° in all, ±0.005° for the print of each. Without
 * intervals the firing is even.
 * Refuses with every fault found: an order that is empty, repeats or leaves out a cylinder, and intervals that are
 * negative, of the wrong number or do not add up to 720°.
 * Example: order 1-3-4-2 gives 1 at 0°, 3 at 180°, 4 at 360°, 2 at 540°.
 * Source: definition of the four-stroke cycle; one firing per cylinder in two turns.
 */
export function firingTops(
  firingOrder: readonly number[],
  intervals?: readonly Angle[],
): Outcome<readonly FiringTop[], readonly FiringFault[]> {
  const faults = [...orderFaults(firingOrder), ...(intervals ? intervalFaults(intervals, firingOrder.length) : [])];
  if (faults.length > 0) return refused(faults);
  const even = CYCLE / firingOrder.length;
  let angle = 0;
  const tops = firingOrder.map((cylinder, place) => {
    const top = { cylinder, angle: wrapped(angle, CYCLE) };
    angle += intervals?.[place] ?? even;
    return top;
  });
  return done(tops);
}

/** Every cylinder from 1 to the highest must stand in the order exactly once. */
function orderFaults(order: readonly number[]): readonly FiringFault[] {
  if (order.length === 0) return [{ code: 'order-empty' }];
  const odd = order.filter((c) => !Number.isInteger(c) || c < 1 || c > MOST_CYLINDERS);
  if (odd.length > 0) return odd.map((cylinder) => ({ code: 'cylinder-out-of-range', cylinder, most: MOST_CYLINDERS }));
  const seen = new Set(order);
  const repeated = [...seen].filter((c) => order.filter((other) => other === c).length > 1);
  const highest = Math.max(...order);
  const missing = Array.from({ length: highest }, (_, i) => i + 1).filter((c) => !seen.has(c));
  return [
    ...repeated.map((cylinder) => ({ code: 'cylinder-repeated', cylinder }) as const),
    ...missing.map((cylinder) => ({ code: 'cylinder-missing', cylinder, highest }) as const),
  ];
}

/** Two cylinders may fire together (interval 0); none may fire before the one ahead of it in the order. */
function intervalFaults(intervals: readonly Angle[], needed: number): readonly FiringFault[] {
  // An empty order has its own fault; a count of intervals against it would say nothing more.
  if (needed === 0) return [];
  if (intervals.length !== needed) return [{ code: 'interval-count', given: intervals.length, needed }];
  const inDegrees = intervals.map(crankDegrees);
  const bad = inDegrees.flatMap((degrees, i) =>
    degrees >= 0 && degrees <= CYCLE_DEGREES ? [] : [{ code: 'interval-out-of-range', place: i + 1, degrees } as const],
  );
  if (bad.length > 0) return bad;
  const sum = snap(inDegrees.reduce((total, degrees) => total + degrees, 0));
  const allowed = PRINTED_ROUNDING * needed + SAME;
  return Math.abs(sum - CYCLE_DEGREES) <= allowed ? [] : [{ code: 'interval-sum', degrees: sum }];
}
