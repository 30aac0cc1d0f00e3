import type { QuantityKind } from './kinds.js';
import type { Typed } from './typed.js';
import { unitOrThrow } from './units.js';

/** Rounding explains a half of the last digit; a tenth more is left for figures that were cut instead of rounded. */
const SHARE_OF_LAST_DIGIT = 0.6;

/** One unit in the last place of a typed figure, in the SI unit: its resolution. */
export function lastPlace(kind: QuantityKind, { unit, places }: Pick<Typed, 'unit' | 'places'>): number {
  const { times, per } = unitOrThrow(kind, unit);
  return (10 ** -places * times) / per;
}

/**
 * Whether two printings of one figure, such as `81.006 mm` and `3.1892 in`, can both be right: they differ by at most 0.6 of
 * the last digit of the coarser one. A disagreement is a misprint to be shown, not corrected.
 * Source: own rule, from the misprints collected in service manuals (cases beside the test).
 */
export function printedAlike(kind: QuantityKind, one: Omit<Typed, 'text'>, other: Omit<Typed, 'text'>): boolean {
  const coarser = Math.max(lastPlace(kind, one), lastPlace(kind, other));
  return Math.abs(one.value - other.value) <= SHARE_OF_LAST_DIGIT * coarser;
}
