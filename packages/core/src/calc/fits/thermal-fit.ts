import type { Length, TemperatureDifference, ThermalExpansion } from '../../quantity/index.js';

/** Expansion and rise of temperature of each part from where the interference holds. */
export interface FitWarmth {
  readonly hubExpansion: ThermalExpansion;
  readonly shaftExpansion: ThermalExpansion;
  readonly hubRise: TemperatureDifference;
  readonly shaftRise: TemperatureDifference;
}

/**
 * Interference after both parts changed temperature: δ(T) = δ0 − d·(αh·ΔTh − αs·ΔTs) [m]. Negative: a gap.
 *
 * d `diameter` [m], α [1/K], ΔT [K]. The hub warmer than the shaft, or of an alloy that grows more, loses grip.
 * Example: d 40, δ0 0.10 mm, 21.5 and 11.2 ppm/K, both +100 K: 0.0588 mm. Source: definition of α.
 */
export function warmInterference(diameter: Length, interference: Length, warmth: FitWarmth): Length {
  const { hubExpansion, hubRise, shaftExpansion, shaftRise } = warmth;
  return (interference - diameter * (hubExpansion * hubRise - shaftExpansion * shaftRise)) as Length;
}

/**
 * Rise of both parts together at which no interference is left: δ0/(d·(αh − αs)) [K]; undefined when the hub grows no
 * more than the shaft. Source: `warmInterference` solved for a common ΔT.
 */
export function gripGoneAt(
  diameter: Length,
  interference: Length,
  hub: ThermalExpansion,
  shaft: ThermalExpansion,
): TemperatureDifference | undefined {
  return hub > shaft ? ((interference / (diameter * (hub - shaft))) as TemperatureDifference) : undefined;
}

/**
 * Change of temperature of one part alone that makes room for assembly: (δ + gap)/(α·d) [K]: heat the hub, or chill the
 * shaft by so much. α above 0.
 * Example: 320 mm, δ 0.45, gap 0.20 mm, 11.7 ppm/K: 173.6 K. Source: definition of α.
 */
export function assemblyChange(
  diameter: Length,
  interference: Length,
  gap: Length,
  expansion: ThermalExpansion,
): TemperatureDifference {
  return ((interference + gap) / (expansion * diameter)) as TemperatureDifference;
}

/** Size of a free part at another temperature: L·(1 + α·ΔT) [m]. Source: definition of α. */
export function grown(size: Length, expansion: ThermalExpansion, rise: TemperatureDifference): Length {
  return (size * (1 + expansion * rise)) as Length;
}
