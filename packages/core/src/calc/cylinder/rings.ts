import type { Length, Ratio, TemperatureDifference, ThermalExpansion } from '../../quantity/index.js';

/** End gap by factor [m]: g = f·B, f in in per in (mm per mm) of bore. Example: 4.030 in · 0.0045: 0.0181 in. Source: `ring-gap-worked`. */
export const gapByFactor = (bore: Length, factor: Ratio): Length => (bore * factor) as Length;

/**
 * End gap of the same ring in another bore [m]: g' = g + π·(B' − B).
 *
 * Example: 0.0160 in cut in the unworn bottom is 0.02857 in where the bore is 0.0040 in larger. Source: `ring-gap-pi`,
 * and derived: the ring's own length does not change.
 */
export const gapInBore = (gap: Length, measuredIn: Length, bore: Length): Length =>
  (gap + Math.PI * (bore - measuredIn)) as Length;

/** A ring and its cylinder wall on the way from cold to hot. */
export interface RingHeat {
  readonly ringExpansion: ThermalExpansion;
  readonly ringRise: TemperatureDifference;
  readonly boreExpansion: ThermalExpansion;
  readonly boreRise: TemperatureDifference;
}

/**
 * How much a ring gap closes by heat [m], as two bounds: with the bore held cold, and with it free to grow.
 *
 *   π·B·αr·ΔTr  and  π·B·(αr·ΔTr − αb·ΔTb)
 *
 * α expansions [1/K], ΔT rises [K] of ring and bore wall. A block may hold the bore back, so the truth lies between.
 * Example: 101.6 mm, 10.7 ppm/K both, 180 and 80 K: 0.615 and 0.342 mm. Source: coefficient `ring-expansion`; derived.
 */
export function gapClosing(bore: Length, heat: RingHeat): { readonly coldBore: Length; readonly freeBore: Length } {
  const ring = heat.ringExpansion * heat.ringRise;
  const wall = heat.boreExpansion * heat.boreRise;
  return { coldBore: (Math.PI * bore * ring) as Length, freeBore: (Math.PI * bore * (ring - wall)) as Length };
}

/** Ring side clearance [m]: full axial play, groove width less ring width. Source: definition; `ring-side-clearance`. */
export const sideClearance = (groove: Length, ring: Length): Length => (groove - ring) as Length;

/**
 * Ring back clearance [m]: b = (B − dg)/2 − w, radial room behind a ring pressed against the wall.
 *
 * B bore, dg groove root diameter, w radial width of the ring [m]. Source: definition.
 * Example: 100, 91.2, 4.1 mm: 0.3 mm.
 */
export const backClearance = (bore: Length, grooveRoot: Length, ringWidth: Length): Length =>
  ((bore - grooveRoot) / 2 - ringWidth) as Length;
