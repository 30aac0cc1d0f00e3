import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  formatQuantity,
  formatUncertain,
  formatWindow,
  fromUnit,
  parseQuantity,
  parseWindow,
  QUANTITY_KINDS,
  type QuantityKind,
  toUnit,
  unitsOf,
} from './index.js';

/** A whole number of last digits with a count of places, in any unit of any kind. */
const printable = fc.constantFrom(...QUANTITY_KINDS).chain((kind) =>
  fc.record({
    kind: fc.constant<QuantityKind>(kind),
    unit: fc.constantFrom(...unitsOf(kind).map((unit) => unit.name)),
    other: fc.constantFrom(...unitsOf(kind).map((unit) => unit.name)),
    digits:
      kind === 'temperature' ? fc.integer({ min: 0, max: 9_999_999 }) : fc.integer({ min: -9_999_999, max: 9_999_999 }),
    places: fc.integer({ min: 0, max: 6 }),
  }),
);

function parsed(kind: QuantityKind, text: string) {
  const read = parseQuantity(kind, text);
  if (!read.ok) throw new Error(`${text}: ${read.fault.code}`);
  return read.value;
}

describe('what is printed can be read back', () => {
  it('gives every printable value of every unit and kind back, with its unit and its places', () => {
    fc.assert(
      fc.property(printable, ({ kind, unit, digits, places }) => {
        const number = digits / 10 ** places;
        const text = formatQuantity(kind, fromUnit(kind, number, unit), unit, places);
        const typed = parsed(kind, text);
        expect(typed).toMatchObject({ text, unit, places });
        expect(toUnit(kind, typed.value, unit)).toBeCloseTo(number, 7);
        expect(formatQuantity(kind, typed.value, unit, places)).toBe(text);
      }),
      { numRuns: 2000 },
    );
  });

  it('gives any value back within half of its last printed digit', () => {
    const value = fc.double({ min: -1e6, max: 1e6, noNaN: true });
    fc.assert(
      fc.property(
        fc.constantFrom('mm', 'in', 'µm', 'thou'),
        value,
        fc.integer({ min: 0, max: 6 }),
        (unit, number, places) => {
          const typed = parsed('length', formatQuantity('length', fromUnit('length', number, unit), unit, places));
          expect(Math.abs(toUnit('length', typed.value, unit) - number)).toBeLessThanOrEqual(
            0.5 * 10 ** -places * (1 + 1e-6) + 1e-8,
          );
        },
      ),
    );
  });

  it('means the same after a swap of unit and back', () => {
    fc.assert(
      fc.property(printable, ({ kind, unit, other, digits, places }) => {
        const value = fromUnit(kind, digits / 10 ** places, unit);
        const there = fromUnit(kind, toUnit(kind, value, other), other);
        expect(Math.abs(there - value)).toBeLessThanOrEqual(1e-12 * Math.max(Math.abs(value), 300));
      }),
    );
  });

  it('reads inches and their exact millimetres as the very same number', () => {
    fc.assert(
      fc.property(fc.integer({ min: -999_999, max: 999_999 }), (tenths) => {
        const sign = tenths < 0 ? '-' : '';
        const pad = (n: number, width: number) => String(Math.abs(n)).padStart(width, '0');
        const point = (text: string, places: number) => `${sign}${text.slice(0, -places)}.${text.slice(-places)}`;
        const inches = `${point(pad(tenths, 5), 4)} in`; // 0.0001 in
        const metric = `${point(pad(tenths * 254, 6), 5)} mm`; // 0.0001 in is 0.00254 mm
        expect(parsed('length', inches).value).toBe(parsed('length', metric).value);
      }),
    );
  });

  it('gives windows back: ranges, limits and single values', () => {
    const width = fc.integer({ min: 0, max: 999_999 });
    fc.assert(
      fc.property(
        printable,
        width,
        fc.constantFrom('range', 'low', 'high'),
        ({ kind, unit, digits, places }, more, ends) => {
          const low = fromUnit(kind, digits / 10 ** places, unit);
          const high = fromUnit(kind, (digits + more) / 10 ** places, unit);
          const window = ends === 'range' ? { low, high } : ends === 'low' ? { low } : { high };
          const text = formatWindow(kind, window, unit, places);
          const read = parseWindow(kind, text);
          if (!read.ok) throw new Error(`${text}: ${read.fault.code}`);
          const single = ends === 'range' && more === 0;
          expect(Object.keys(read.value).filter((key) => key === 'low' || key === 'high')).toEqual(
            ends === 'range' || single ? ['low', 'high'] : [ends],
          );
          expect(formatWindow(kind, read.value, unit, places)).toBe(text);
        },
      ),
      { numRuns: 1000 },
    );
  });

  it('gives a value with its uncertainty back', () => {
    const u = fc.double({ min: 1e-7, max: 1e-3, noNaN: true });
    fc.assert(
      fc.property(
        fc.double({ min: -1, max: 1, noNaN: true }),
        u,
        fc.constantFrom('mm', 'in'),
        (value, uncertainty, unit) => {
          const typed = parsed('length', formatUncertain('length', { value, u: uncertainty }, unit));
          expect(Math.abs(typed.value - value)).toBeLessThanOrEqual(0.06 * 2 * uncertainty);
          expect(Math.abs((typed.plusMinus ?? 0) / (2 * uncertainty) - 1)).toBeLessThanOrEqual(0.051);
        },
      ),
    );
  });
});
