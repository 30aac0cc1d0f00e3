/**
 * Values with their standard uncertainty, and the few rules of the GUM (JCGM 100:2008, recalled) that every calculation
 * shares. Any kind of quantity; `u` is in the SI unit of the value (for a temperature: a difference).
 */
import { formatNumber, NO_DATA, withUnit } from './format.js';
import type { QuantityKind } from './kinds.js';
import { siToNumber, unitOrThrow } from './units.js';

/** A value and its standard uncertainty (one standard deviation, never negative). */
export interface Uncertain<Q extends number = number> {
  readonly value: Q;
  readonly u: Q;
}

/** One input of a result: its standard uncertainty and how much the result changes per unit of it. */
export interface Contribution {
  readonly u: number;
  /** Partial derivative of the result by this input; 2 for a shell wall that counts twice in a clearance. */
  readonly sensitivity: number;
}

/** A value taken as exact, such as a count or a definition. A value of unknown uncertainty is not exact: leave it out. */
export const exactly = <Q extends number>(value: Q): Uncertain<Q> => ({ value, u: 0 as Q });

/** Root of the sum of squares. Of nothing: 0. */
export const quadrature = (...parts: readonly number[]): number => Math.hypot(...parts);

/**
 * Combined standard uncertainty of a result with independent inputs: u = √Σ(cᵢ·uᵢ)², cᵢ the sensitivities.
 * Holds where the result is near enough linear over each input's uncertainty. Source: JCGM 100, 5.1.2 (recalled).
 */
export const combinedUncertainty = (inputs: readonly Contribution[]): number =>
  quadrature(...inputs.map((input) => input.sensitivity * input.u));

/** Share of the combined variance that each input has, 0 to 1, summing to 1; all 0 when nothing is uncertain. */
export function varianceShares(inputs: readonly Contribution[]): readonly number[] {
  const total = combinedUncertainty(inputs);
  return inputs.map((input) => (total === 0 ? 0 : ((input.sensitivity * input.u) / total) ** 2));
}

/**
 * A linear result, value = Σ cᵢ·xᵢ, with its uncertainty: a clearance is `linear([[1, bore], [-2, wall], [-1, journal]])`.
 * All terms must be of one kind; they are taken as independent. Source: JCGM 100, 5.1.2 (recalled).
 */
export function linear<Q extends number>(
  terms: readonly (readonly [factor: number, input: Uncertain<Q>])[],
): Uncertain<Q> {
  const value = terms.reduce((sum, [factor, input]) => sum + factor * input.value, 0);
  const u = combinedUncertainty(terms.map(([sensitivity, { u }]) => ({ u, sensitivity })));
  return { value: value as Q, u: u as Q };
}

/** Standard uncertainty of a quantity known to lie within ± `halfWidth`, no place likelier: a/√3. JCGM 100, 4.3.7 (recalled). */
export const fromHalfWidth = (halfWidth: number): number => Math.abs(halfWidth) / Math.sqrt(3);

/** Standard uncertainty from a display that moves in steps: step/√12. JCGM 100, F.2.2.1 (recalled). */
export const fromStep = (step: number): number => Math.abs(step) / Math.sqrt(12);

/** Standard uncertainty within ± `halfWidth` where the middle is likelier (triangle): a/√6. JCGM 100, 4.3.9 (recalled). */
export const fromTriangle = (halfWidth: number): number => Math.abs(halfWidth) / Math.sqrt(6);

/**
 * Mean of repeated readings and its standard uncertainty s/√n, s with n − 1 degrees of freedom. Undefined for fewer than two
 * readings: one reading says nothing about its scatter. Source: JCGM 100, 4.2 (recalled).
 */
export function fromRepeats<Q extends number>(readings: readonly Q[]): Uncertain<Q> | undefined {
  const n = readings.length;
  if (n < 2) return undefined;
  const mean = readings.reduce((sum, reading) => sum + reading, 0) / n;
  const squares = readings.reduce((sum, reading) => sum + (reading - mean) ** 2, 0);
  return { value: mean as Q, u: Math.sqrt(squares / (n - 1) / n) as Q };
}

/** How `formatUncertain` prints. */
export interface UncertainStyle {
  /** Coverage factor of the figure after ±; 2 when not given (about 95 %). */
  readonly coverage?: number;
  /** Places of the value when it is exact, and the figure after ± is left out; 0 when not given. */
  readonly places?: number;
}

function roundTo(number: number, places: number): string {
  if (places >= 0) return formatNumber(number, places);
  const scale = 10 ** -places;
  return formatNumber(Math.round(number / scale) * scale, 0);
}

/**
 * Text of a value with its expanded uncertainty, e.g. `0.0500 ±0.0082 mm`: two significant digits of uncertainty, the value to the
 * same place. `parseQuantity` reads it back. Source: JCGM 100, 7.2.6 (recalled).
 */
export function formatUncertain(
  kind: QuantityKind,
  measured: Uncertain,
  unit: string,
  style: UncertainStyle = {},
): string {
  const found = unitOrThrow(kind, unit);
  const number = siToNumber(found, measured.value);
  const spread = ((style.coverage ?? 2) * measured.u * found.per) / found.times;
  if (!Number.isFinite(number) || !Number.isFinite(spread)) return NO_DATA;
  const places = spread === 0 ? (style.places ?? 0) : 1 - Number(spread.toExponential(1).split('e')[1]);
  const text = spread === 0 ? roundTo(number, places) : `${roundTo(number, places)} ±${roundTo(spread, places)}`;
  return withUnit(text, found, number);
}
