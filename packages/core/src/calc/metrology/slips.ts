/** Could a reading that is unlike its sisters be a slip of the pen? */
import {
  fromUnit,
  parseQuantity,
  QUANTITY_KINDS,
  type QuantityKind,
  type Typed,
  unitsOf,
} from '../../quantity/index.js';
import { median, spread } from './repeats.js';

export type SlipCode = 'unit' | 'decimal-point' | 'digits-swapped' | 'digit-missing' | 'digit-too-many';

/** A way in which the reading may have come about, and what it would have been. SI value. */
export interface Slip {
  readonly code: SlipCode;
  readonly value: number;
  /** Unit that would fit, for `unit`; else the unit typed. */
  readonly unit: string;
}

/** First kind of quantity by which all texts can be read, and the readings. */
export function readAlike(
  texts: readonly string[],
): { readonly kind: QuantityKind; readonly typed: readonly Typed[] } | undefined {
  for (const kind of QUANTITY_KINDS) {
    const typed = texts.map((text) => parseQuantity(kind, text));
    const good = typed.flatMap((one) => (one.ok ? [one.value] : []));
    if (good.length === texts.length) return { kind, typed: good };
  }
  return undefined;
}

/** One in the last place typed, SI. */
const lastPlaceOf = (kind: QuantityKind, { unit, places }: Typed): number =>
  fromUnit(kind, 10 ** -places, unit) - fromUnit(kind, 0, unit);

/**
 * How far a reading may be from the middle of its sisters before it is unlike them: three times their range, two of their
 * coarsest last places, and the rounding of the reading itself. Own rule: parts that are alike by intent differ by wear, slips by whole digits.
 */
export function likeness(kind: QuantityKind, reading: Typed, sisters: readonly Typed[]): number {
  const coarsest = Math.max(...sisters.map((one) => lastPlaceOf(kind, one)));
  return 3 * spread(sisters.map((one) => one.value)) + 2 * coarsest + lastPlaceOf(kind, reading) / 2;
}

const NUMBER = /^([-+−]?)(\d*)(?:\.(\d*))?(?![\d./])/;

/**
 * Slips that would bring a reading among its sisters: another unit, a decimal point one or two places off, two digits beside each
 * other swapped, a digit left out or typed twice over. Of each way the one nearest to their middle. A fraction is only tried for its unit.
 */
export function slipsOf(
  kind: QuantityKind,
  reading: Typed,
  sisters: readonly Typed[],
  within: number,
): readonly Slip[] {
  const middle = median(sisters.map((one) => one.value));
  const found = NUMBER.exec(reading.text.trim());
  const number = found ? Number(`${found[1] === '−' ? '-' : found[1]}${found[2]}.${found[3] ?? ''}0`) : undefined;
  const own = reading.unit;
  const inUnit = (code: SlipCode, numbers: readonly number[]): readonly Slip[] =>
    numbers.map((one) => ({ code, value: fromUnit(kind, one, own), unit: own }));
  const digits = found
    ? digitSlips(
        found[2]!,
        found[3] ?? '',
        found[1] === '' || found[1] === '+' ? 1 : -1,
        Math.max(...sisters.map((one) => one.places)),
      )
    : [];
  const tries: readonly (readonly Slip[])[] = [
    number === undefined ? [] : otherUnits(kind, number, own),
    number === undefined ? [] : inUnit('decimal-point', [number * 10, number / 10, number * 100, number / 100]),
    ...digits.map(({ code, numbers }) => inUnit(code, numbers)),
  ];
  const off = (slip: Slip) => Math.abs(slip.value - middle);
  return tries.flatMap((ways) => {
    const near = ways.filter((slip) => off(slip) <= within).sort((a, b) => off(a) - off(b));
    return near.slice(0, 1);
  });
}

const otherUnits = (kind: QuantityKind, number: number, own: string): readonly Slip[] =>
  unitsOf(kind)
    .filter((unit) => unit.name !== own)
    .map((unit) => ({ code: 'unit', value: fromUnit(kind, number, unit.name), unit: unit.name }));

/** Numbers that slips of digits may have turned into the one typed. */
function digitSlips(whole: string, part: string, sign: 1 | -1, mostPlaces: number) {
  const all = whole + part;
  const number = (digits: string, point: number) => sign * Number(`${digits.slice(0, point)}.${digits.slice(point)}0`);
  const at = whole.length;
  const places = [...all].map((_, place) => place);
  const swapped = places
    .slice(1)
    .map((k) => number(`${all.slice(0, k - 1)}${all[k]}${all[k - 1]}${all.slice(k + 1)}`, at));
  const ten = Array.from({ length: 10 }, (_, digit) => digit);
  // A digit lost after the point is only likely where the sisters were typed with one place more.
  const longer = ten.flatMap((digit) =>
    [...places, all.length].map((k) => ({ k, digits: `${all.slice(0, k)}${digit}${all.slice(k)}` })),
  );
  const missing = [
    ...longer.flatMap(({ k, digits }) => (k <= at ? [number(digits, at + 1)] : [])),
    ...longer.flatMap(({ k, digits }) => (k >= at && part.length < mostPlaces ? [number(digits, at)] : [])),
  ];
  const many = places.map((k) => number(`${all.slice(0, k)}${all.slice(k + 1)}`, k < at ? at - 1 : at));
  return [
    { code: 'digits-swapped', numbers: swapped },
    { code: 'digit-missing', numbers: missing },
    { code: 'digit-too-many', numbers: many },
  ] as const;
}
