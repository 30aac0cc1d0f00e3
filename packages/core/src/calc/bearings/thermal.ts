import type { Length, TemperatureDifference, ThermalExpansion } from '../../quantity/index.js';
import { oilClearance, type ShellPair } from './clearance.js';

/** A part's material and how far it is from the temperature at which its size holds. */
export interface Warmth {
  readonly expansion: ThermalExpansion;
  readonly rise: TemperatureDifference;
}

/** Size of a free part after a change of temperature: L·(1 + α·ΔT) [m], α [1/K], ΔT [K]. Source: definition of α. */
export function warmed(size: Length, { expansion, rise }: Warmth): Length {
  return (size * (1 + expansion * rise)) as Length;
}

/**
 * Oil clearance with housing, shells and journal each at its temperature [m]: `oilClearance` of the warmed sizes.
 *
 * The shell's wall grows as its own material does, its outside follows the housing. An alloy housing on an iron or
 * steel journal opens when hot, and closes in the cold.
 * Example: H 60, walls 2, J 55.95 mm, alloy housing 22, steel 11.7 ppm/K, all 80 K warmer: from 0.050 to 0.0995 mm.
 * Source: derived from the definition of α.
 */
export function warmClearance(
  sizes: { readonly housing: Length; readonly walls: ShellPair; readonly journal: Length },
  warmth: { readonly housing: Warmth; readonly shell: Warmth; readonly journal: Warmth },
): Length {
  const walls = {
    upper: warmed(sizes.walls.upper, warmth.shell),
    lower: warmed(sizes.walls.lower, warmth.shell),
  };
  return oilClearance(warmed(sizes.housing, warmth.housing), walls, warmed(sizes.journal, warmth.journal));
}
