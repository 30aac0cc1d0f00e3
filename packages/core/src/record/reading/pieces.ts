/** Shapes that many kinds of entries share, with their longest lengths. */
import type { ValveId } from '../../engine/model.js';
import type { Reading } from '../../plan/index.js';
import { count, filledText, finite, type Guard, guard, object, oneOf } from './guards.js';

export const NAME = 120;
export const WORDS = 4_000;

export const name = filledText(NAME);
export const reason = filledText(WORDS);
export const matches = (expected: string, pattern: RegExp): Guard<string> =>
  guard(expected, (value) => typeof value === 'string' && value.length <= NAME && pattern.test(value));
export const hash = matches('64 hexadecimal digits', /^[0-9a-f]{64}$/);
export const reading: Guard<Reading> = object<Reading>({
  text: filledText(NAME),
  value: finite,
  unit: oneOf('m', 'N.m', 'rad', 'm3', 'kg', 'N', 'K', 'Pa', 's', 'rad/s'),
});
export const valve: Guard<ValveId> = object<ValveId>({
  cylinder: count,
  kind: oneOf('intake', 'exhaust'),
  index: count,
});
