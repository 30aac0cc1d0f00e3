import type { Length } from '../../quantity/index.js';

/** Main nominal ranges up to 500 mm: over the first, up to and with the second [mm]. Source: ISO 286-1 (from memory). */
export const MAIN_ENDS = [0, 3, 6, 10, 18, 30, 50, 80, 120, 180, 250, 315, 400, 500] as const;
/** The finer ranges in which the larger deviations are stepped [mm]. Source: ISO 286-1 (from memory). */
export const FINE_ENDS = [
  0, 3, 6, 10, 14, 18, 24, 30, 40, 50, 65, 80, 100, 120, 140, 160, 180, 200, 225, 250, 280, 315, 355, 400, 450, 500,
] as const;

const MILLIMETRE = 0.001;
/** A size typed as 30 mm must stay in the range that ends at 30 mm. */
const ROUNDING = 1e-9;

/**
 * Place of the range that holds a size: over its lower end, up to and with its upper end; undefined outside 0 to 500 mm.
 * `size` [m].
 */
export function rangeOf(ends: readonly number[], size: Length): number | undefined {
  const millimetres = size / MILLIMETRE;
  const place = ends.findIndex((end, at) => at > 0 && millimetres <= end * (1 + ROUNDING)) - 1;
  return place >= 0 && millimetres > 0 ? place : undefined;
}

/**
 * Mean of the main range that a size lies in: √(low·high) [mm]; the first range counts from 1 mm.
 * Source: ISO 286-1 (from memory).
 */
export function geometricMean(place: number): number {
  const [low, high] = [MAIN_ENDS[place] as number, MAIN_ENDS[place + 1] as number];
  return Math.sqrt((low === 0 ? 1 : low) * high);
}
