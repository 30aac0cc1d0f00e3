/** Angles on a circle. Angle and period in one unit: radians inside the core, degrees where a field says so. */
import type { Angle } from './quantity.js';

/** Share of the period that adding several parts of a turn may leave behind. */
const DUST = 1e-12;

/**
 * `angle` brought into 0 (inclusive) to `period` (exclusive). An angle within rounding of the period becomes 0.
 * Not a number stays not a number.
 */
export function wrapped(angle: number, period: Angle): Angle;
export function wrapped(angle: number, period: number): number;
export function wrapped(angle: number, period: number): number {
  const rest = ((angle % period) + period) % period;
  return period - rest < DUST * period ? 0 : rest;
}

/** Smallest angle between two directions, 0 to half the period. */
export function apart(a: number, b: number, period: Angle): Angle;
export function apart(a: number, b: number, period: number): number;
export function apart(a: number, b: number, period: number): number {
  const one = wrapped(a - b, period);
  return Math.min(one, period - one);
}
