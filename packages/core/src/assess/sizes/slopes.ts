/** Slopes of figures that are made of straight pieces: differences, largest, smallest, means. */

/** Shares of the largest value: apart enough to break ties, and a step far smaller than that. */
const APART = 1e-10;
const STEP = 1e-11;
/** Distances grow unevenly, so that no two differences of them are alike. */
const apartBy = (at: number): number => APART * (at + 1) ** 2.3;
/** Slopes are sums of ±1, ±1/2 and shares of a mean; rounding of the arithmetic is taken off. */
const ROUND = 1e4;

/**
 * Change of a figure for one unit of each value. Values alike to the last digit are first set apart by less than a millionth, in their order, so
 * that one of them decides instead of none or all.
 */
export function slopesOf(figure: (values: readonly number[]) => number, values: readonly number[]): readonly number[] {
  const scale = Math.max(...values.map(Math.abs)) || 1;
  const apart = values.map((one, at) => one + scale * apartBy(at));
  const here = figure(apart);
  return values.map((_, at) => {
    const kept = apart[at]!;
    apart[at] = kept + STEP * scale;
    const slope = (figure(apart) - here) / (STEP * scale);
    apart[at] = kept;
    return Math.round(slope * ROUND) / ROUND;
  });
}
