import type { Length } from '../../quantity/index.js';
import { oilClearance } from './clearance.js';

/** Two halves for one position and the clearance that they give. */
export interface HalvesChoice {
  readonly upper: Length;
  readonly lower: Length;
  readonly clearance: Length;
}
export interface HalvesSearch {
  /** Nearest to the target among all pairs allowed; absent when there is none. */
  readonly best?: HalvesChoice;
  /** Pairs whose clearance lies in the window. */
  readonly fitting: number;
}

/**
 * The two halves for one position whose clearance comes nearest to a target: every pair that may be mixed is tried, so
 * the answer is the exact best.
 *
 * | symbol | argument        | unit | meaning                                                              |
 * |--------|-----------------|------|----------------------------------------------------------------------|
 * | H, J   | `housing`, `journal` | [m] | as in `oilClearance`                                             |
 * |        | `walls`         | [m]  | walls to choose from, for either half                                |
 * |        | `widestMix`     | [m]  | largest difference between the two halves, 0: never mix              |
 * |        | `window.target` | [m]  | clearance wanted; `low` and `high` are what is accepted               |
 *
 * Pairs without clearance are left out. Of equally near pairs the one with alike halves, then the looser, is taken; the
 * thicker half is named as the upper, which the person may exchange. Source: exhaustive search with `oilClearance`.
 */
export function bestHalves(
  housing: Length,
  journal: Length,
  walls: readonly Length[],
  widestMix: Length,
  window: { readonly low: Length; readonly high: Length; readonly target: Length },
): HalvesSearch {
  const pairs = walls.flatMap((upper) =>
    walls
      .filter((lower) => lower <= upper && upper - lower <= widestMix + NANOMETRE)
      .map((lower) => ({ upper, lower, clearance: oilClearance(housing, { upper, lower }, journal) })),
  );
  const usable = pairs.filter(({ clearance }) => clearance > 0);
  const fitting = usable.filter(({ clearance }) => fits(clearance, window)).length;
  const [best] = usable.toSorted(
    (a, b) =>
      nanometres(Math.abs(a.clearance - window.target)) - nanometres(Math.abs(b.clearance - window.target)) ||
      nanometres(a.upper - a.lower) - nanometres(b.upper - b.lower) ||
      b.clearance - a.clearance,
  );
  return { ...(best && { best }), fitting };
}

const NANOMETRE = 1e-9;
const nanometres = (length: number): number => Math.round(length / NANOMETRE);
const fits = (clearance: Length, { low, high }: { readonly low: Length; readonly high: Length }): boolean =>
  clearance >= low - NANOMETRE && clearance <= high + NANOMETRE;
