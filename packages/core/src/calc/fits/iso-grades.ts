import type { Length } from '../../quantity/index.js';
import { geometricMean, MAIN_ENDS, rangeOf } from './iso-ranges.js';

/** Standard tolerances in µm by grade, 13 main ranges to 500 mm each. Source: ISO 286-1 (from memory; rows read in copies). */
const GRADES: Readonly<Record<number, readonly number[]>> = {
  1: [0.8, 1, 1, 1.2, 1.5, 1.5, 2, 2.5, 3.5, 4.5, 6, 7, 8],
  2: [1.2, 1.5, 1.5, 2, 2.5, 2.5, 3, 4, 5, 7, 8, 9, 10],
  3: [2, 2.5, 2.5, 3, 4, 4, 5, 6, 8, 10, 12, 13, 15],
  4: [3, 4, 4, 5, 6, 7, 8, 10, 12, 14, 16, 18, 20],
  5: [4, 5, 6, 8, 9, 11, 13, 15, 18, 20, 23, 25, 27],
  6: [6, 8, 9, 11, 13, 16, 19, 22, 25, 29, 32, 36, 40],
  7: [10, 12, 15, 18, 21, 25, 30, 35, 40, 46, 52, 57, 63],
  8: [14, 18, 22, 27, 33, 39, 46, 54, 63, 72, 81, 89, 97],
  9: [25, 30, 36, 43, 52, 62, 74, 87, 100, 115, 130, 140, 155],
  10: [40, 48, 58, 70, 84, 100, 120, 140, 160, 185, 210, 230, 250],
  11: [60, 75, 90, 110, 130, 160, 190, 220, 250, 290, 320, 360, 400],
  12: [100, 120, 150, 180, 210, 250, 300, 350, 400, 460, 520, 570, 630],
  13: [140, 180, 220, 270, 330, 390, 460, 540, 630, 720, 810, 890, 970],
  14: [250, 300, 360, 430, 520, 620, 740, 870, 1000, 1150, 1300, 1400, 1550],
  15: [400, 480, 580, 700, 840, 1000, 1200, 1400, 1600, 1850, 2100, 2300, 2500],
  16: [600, 750, 900, 1100, 1300, 1600, 1900, 2200, 2500, 2900, 3200, 3600, 4000],
  17: [1000, 1200, 1500, 1800, 2100, 2500, 3000, 3500, 4000, 4600, 5200, 5700, 6300],
  18: [1400, 1800, 2200, 2700, 3300, 3900, 4600, 5400, 6300, 7200, 8100, 8900, 9700],
};

export const FINEST_GRADE = 1;
export const COARSEST_GRADE = 18;

/**
 * Standard tolerance of a grade [µm]: IT`grade`, whole from 1 to 18, of a `size` over 0 to 500 mm [m]; else undefined.
 *
 * The table is the standard, not the formula beside it: 6 to 10 mm has IT7 15 where 16·i gives 14.4.
 * Example: 22 mm, IT7: 21. Source: ISO 286-1 (see `GRADES`).
 */
export function standardTolerance(size: Length, grade: number): number | undefined {
  const place = rangeOf(MAIN_ENDS, size);
  return place === undefined ? undefined : GRADES[grade]?.[place];
}

/** Multiples of the tolerance unit, IT5 to IT18. Source: ISO 286-1 (from memory). */
const MULTIPLES = [7, 10, 16, 25, 40, 64, 100, 160, 250, 400, 640, 1000, 1600, 2500] as const;
const FIRST_MULTIPLE = 5;

export interface ToleranceUnit {
  /** Ends of the range [mm]. */
  readonly over: number;
  readonly upTo: number;
  /** Geometric mean of the range [mm]. */
  readonly mean: number;
  /** i [µm]. */
  readonly unit: number;
  /** Grade by the formula [µm], from IT5 upward. */
  readonly grade?: number;
}

/**
 * Standard tolerance unit: i = 0.45·∛D + 0.001·D [µm], D the geometric mean of the range [mm]; IT5 and up are multiples.
 *
 * `size` over 0 to 500 mm [m], else undefined; `grade` 1 to 18. A check of the table with about 1 µm of slack.
 * Example: range 18 to 30: D 23.238 mm, i 1.3074 µm, 16·i 20.9. Source: ISO 286-1 (from memory).
 */
export function toleranceUnit(size: Length, grade: number): ToleranceUnit | undefined {
  const place = rangeOf(MAIN_ENDS, size);
  if (place === undefined) return undefined;
  const mean = geometricMean(place);
  const unit = 0.45 * Math.cbrt(mean) + 0.001 * mean;
  const multiple = MULTIPLES[grade - FIRST_MULTIPLE];
  const [over, upTo] = [MAIN_ENDS[place] as number, MAIN_ENDS[place + 1] as number];
  return { over, upTo, mean, unit, ...(multiple !== undefined && { grade: multiple * unit }) };
}
