import { formatNumber, formatQuantity, type QuantityKind, toUnit } from '../../quantity/index.js';
import type { Range } from './spec.js';

/** Rounding of a unit conversion must not push a value over a limit that it meets exactly. */
const ROUNDING = 1e-12;

/** Whether a value keeps a range. Not a number never does. */
export function holds(range: Range, value: number): boolean {
  const slack = ROUNDING * Math.abs(value);
  return (
    Number.isFinite(value) &&
    (range.above === undefined || value > range.above) &&
    (range.from === undefined || value >= range.from - slack) &&
    (range.to === undefined || value <= range.to + slack) &&
    (range.below === undefined || value < range.below)
  );
}

const DIGITS = 6;

/** Text of an SI limit with the places it needs and no more: "0 mm", "44.196 mm". */
export function limitText(kind: QuantityKind | 'count', value: number, unit: string): string {
  if (kind === 'count') return String(value);
  const number = Number(toUnit(kind, value, unit).toPrecision(DIGITS));
  const places = Math.min(10, /\.(\d+)/.exec(formatNumber(number, 10).replace(/0+$/, ''))?.[1]?.length ?? 0);
  return formatQuantity(kind, value, unit, places);
}

/** A range in words: "above 0 mm and at most 1000 mm". */
export function rangeText(kind: QuantityKind | 'count', range: Range, unit: string): string {
  const parts = [
    range.above !== undefined && `above ${limitText(kind, range.above, unit)}`,
    range.from !== undefined && `at least ${limitText(kind, range.from, unit)}`,
    range.to !== undefined && `at most ${limitText(kind, range.to, unit)}`,
    range.below !== undefined && `below ${limitText(kind, range.below, unit)}`,
  ].filter((part) => part !== false);
  return parts.length === 0 ? 'any value' : parts.join(' and ');
}
