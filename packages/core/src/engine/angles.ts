import type { Angle } from '../quantity/quantity.js';

export const DEGREE = Math.PI / 180;
export const ONE_TURN = 2 * Math.PI;
/** A four-stroke cycle: two turns of the crank. */
export const CYCLE = 4 * Math.PI;

/** `angle` brought into [0, `span`), with the rounding dust just below `span` taken as 0. */
export function wrapped(angle: number, span: number): Angle {
  const rest = ((angle % span) + span) % span;
  return (span - rest < 1e-9 ? 0 : rest) as Angle;
}

/** Smallest distance between two angles round a circle of `span`, from 0 to `span` / 2. */
export function apart(a: number, b: number, span: number): Angle {
  const gap = wrapped(a - b, span);
  return Math.min(gap, span - gap) as Angle;
}
