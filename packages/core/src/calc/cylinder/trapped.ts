import {
  type Angle,
  done,
  type Length,
  type Outcome,
  type Pressure,
  type Ratio,
  type Volume,
} from '../../quantity/index.js';
import { deadCentres, pistonDrop, type RodTooShort, type SliderCrank } from '../crank/index.js';
import { discVolume } from './volumes.js';

export interface TrappedStroke {
  /** Piston above its lowest point when the intake valve closes. */
  readonly rise: Length;
  /** What is left of the stroke. */
  readonly remaining: Length;
  readonly stroke: Length;
}

/**
 * How much of the stroke is left when the intake valve closes [m].
 *
 * `closing` [rad] is counted after bottom dead centre on a degree wheel zeroed at the piston's true top, so the crank
 * stands at true top + 180° + closing; exact slider-crank with pin offset. Refuses with `rod-too-short`.
 * Example: stroke 3.480 in, rod 5.700 in, 60° after bottom: risen 0.6672 in. Source: definition; see `pistonDrop`.
 */
export const strokeLeft = (g: SliderCrank, closing: Angle): Outcome<TrappedStroke, RodTooShort> =>
  andThen(deadCentres(g), ({ stroke, topAngle }) =>
    andThen(pistonDrop(g, (topAngle + Math.PI + closing) as Angle), (remaining) =>
      done({ rise: (stroke - remaining) as Length, remaining, stroke }),
    ),
  );

const andThen = <A, B, F>(found: Outcome<A, F>, next: (value: A) => Outcome<B, F>): Outcome<B, F> =>
  found.ok ? next(found.value) : found;

/**
 * Effective ratio: CRe = 1 + (CR − 1)·s/S, s the stroke left at closing, S the whole stroke [m], CR above 1.
 *
 * Example: 10.0 with 2.8128 of 3.480 in left: 8.27. Source: definition, common practice.
 */
export const effectiveRatio = (staticRatio: Ratio, { remaining, stroke }: TrappedStroke): Ratio =>
  (1 + ((staticRatio - 1) * remaining) / stroke) as Ratio;

/** Static ratio that leaves an effective one: the inverse of `effectiveRatio`. */
export const staticForEffective = (effective: Ratio, { remaining, stroke }: TrappedStroke): Ratio =>
  (1 + ((effective - 1) * stroke) / remaining) as Ratio;

/**
 * Pressure of the trapped charge at the top of a slow turn, absolute [Pa]: p = p0·CRe^k.
 *
 * p0 `ambient` [Pa], k `exponent` 1.2 to 1.3: a fit that stands for heat lost and leakage, not physics.
 * Example: 7.5, 1.3, 14.7 psi give 201.8 psi absolute. Source: `cranking-pressure`.
 */
export const crankingPressure = (ratio: Ratio, exponent: Ratio, ambient: Pressure): Pressure =>
  (ambient * ratio ** exponent) as Pressure;

/** Trapped ratio that a cranking pressure speaks for: CRe = (p/p0)^(1/k), p absolute. Inverse of `crankingPressure`. */
export const ratioFromPressure = (absolute: Pressure, exponent: Ratio, ambient: Pressure): Ratio =>
  ((absolute / ambient) ** (1 / exponent)) as Ratio;

/** Air at sea level [K, Pa], fall of temperature with height [K/m], and exponent g·M/(R·L) of the lower atmosphere. */
const SEA_LEVEL = { temperature: 288.15, pressure: 101_325 };
const LAPSE = 0.0065;
const EXPONENT = 5.25588;

/**
 * Air pressure of the standard atmosphere at a height above the sea [Pa]: p = 101325·(1 − 0.0065·h/288.15)^5.25588.
 *
 * `height` [m], −500 to 11 000. The weather moves it by some per cent. Example: 1500 m: 84.56 kPa.
 * Source: ISO 2533 (from memory).
 */
export const airPressure = (height: Length): Pressure =>
  (SEA_LEVEL.pressure * (1 - (LAPSE * height) / SEA_LEVEL.temperature) ** EXPONENT) as Pressure;

/**
 * Volume of the cylinder at a crank angle [m³]: V = Vc + π/4·B²·x, x the piston's way down from its highest point.
 *
 * Refuses with `rod-too-short`. Example: reference engine 86 x 86 mm, rod 166 mm, Vc 58.8 cm³, 20°: 77.6 cm³.
 * Source: `heywood-crank`.
 */
export function volumeAt(
  g: SliderCrank,
  bore: Length,
  clearance: Volume,
  crankAngle: Angle,
): Outcome<{ readonly volume: Volume; readonly drop: Length }, RodTooShort> {
  const drop = pistonDrop(g, crankAngle);
  return drop.ok ? done({ volume: (clearance + discVolume(bore, drop.value)) as Volume, drop: drop.value }) : drop;
}
