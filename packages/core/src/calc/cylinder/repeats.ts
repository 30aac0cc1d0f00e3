import { spreadOf } from './spread.js';

/**
 * Mean, spread, standard deviation of one reading and standard uncertainty of the mean of two or more repeats.
 *
 * Source: JCGM 100, 4.2 (from memory). Example: 64.2, 64.0, 64.4: mean 64.2, s 0.200, u 0.115.
 */
export function fromRepeatedVolumes(values: readonly number[]) {
  const { mean, apart } = spreadOf(values);
  const squares = values.reduce((sum, one) => sum + (one - mean) ** 2, 0);
  const deviation = Math.sqrt(squares / (values.length - 1));
  return { mean, apart, deviation, uncertainty: deviation / Math.sqrt(values.length) };
}
