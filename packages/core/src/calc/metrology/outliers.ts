/** Readings that do not belong: three tests. None of them deletes anything; they ask for another reading. Any unit. */
import { studentQuantile } from './distributions.js';
import { DIXON_LEVELS, dixonCritical } from './dixon-table.js';
import { deviation, mean, median, medianDistance } from './repeats.js';

export type End = 'highest' | 'lowest' | 'either';

/** Place of the suspect, from 0. For `either` the one farther from the mean, the higher one of two equally far. */
export function suspectOf(readings: readonly number[], end: End): number {
  const high = readings.indexOf(Math.max(...readings));
  const low = readings.indexOf(Math.min(...readings));
  if (end !== 'either') return end === 'highest' ? high : low;
  const centre = mean(readings);
  return readings[high]! - centre >= centre - readings[low]! ? high : low;
}

/** Distance of a reading from the mean in standard deviations. All readings alike: 0. */
export function grubbsStatistic(readings: readonly number[], suspect: number): number {
  const s = deviation(readings);
  return s === 0 ? 0 : Math.abs(readings[suspect]! - mean(readings)) / s;
}

/**
 * Critical value of Grubbs' test for n readings, 3 or more.
 *
 *   G = (n − 1)/√n·√(t²/(n − 2 + t²)), t at the upper α/n (one-sided) or α/(2n) (two-sided), n − 2 degrees
 *
 * α `risk` of a false alarm, inside 0 to 1. Example: n 6, 5 % one-sided: 1.822; two-sided 1.887.
 * Source: F. E. Grubbs, Technometrics 11 (1969) (recalled).
 */
export function grubbsCritical(n: number, risk: number, sides: 1 | 2): number {
  const t = studentQuantile(1 - risk / (sides * n), n - 2);
  return ((n - 1) / Math.sqrt(n)) * Math.sqrt(t ** 2 / (n - 2 + t ** 2));
}

/** Dixon's Q of the lowest or highest reading: gap to its neighbour over the whole range. All readings alike: 0. */
export function dixonStatistic(readings: readonly number[], end: 'highest' | 'lowest'): number {
  const sorted = [...readings].sort((a, b) => a - b);
  const n = sorted.length;
  const whole = sorted[n - 1]! - sorted[0]!;
  const gap = end === 'highest' ? sorted[n - 1]! - sorted[n - 2]! : sorted[1]! - sorted[0]!;
  return whole === 0 ? 0 : gap / whole;
}

export { DIXON_LEVELS, dixonCritical };

/** Factor that makes a median distance comparable with a standard deviation, as printed. */
const NORMAL_MEDIAN = 0.6745;

/**
 * Modified z scores: 0.6745·(x − median)/MAD. Undefined where the MAD is 0: more than half of the readings are alike, and
 * scatter cannot be judged. Suspect above 3.5. Source: B. Iglewicz and D. C. Hoaglin, 1993 (recalled).
 */
export function robustScores(readings: readonly number[]): readonly number[] | undefined {
  const middle = median(readings);
  const distance = medianDistance(readings);
  return distance === 0 ? undefined : readings.map((one) => (NORMAL_MEDIAN * (one - middle)) / distance);
}
