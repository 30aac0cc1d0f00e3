import type { QuantityFault } from './fault.js';
import { splitForm } from './form.js';
import type { QuantityKind, QuantityOf } from './kinds.js';
import { done, type Outcome, refused } from './outcome.js';
import { type Spread, spreadOf } from './spread.js';
import { tidy } from './tidy.js';
import type { ReadOptions, Typed, TypedWindow } from './typed.js';

/** Longest text that is read. */
export const LONGEST_TEXT = 64;

function read(kind: QuantityKind, text: string, options: ReadOptions): Outcome<Spread, QuantityFault> {
  if (text.length > LONGEST_TEXT) return refused({ code: 'too-long', length: text.length, limit: LONGEST_TEXT });
  const tidied = tidy(text);
  const spread = spreadOf(kind, splitForm(kind, tidied), options);
  if (!spread.ok) return spread;
  const coldest = spread.value.low ?? spread.value.high;
  if (kind === 'temperature' && coldest !== undefined && coldest < 0) {
    return refused({ code: 'below-absolute-zero', given: tidied });
  }
  return spread;
}

/**
 * Reads one value that a person typed or a manual printed: `4.030 in`, `1/2 turn`, `15 thou`, `84 N·m`, `3.7500 ±0.0005 in`.
 * The unit is part of the text (a ratio needs none); a bare number is refused, never guessed, and so is a window.
 * Never throws. Returns the fault as data; `describeFault` makes the sentence.
 */
export function parseQuantity<K extends QuantityKind>(
  kind: K,
  text: string,
  options: ReadOptions = {},
): Outcome<Typed<QuantityOf<K>>, QuantityFault> {
  const spread = read(kind, text, options);
  if (!spread.ok) return spread;
  const { middle, plusMinus, unit, places } = spread.value;
  if (middle === undefined) return refused({ code: 'not-one-value', given: text.trim() });
  const typed = { text, value: middle as QuantityOf<K>, unit, places };
  return done(plusMinus === undefined ? typed : { ...typed, plusMinus });
}

/**
 * Reads a window: a range `0.0010..0.0025 in` (also `a to b`, and `37-43 N·m` of positive numbers), a limit `<= 0.12 mm` or
 * `max 0.12 mm`, a tolerance `3.7500 ±0.0005 in` or `50 +10/-5 N·m`. A single value is a window of no width. A printed `<`
 * is read as `<=`: both ends count as inside. Refuses as `parseQuantity` does, and when the low end is above the high end.
 */
export function parseWindow<K extends QuantityKind>(
  kind: K,
  text: string,
  options: ReadOptions = {},
): Outcome<TypedWindow<QuantityOf<K>>, QuantityFault> {
  const spread = read(kind, text, options);
  if (!spread.ok) return spread;
  const { low, high, unit, places } = spread.value;
  const ends = {
    ...(low === undefined ? {} : { low: low as QuantityOf<K> }),
    ...(high === undefined ? {} : { high: high as QuantityOf<K> }),
  };
  return done({ text, ...ends, unit, places });
}
