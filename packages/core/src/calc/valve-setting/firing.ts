import { done, type Outcome, refused } from '../../quantity/index.js';
import { CYCLE, crankDegrees, SAME, snap } from './crank-circle.js';
import type { TimingFault, ValveTiming, ValveTimingInput } from './types.js';

/** Sheets go to 16 cylinders; 18 is the most that the command line takes. */
export const MOST_CYLINDERS = 18;

type Firing = ValveTiming['cylinders'];

/** Every cylinder from 1 to the highest must stand in the order exactly once. */
function orderFaults(order: readonly number[]): TimingFault[] {
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
function intervalFaults(intervals: readonly number[], needed: number): TimingFault[] {
  if (intervals.length !== needed) return [{ code: 'interval-count', given: intervals.length, needed }];
  const bad = intervals.flatMap((degrees, i) =>
    degrees >= 0 && degrees <= CYCLE ? [] : [{ code: 'interval-out-of-range', place: i + 1, degrees } as const],
  );
  if (bad.length > 0) return bad;
  const sum = intervals.reduce((total, degrees) => total + degrees, 0);
  return Math.abs(sum - CYCLE) <= SAME * needed ? [] : [{ code: 'interval-sum', degrees: snap(sum) }];
}

/**
 * Where each cylinder fires, in crank degrees after the first cylinder of the order.
 *
 *   firesAt(i) = sum of the intervals before place i; even firing: i x 720/N
 *
 * Refuses an order that is empty, repeats or leaves out a cylinder, and intervals that are negative, of the wrong
 * number or do not add up to 720 degrees. All problems are returned together.
 * Source: definition of the four-stroke cycle; one firing per cylinder in two turns.
 */
export function firingPlaces(input: ValveTimingInput): Outcome<Firing, readonly TimingFault[]> {
  const order = input.firingOrder;
  const wrong = orderFaults(order);
  const intervals = input.firingIntervals?.map(crankDegrees) ?? order.map(() => CYCLE / order.length);
  if (order.length > 0) wrong.push(...intervalFaults(intervals, order.length));
  if (wrong.length > 0) return refused(wrong);
  let turned = 0;
  return done(
    order.map((cylinder, i) => {
      const firesAt = snap(turned);
      turned += intervals[i]!;
      return { cylinder, firesAt };
    }),
  );
}
