/** Smallest and largest of a list with their places, and how far they lie apart. */
export interface Spread {
  readonly least: number;
  readonly most: number;
  readonly apart: number;
  /** Places counted from 1. */
  readonly leastAt: number;
  readonly mostAt: number;
  readonly mean: number;
}

/**
 * Spread of a list with at least one value; the first of equal values counts. The mean is taken from the deviations, so
 * that many equal leading digits cost nothing.
 *
 * Source: definition. Example: 64.0, 64.6, 64.2 spread 0.6 from place 1 to place 2.
 */
export function spreadOf(values: readonly number[]): Spread {
  const least = Math.min(...values);
  const most = Math.max(...values);
  const mean = least + values.reduce((sum, one) => sum + (one - least), 0) / values.length;
  return {
    least,
    most,
    apart: most - least,
    leastAt: values.indexOf(least) + 1,
    mostAt: values.indexOf(most) + 1,
    mean,
  };
}
