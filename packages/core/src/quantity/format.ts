import type { QuantityKind } from './kinds.js';
import type { TypedWindow } from './typed.js';
import { siToNumber, type Unit, unitOrThrow } from './units.js';

/** Printed where a value is not finite: unknown is never a number. */
export const NO_DATA = 'no data';

const NOISE_FREE_DIGITS = 14;
const MOST_PLACES = 20;

/**
 * Decimal text of a finite number with the given places (0 to 20): a leading zero, halves away from zero, no negative zero, no
 * exponent. The last binary digits are dropped first, so that 0.0635 rounds as a person rounds it.
 */
export function formatNumber(number: number, places: number): string {
  const kept = Math.min(Math.max(Math.trunc(places), 0), MOST_PLACES);
  const [digits = '', power = '0'] = Math.abs(number)
    .toExponential(NOISE_FREE_DIGITS - 1)
    .split('e');
  const whole = Math.round(Number(`${digits}e${Number(power) + kept}`));
  const text = BigInt(whole)
    .toString()
    .padStart(kept + 1, '0');
  const sign = number < 0 && whole > 0 ? '-' : '';
  return kept === 0 ? sign + text : `${sign}${text.slice(0, -kept)}.${text.slice(-kept)}`;
}

/** A printed number with its unit behind it; `magnitude` decides between `turn` and `turns`. */
export function withUnit(text: string, unit: Unit, magnitude: number): string {
  if (unit.name === '' || unit.name.startsWith(':')) return text + unit.name;
  return `${text} ${Math.abs(magnitude) > 1 ? unit.plural : unit.name}`;
}

const numberText = (value: number, unit: Unit, places: number): string => formatNumber(siToNumber(unit, value), places);

/**
 * Text of an SI value in a unit, e.g. `formatQuantity('length', 0.102362, 'in', 3)` is `4.030 in`. The unit gets its own
 * spelling (`N·m` for `Nm`). A value that is not finite gives `no data`. Throws RangeError when the kind has no such unit.
 */
export function formatQuantity(kind: QuantityKind, value: number, unit: string, places: number): string {
  const found = unitOrThrow(kind, unit);
  if (!Number.isFinite(value)) return NO_DATA;
  const text = numberText(value, found, places);
  return withUnit(text, found, Number(text));
}

/** Text of a window: `0.0010..0.0025 in`, `<= 0.12 mm`, `>= 5 N`, or one value when both ends print alike. */
export function formatWindow(
  kind: QuantityKind,
  window: Pick<TypedWindow, 'low' | 'high'>,
  unit: string,
  places: number,
): string {
  const found = unitOrThrow(kind, unit);
  const { low, high } = window;
  if (low === undefined) return high === undefined ? NO_DATA : `<= ${formatQuantity(kind, high, unit, places)}`;
  if (high === undefined) return `>= ${formatQuantity(kind, low, unit, places)}`;
  if (!Number.isFinite(low) || !Number.isFinite(high)) return NO_DATA;
  const from = numberText(low, found, places);
  const to = numberText(high, found, places);
  return withUnit(from === to ? to : `${from}..${to}`, found, Number(to));
}
