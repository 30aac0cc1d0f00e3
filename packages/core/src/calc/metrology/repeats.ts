/** Repeated readings of one size: mean, scatter and their robust counterparts. Numerically stable for many equal digits. */

/**
 * Mean of readings (one or more) in any unit, in two passes: the second carries what rounding lost in the first.
 * Source: NIST StRD univariate data call for it (NumAcc1 to 4); textbook compensation.
 */
export function mean(readings: readonly number[]): number {
  if (readings.length === 1) return readings[0]!;
  const first = readings.reduce((sum, one) => sum + one, 0) / readings.length;
  return first + readings.reduce((sum, one) => sum + (one - first), 0) / readings.length;
}

/** Sum of squares about the mean, centred before squaring: a difference of two large sums would lose every digit. */
export function squaresAboutMean(readings: readonly number[]): number {
  const centre = mean(readings);
  const squares = readings.reduce((sum, one) => sum + (one - centre) ** 2, 0);
  const rest = readings.reduce((sum, one) => sum + (one - centre), 0);
  return Math.max(0, squares - rest ** 2 / readings.length);
}

/** Standard deviation of a sample, n − 1 degrees of freedom. Two readings or more. Source: JCGM 100, 4.2.2 (recalled). */
export const deviation = (readings: readonly number[]): number =>
  Math.sqrt(squaresAboutMean(readings) / (readings.length - 1));

/** Middle reading, or the mean of the two middle ones. */
export function median(readings: readonly number[]): number {
  const sorted = [...readings].sort((a, b) => a - b);
  const half = sorted.length / 2;
  return (sorted[Math.ceil(half) - 1]! + sorted[Math.floor(half)]!) / 2;
}

/** Median of the distances from the median. */
export function medianDistance(readings: readonly number[]): number {
  const middle = median(readings);
  return median(readings.map((one) => Math.abs(one - middle)));
}

/** Highest minus lowest. */
export const spread = (readings: readonly number[]): number => Math.max(...readings) - Math.min(...readings);
