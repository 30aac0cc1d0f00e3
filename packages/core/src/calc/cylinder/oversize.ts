import { done, type Length, type Outcome, refused } from '../../quantity/index.js';

/**
 * Diameter at which a worn bore cleans up on one axis [m], before honing.
 *
 *   on the worn bore's own axis: D = Dmax;  on the original axis: D = max(Dmax, D0 + 2·(Dmax − D0) − 2·s)
 *
 * D0 `standard` and Dmax `largest` [m] (pits and scores counted in), s `shift` [m] by which the bar may move toward the
 * worn wall. On the original axis all wear is taken to sit on one wall, the worst there is.
 * Example: 4.0000 worn to 4.0065 in: 4.0065 and 4.0130. Source: derived.
 */
export const cleanUpDiameter = (standard: Length, largest: Length, shift: Length | 'free'): Length => {
  const wear = Math.max(0, largest - standard);
  return (shift === 'free' ? largest : Math.max(largest, standard + 2 * wear - 2 * shift)) as Length;
};

export interface OversizeChoice {
  /** Chosen oversize on diameter. */
  readonly oversize: Length;
  /** Left over the need. */
  readonly spare: Length;
}
export interface NoOversize {
  readonly code: 'no-oversize';
  readonly needed: Length;
}

/** Rounding of inch arithmetic must not make an exact fit fail. */
const ROUNDING = 1e-10;

/**
 * Smallest oversize that reaches a needed diameter [m]: the least `oversize` with D0 + oversize ≥ D.
 *
 * Refuses with `no-oversize` when none of those that exist does.
 * Example: D0 4.0000, D 4.0095 in, sizes 0.010, 0.020: 0.010 with 0.0005 spare. Source: `smallest-oversize`.
 */
export function smallestOversize(
  standard: Length,
  needed: Length,
  oversizes: readonly Length[],
): Outcome<OversizeChoice, NoOversize> {
  const reach = oversizes.filter((one) => standard + one >= needed - ROUNDING);
  if (reach.length === 0) return refused({ code: 'no-oversize', needed: (needed - standard) as Length });
  const oversize = Math.min(...reach) as Length;
  return done({ oversize, spare: (standard + oversize - needed) as Length });
}

/**
 * Size to bore to before honing, and the size honed to [m]: D = A + B − Ch, A + B.
 *
 * A `piston` at its measuring point, B `clearance` wanted, Ch `allowance` left for honing, all on diameter. A trade
 * allowance of 0.002 to 0.005 in counts all of the honing; makers who print 0.01 to 0.02 mm count the last pass only.
 * Example: 80.480, 0.035, 0.02 mm: 80.495 and 80.515. Source: `bored-size`.
 */
export const boredSize = (piston: Length, clearance: Length, allowance: Length) => ({
  bored: (piston + clearance - allowance) as Length,
  honed: (piston + clearance) as Length,
});

/**
 * Wall left after boring [m]: t' = t − (D' − D)/2 − s, t `wall` now, D `now` and D' `after` diameters, s `shift` of the
 * axis toward this wall. Source: definition. Example: 0.200 in wall, 0.060 in over, no shift: 0.170 in.
 */
export const wallLeft = (wall: Length, now: Length, after: Length, shift: Length): Length =>
  (wall - (after - now) / 2 - shift) as Length;
