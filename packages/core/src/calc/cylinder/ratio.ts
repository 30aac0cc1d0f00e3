import { done, type Length, type Outcome, type Ratio, refused, type Volume } from '../../quantity/index.js';
import { discArea } from './volumes.js';

/** What the charge is squeezed into at top dead centre, part by part [m³]; a part left out is not counted. */
export interface ClearanceParts {
  readonly chamber?: Volume | undefined;
  readonly gasket?: Volume | undefined;
  /** Above a piston below the deck; negative when the piston stands proud. */
  readonly deck?: Volume | undefined;
  /** Dish and valve reliefs positive, dome negative. */
  readonly piston?: Volume | undefined;
  readonly pocket?: Volume | undefined;
  readonly crevice?: Volume | undefined;
  readonly other?: Volume | undefined;
}

/** Clearance volume at top dead centre [m³]: the sum of the parts that are known. Source: definition. */
export const clearanceVolume = (parts: ClearanceParts): Volume =>
  Object.values(parts).reduce<number>((sum, one: Volume | undefined) => sum + (one ?? 0), 0) as Volume;

/**
 * Static compression ratio: CR = (Vs + Vc)/Vc, Vs `swept` and Vc `clearance` [m³], both above 0.
 *
 * Example: 43.731 and 4.877 in³ give 9.967. Source: definition; worked numbers in `cylinder-ratio-parts`.
 */
export const compressionRatio = (swept: Volume, clearance: Volume): Ratio => ((swept + clearance) / clearance) as Ratio;

/**
 * Clearance volume that a ratio asks for [m³]: Vc = Vs/(CR − 1), CR above 1.
 *
 * Example: 4.030 x 3.480 in at 10.0: 80.82 cm³. Source: `inch-volume`, inverse formula.
 */
export const clearanceForRatio = (swept: Volume, ratio: Ratio): Volume => (swept / (ratio - 1)) as Volume;

export interface NoRoom {
  readonly code: 'no-room';
}

/**
 * Stroke that brings a ratio with a given clearance volume [m]: S = (CR − 1)·Vc/A, A the area of the bore.
 *
 * Example: 80.82 cm³ at 10.0 in a 4.030 in bore: 3.480 in. Source: follows from `compressionRatio`.
 */
export const strokeForRatio = (bore: Length, clearance: Volume, ratio: Ratio): Length =>
  (((ratio - 1) * clearance) / discArea(bore)) as Length;

/**
 * Bore that brings a ratio, when part of the clearance volume grows with the bore.
 *
 *   A·S = (CR − 1)·(V0 + A·h),  A = (CR − 1)·V0/(S − (CR − 1)·h),  B = √(4·A/π)
 *
 * V0 `fixed` [m³] is the clearance volume that does not depend on the bore, h `height` [m] the height of that which does:
 * deck clearance, gasket where its bore is the cylinder's, land height less its filled part; S `stroke` [m]; CR above 1.
 * Refuses with `no-room` when no bore brings the ratio: V0 must be above 0 and S above (CR − 1)·h.
 * Example: 70 cm³ fixed, 1 mm high, stroke 90 mm, 10.0: 99.51 mm. Source: derived.
 */
export function boreForRatio(fixed: Volume, height: Length, stroke: Length, ratio: Ratio): Outcome<Length, NoRoom> {
  const left = stroke - (ratio - 1) * height;
  if (fixed <= 0 || left <= 0) return refused({ code: 'no-room' });
  return done(Math.sqrt((4 * (ratio - 1) * fixed) / (Math.PI * left)) as Length);
}
