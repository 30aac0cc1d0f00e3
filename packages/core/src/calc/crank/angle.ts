import type { Angle } from '../../quantity/index.js';

export const TURN = (2 * Math.PI) as Angle;
/** One four-stroke cycle: two turns of the crank. */
export const CYCLE = (4 * Math.PI) as Angle;

/** A billionth of a degree or so: what adding several thirds of a turn may leave behind. */
const ROUNDING = 1e-11;

/** `angle` [rad] brought into 0 (inclusive) to `period` (exclusive). An angle within rounding of the period becomes 0. */
export function within(angle: number, period: Angle): Angle {
  const rest = ((angle % period) + period) % period;
  return (period - rest < ROUNDING ? 0 : rest) as Angle;
}

/** Smallest angle [rad] between two directions, 0 to half the period. */
export function apart(a: number, b: number, period: Angle): Angle {
  const one = within(a - b, period);
  return Math.min(one, period - one) as Angle;
}
