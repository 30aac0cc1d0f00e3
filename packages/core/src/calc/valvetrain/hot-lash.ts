import type { Length, Ratio, TemperatureDifference } from '../../quantity/index.js';

/** Thermal growth of a part [m]: α·ΔT·L, with α the mean coefficient over the range [1/K]. Source: definition. */
export function thermalGrowth(length: Length, expansion: number, rise: TemperatureDifference): Length {
  return (length * expansion * rise) as Length;
}

export interface LashGrowth {
  /** Rise of the rocker pivot above the lifter's camshaft line: block and head together. */
  readonly pivot: Length;
  /** Growth of lifter and pushrod together. */
  readonly pushrod: Length;
  /** Rise of the valve tip above the same line: block and head up to the seat, and valve from there. */
  readonly valveTip: Length;
}

/**
 * Change of valve lash of a pushrod engine from cold to hot [m], positive when the gap grows.
 *
 *   Δ = (1 + R)·pivot − R·pushrod − valve tip
 *
 * All growths [m] are measured from the camshaft's line; R rocker ratio above 0. Equal growth of all three leaves the lash as it was.
 * Assumes the follower on the base circle, small angles, arm ends in line with the pivot.
 * Example: pivot 0.30 mm, pushrod 0.20 mm, valve tip 0.35 mm, R = 1.5: +0.10 mm.
 * Source: derived (lever).
 */
export function lashChange(growth: LashGrowth, ratio: Ratio): Length {
  return ((1 + ratio) * growth.pivot - ratio * growth.pushrod - growth.valveTip) as Length;
}
