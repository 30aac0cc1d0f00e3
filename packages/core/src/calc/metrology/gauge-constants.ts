/**
 * Mean range of normal samples in standard deviations: d2 for many samples, d2* for a single one, of 2 to 20 values.
 * Source: A. J. Duncan, table D3 (recalled for 2 to 10); all recomputed by numerical integration to the digits shown.
 */
const MEAN_RANGE = [
  [1.128379, Math.SQRT2],
  [1.692569, 1.91154],
  [2.058751, 2.238865],
  [2.325929, 2.481246],
  [2.534413, 2.67253],
  [2.704357, 2.829802],
  [2.847201, 2.962883],
  [2.970026, 3.07793],
  [3.077505, 3.179045],
  [3.172873, 3.269096],
  [3.258455, 3.350158],
  [3.33598, 3.423785],
  [3.406763, 3.491166],
  [3.471827, 3.553229],
  [3.531983, 3.610715],
  [3.587884, 3.664222],
  [3.640064, 3.71424],
  [3.688963, 3.761176],
  [3.73495, 3.805369],
] as const;

export const SMALLEST_SAMPLE = 2;
export const LARGEST_SAMPLE = MEAN_RANGE.length + 1;

/** d2 of a sample size from 2 to 20. */
export const meanRange = (size: number): number => MEAN_RANGE[size - SMALLEST_SAMPLE]![0];

/** d2* of one sample of a size from 2 to 20. */
export const meanRangeOfOne = (size: number): number => MEAN_RANGE[size - SMALLEST_SAMPLE]![1];

/** Control factor D4 = 1 + 3·d3/d2 of a range, d3 from d2*² = d2² + d3². 3.27 for two trials, 2.57 for three. */
export const rangeLimitFactor = (size: number): number =>
  1 + (3 * Math.sqrt(meanRangeOfOne(size) ** 2 - meanRange(size) ** 2)) / meanRange(size);
