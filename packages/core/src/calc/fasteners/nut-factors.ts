import type { Ratio } from '../../quantity/index.js';

/** Range of the nut factor K of a surface and lubricant; never one number. */
export interface NutFactorRange {
  readonly low: Ratio;
  readonly high: Ratio;
}

const range = (low: number, high: number): NutFactorRange => ({ low: low as Ratio, high: high as Ratio });

/** Ranges of K as printed by a fastener supplier. Source: bibliography key `nut-factor-ranges`. */
export const nutFactorRanges = {
  'dry steel': range(0.18, 0.27),
  'machine oil': range(0.1, 0.26),
  'phosphate and oil': range(0.15, 0.22),
  zinc: range(0.17, 0.35),
  cadmium: range(0.15, 0.19),
} as const;
export type Surface = keyof typeof nutFactorRanges;
export const surfaces = Object.keys(nutFactorRanges) as readonly Surface[];
