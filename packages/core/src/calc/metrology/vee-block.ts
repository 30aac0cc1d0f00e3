/** What an indicator over a vee block, or a two-point gauge, shows of a lobed shaft. */
import type { Angle } from '../../quantity/index.js';

export const SIDES = ['opposite', 'through-the-block'] as const;
export type IndicatorSide = (typeof SIDES)[number];

const ROUNDING = 1e-9;

/**
 * Indicator swing over radial out-of-roundness (largest less smallest radius) of a shaft with n equal lobes.
 *
 *   opposite: |1 + cos(n·(90° + θ/2))/sin(θ/2)|;  through the block: |cos(n·180°) − cos(n·(90° + θ/2))/sin(θ/2)|
 *
 * n `lobes` 2 or more; θ included angle of the block [rad], above 0 to 180°; the indicator stands on the bisector. A two-point
 * gauge is a flat, θ = 180°. 0 means that the form cannot be seen; differences that are only rounding give exactly 0.
 * Example: n = 3, θ = 90°: 2. Source: J. JSPE 43(514), abstract (read); derived again from the contacts.
 */
export function lobeFactor(lobes: number, angle: Angle, side: IndicatorSide): number {
  const contact = Math.cos(lobes * (Math.PI / 2 + angle / 2)) / Math.sin(angle / 2);
  const factor = Math.abs(side === 'opposite' ? 1 + contact : Math.cos(lobes * Math.PI) - contact);
  return factor < ROUNDING ? 0 : factor;
}

/** Below this share of the true form a set-up is as good as blind. */
const BLIND_BELOW = 0.05;

/** Lobe counts from 2 to `most` that a set-up cannot see. */
export const blindTo = (angle: Angle, side: IndicatorSide, most: number): readonly number[] =>
  Array.from({ length: most - 1 }, (_, at) => at + 2).filter((lobes) => lobeFactor(lobes, angle, side) < BLIND_BELOW);
