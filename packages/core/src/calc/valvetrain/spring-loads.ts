/** Loads and room of an installed valve spring. */
import type { Force, Length, Ratio, Stiffness } from '../../quantity/index.js';
import { leastSquares } from '../numeric/index.js';

/** Load [N] at a lift from the seat load: F = F₀ + k·lift, lift net [m], rate k [N/m]. Source: definition. */
export function openLoad(seatLoad: Force, rate: Stiffness, lift: Length): Force {
  return (seatLoad + rate * lift) as Force;
}

/** Room left before the coils touch at full lift [m]: installed − lift − solid; negative: they bind. Source: definition. */
export function bindMargin(installed: Length, lift: Length, solid: Length): Length {
  return (installed - lift - solid) as Length;
}

export interface LoadShare {
  readonly load: Force;
  readonly share: Ratio;
}

/**
 * Share of each of several springs that are compressed together: Fi = F·ki/Σk.
 *
 * `rates` [N/m]; `together` [N], what they carry in all. Holds when all begin to carry at one height.
 * Example: 24.83 and 13.24 N/mm under 2000 N: 1304 and 696 N. Source: springs in parallel, definition.
 */
export function loadShares(rates: readonly Stiffness[], together: Force): readonly LoadShare[] {
  const whole = rates.reduce<number>((sum, rate) => sum + rate, 0);
  return rates.map((rate) => ({ load: ((together * rate) / whole) as Force, share: (rate / whole) as Ratio }));
}

/** Load [N] of a spring at a height, 0 above its free length: k·(free − height). Source: definition. */
export function loadAtHeight(rate: Stiffness, freeLength: Length, height: Length): Force {
  return (rate * Math.max(0, freeLength - height)) as Force;
}

export interface RateFromLoads {
  readonly rate: Stiffness;
  /** Height at which the straight line meets no load. */
  readonly freeLength: Length;
  /** Largest load off the line. */
  readonly farthest: Force;
}

/**
 * Rate of a spring from loads at heights, by the straight line of least squares.
 *
 * `heights` [m] and `loads` [N], two or more at unlike heights; undefined when the heights do not differ. A spring that is not straight
 * (inner spring that begins later, coils that close) shows in `farthest`. Source: definition of the rate.
 */
export function rateFromLoads(heights: readonly Length[], loads: readonly Force[]): RateFromLoads | undefined {
  const fit = leastSquares([heights.map(() => 1), heights], loads);
  if (!fit) return undefined;
  const [start, slope] = fit.coefficients as [number, number];
  return {
    rate: -slope as Stiffness,
    freeLength: (-start / slope) as Length,
    farthest: Math.max(...fit.residuals.map(Math.abs)) as Force,
  };
}
