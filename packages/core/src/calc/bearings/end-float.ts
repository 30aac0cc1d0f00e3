import type { Length } from '../../quantity/index.js';

/**
 * End float: free length between the thrust faces less the washers in it: f = g − Σt [m].
 *
 * g `gap` between the crank's thrust faces less the housing between the washers, t `washers` [m]. Negative: it binds.
 * Source: definition.
 */
export function endFloat(gap: Length, washers: readonly Length[]): Length {
  return (gap - washers.reduce((sum, one) => sum + one, 0)) as Length;
}

/** How a measured end float stands to the new range and the discard limit. */
export type FloatVerdict = 'too tight' | 'as new' | 'usable, note it' | 'discard' | 'no data';

/**
 * Judges an end float: below `newLow`, up to `newHigh`, up to and with `discard`, or above it; limits not known are
 * left out. All [m]. Without a limit that decides, `no data`.
 * Example: 0.26 with new 0.04..0.24 and discard above 0.30 mm: usable, note it. Source: bibliography key `end-float`.
 */
export function judgeFloat(
  float: Length,
  limits: {
    readonly newLow?: Length | undefined;
    readonly newHigh?: Length | undefined;
    readonly discard?: Length | undefined;
  },
): FloatVerdict {
  const { newLow, newHigh, discard } = limits;
  if (float <= 0 || (newLow !== undefined && float < newLow - NOISE)) return 'too tight';
  if (newHigh !== undefined && float <= newHigh + NOISE) return 'as new';
  if (discard === undefined) return 'no data';
  if (float > discard + NOISE) return 'discard';
  return newHigh === undefined ? 'no data' : 'usable, note it';
}
const NOISE = 1e-10;

/** Washers of one thickness for both sides and the float that they give. */
export interface WasherChoice {
  readonly thickness: Length;
  readonly float: Length;
}

/**
 * Thrust washers of one thickness that bring the float nearest to the middle of a window: f' = f − n·(t' − t) [m].
 *
 * f `float` with the `present` thickness in, n `count` of washers that are exchanged together, `sizes` to choose from.
 * Sizes that would bind are left out; of two as near the thinner is taken. Undefined when none is left.
 * Example: 0.26 mm with 2.455 mm washers, two of 2.485 mm: 0.20 mm. Source: `endFloat` before and after.
 */
export function chooseWashers(
  float: Length,
  present: Length,
  count: number,
  sizes: readonly Length[],
  target: Length,
): WasherChoice | undefined {
  const choices = sizes.map((thickness) => ({ thickness, float: (float - count * (thickness - present)) as Length }));
  const away = (choice: WasherChoice) => Math.round(Math.abs(choice.float - target) / NOISE);
  return choices
    .filter((choice) => choice.float > NOISE)
    .toSorted((a, b) => away(a) - away(b) || a.thickness - b.thickness)[0];
}
