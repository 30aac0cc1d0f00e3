import type { Density, Length, Mass, Ratio, Temperature, Volume } from '../../quantity/index.js';
import { discArea } from './volumes.js';

/** Corrections to what ran out of a burette [m³], each with its sign as it counts toward the room measured. */
export interface BuretteCorrections {
  /** Liquid that stands in the fill hole of the plate: not part of the room. */
  readonly plateHole: Volume;
  /** Room that grease has taken: part of the room. */
  readonly grease: Volume;
  /** Parts that were not as they will run (valve or plug missing: negative; a plug that will not be there: positive). */
  readonly parts: Volume;
  /** When start and end were not read at the same edge of the meniscus: added to the volume. */
  readonly meniscus: Volume;
}

/**
 * Room measured with a burette [m³]: V = f·Σ(end − start) + meniscus − hole + grease + parts.
 *
 * A burette counts downward: each fill runs from its `start` to its `end` reading [m³], end at least start; f
 * `factor` is true volume over indicated volume, from weighed water. Read at the same edge of the meniscus both times
 * and its height cancels.
 * Source: definition; common practice. Example: 0 → 50.0 and 0 → 14.2 cm³, hole 0.3: 63.9 cm³.
 */
export const buretteVolume = (
  fills: readonly { readonly start: Volume; readonly end: Volume }[],
  factor: Ratio,
  { plateHole, grease, parts, meniscus }: BuretteCorrections,
): Volume => {
  const delivered = fills.reduce((sum, { start, end }) => sum + (end - start), 0);
  return (factor * delivered + meniscus - plateHole + grease + parts) as Volume;
};

/**
 * What a crown holds more, or less, than a plain cylinder of the same depth [m³]: ΔV = Vm − π/4·B²·h.
 *
 * Vm `measured` [m³] with the crown flat h `depth` [m] down, B `bore` [m]. Positive for a dish, negative for a dome; it
 * holds dish, reliefs, dome and the crevice above the top ring at once.
 * Example: bore 4.070 in, 0.500 in down, 113 cm³: +6.4 cm³. Source: `downfill`.
 */
export const downfill = (measured: Volume, bore: Length, depth: Length): Volume =>
  (measured - discArea(bore) * depth) as Volume;

/**
 * Density of air-free water at one atmosphere [kg/m³], 0 to 40 °C, to some parts in a million:
 *
 *   ρ = 999.97495·(1 − (t − 3.983035)²·(t + 301.797)/(522528.9·(t + 69.34881))), t in °C
 *
 * Source: Tanaka and others, Metrologia 38 (2001) (from memory). Example: 20 °C: 998.207.
 */
export function waterDensity(temperature: Temperature): Density {
  const t = temperature - 273.15;
  return (999.97495 * (1 - ((t - 3.983035) ** 2 * (t + 301.797)) / (522528.9 * (t + 69.34881)))) as Density;
}

/** Density of room air and of the weights by which scales are adjusted [kg/m³]; conventional values. */
const AIR = 1.2;
const WEIGHTS = 8000;

/**
 * Volume of water that shows this mass on a scale in air [m³]: V = m·(1 − ρa/ρs)/(ρw − ρa).
 *
 * m `mass` as shown [kg], ρw water, ρa air 1.2, ρs weights 8000 kg/m³. Example: 50.00 g at 20 °C: 50.143 cm³.
 * Source: ISO 4787 (from memory).
 */
export const volumeOfWater = (mass: Mass, temperature: Temperature): Volume =>
  ((mass * (1 - AIR / WEIGHTS)) / (waterDensity(temperature) - AIR)) as Volume;
