/** Sizes referred to the temperature at which drawings and limits hold. */
import type { Length, Temperature } from '../../quantity/index.js';

/** A body at a temperature [K] with its mean expansion [1/K] between there and the reference. */
export interface WarmBody {
  readonly temperature: Temperature;
  readonly expansion: number;
}

/** Length at its temperature over length at the reference. */
export const growthOf = (body: WarmBody, reference: Temperature): number =>
  1 + body.expansion * (body.temperature - reference);

/**
 * Size of a part at the reference temperature from a reading taken warm or cold [m].
 *
 *   D₀ = reading·(1 + αg·(Tg − T₀))/(1 + αp·(Tp − T₀))
 *
 * αp, Tp part; αg, Tg gauge (its scale grows too and reads low when warm); T₀ `reference`, 20 °C by ISO 1.
 * Example: 101.640 mm of iron (11 ppm/K) at 28 °C, gauge at 20 °C: 101.63106 mm.
 * Source: definition of mean expansion; ISO 1 (recalled) for 20 °C.
 */
export const sizeAtReference = (reading: Length, part: WarmBody, gauge: WarmBody, reference: Temperature): Length =>
  ((reading * growthOf(gauge, reference)) / growthOf(part, reference)) as Length;

/** The reading that a part of a known size at the reference gives; inverse of `sizeAtReference` [m]. */
export const readingAtTemperature = (size: Length, part: WarmBody, gauge: WarmBody, reference: Temperature): Length =>
  ((size * growthOf(part, reference)) / growthOf(gauge, reference)) as Length;
