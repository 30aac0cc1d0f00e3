import type {
  Angle,
  Compliance,
  Force,
  Length,
  TemperatureDifference,
  ThermalExpansion,
} from '../../quantity/index.js';

/**
 * Turn beyond snug that makes a rise of preload: θ = 2π·F·(δS + δP)/P [rad].
 *
 * F `rise` [N], δS + δP `compliance` of bolt and clamped parts together [m/N], P `pitch` [m]. Elastic only: bolts that
 * are turned past yield leave this line. Counted at the fastener, from where all faces seat.
 * Example: 30 kN, 9.928 µm/kN, 1.5 mm: 71.5°. Source: VDI 2230 part 1 (from memory); a screw's lead.
 */
export function angleForPreload(rise: Force, compliance: Compliance, pitch: Length): Angle {
  return ((2 * Math.PI * rise * compliance) / pitch) as Angle;
}

/** Rise of preload of a turn beyond snug: F = θ·P/(2π·(δS + δP)) [N]. Symbols and source as `angleForPreload`. */
export function preloadForAngle(angle: Angle, compliance: Compliance, pitch: Length): Force {
  return ((angle * pitch) / (2 * Math.PI * compliance)) as Force;
}

/** How much bolt and clamped parts grow. */
export interface JointWarmth {
  readonly partExpansion: ThermalExpansion;
  readonly boltExpansion: ThermalExpansion;
  readonly partRise: TemperatureDifference;
  readonly boltRise: TemperatureDifference;
}

/**
 * Change of preload with temperature: ΔF = (αP·ΔTP − αS·ΔTS)·L/(δS + δP) [N].
 *
 * L `grip` [m], δS + δP `compliance` [m/N]. Alloy parts under a steel bolt gain hot and lose in the cold.
 * Example: 21.5 and 11.7 ppm/K, 80 K, 85 mm, 10.702 µm/kN: +6.23 kN. Source: derived from the definition of α.
 */
export function thermalPreload(grip: Length, compliance: Compliance, warmth: JointWarmth): Force {
  const growth = warmth.partExpansion * warmth.partRise - warmth.boltExpansion * warmth.boltRise;
  return ((growth * grip) / compliance) as Force;
}

/** Loss of preload when surfaces embed: F = fZ/(δS + δP) [N]; fZ `amount` [m]. Source: VDI 2230 part 1 (from memory). */
export function embeddingLoss(amount: Length, compliance: Compliance): Force {
  return (amount / compliance) as Force;
}
