import type { Length, Ratio } from '../../quantity/index.js';

/**
 * Gap at the valve tip of a plunger travel that is left, with the lifter bled down: gap = travel·R [m].
 *
 * `travel` [m] at the lifter, R rocker ratio above 0. The gap is at the valve and the travel at the lifter: the two
 * numbers may only be compared through the ratio. Source: derived (lever).
 */
export function gapOfTravel(travel: Length, ratio: Ratio): Length {
  return (travel * ratio) as Length;
}

/**
 * Plunger travel of a gap measured at the valve tip with the lifter bled down: travel = gap/R [m].
 *
 * Example: 0.096 in at R = 1.6 is 0.060 in of plunger. Source: derived (lever).
 */
export function travelOfGap(gap: Length, ratio: Ratio): Length {
  return (gap / ratio) as Length;
}
