import { describe, expect, it } from 'vitest';
import {
  celsius,
  combinedUncertainty,
  exactly,
  formatUncertain,
  fromHalfWidth,
  fromRepeats,
  fromStep,
  fromTriangle,
  inch,
  type Length,
  linear,
  mm,
  quadrature,
  type Uncertain,
  varianceShares,
} from './index.js';

const measured = (value: number, u: number): Uncertain<Length> => ({ value: mm(value), u: mm(u) });

describe('standard uncertainty from what is known', () => {
  // Reference: metrology-open section E, GUM 4.2, 4.3, F.2 (the five readings and their results; tolerance one unit of the last digit).
  it('comes from repeats, from a display step, from limits', () => {
    const repeats = fromRepeats([101.604, 101.606, 101.603, 101.605, 101.607]);
    expect(repeats?.value).toBeCloseTo(101.605, 6);
    expect(repeats?.u).toBeCloseTo(0.000707, 6);
    expect(fromStep(0.001)).toBeCloseTo(0.000289, 6);
    expect(fromHalfWidth(0.5)).toBeCloseTo(0.2887, 4);
    expect(fromTriangle(0.5)).toBeCloseTo(0.5 / 2.449489742783178, 12);
  });

  it('does not come from one reading', () => {
    expect(fromRepeats([mm(50)])).toBeUndefined();
    expect(fromRepeats([1, 3])).toEqual({ value: 2, u: 1 });
    expect(fromRepeats([])).toBeUndefined();
  });
});

describe('uncertainty of a result', () => {
  // Reference: metrology-open O-30 (derived, GUM 5.1.2): housing, journal, two shells measured apart; 0.00324 mm, U 0.0065.
  it('of a clearance with two shells measured apart is 0.0032 mm', () => {
    const u = quadrature(0.0025, 0.0015, 0.001, 0.001);
    expect(u).toBeCloseTo(0.00324, 5);
    expect(2 * u).toBeCloseTo(0.0065, 4);
  });

  // Hand arithmetic: 68.350 - 2 x 2.430 - 63.440 = 0.050; root of 9 + 4 + 4 = 4.123 micrometres.
  it('counts one wall reading twice where it stands for both shells', () => {
    const clearance = linear([
      [1, measured(68.35, 0.003)],
      [-2, measured(2.43, 0.001)],
      [-1, measured(63.44, 0.002)],
    ]);
    expect(clearance.value).toBeCloseTo(mm(0.05), 12);
    expect(clearance.u).toBeCloseTo(mm(0.0041231), 9);
    expect(formatUncertain('length', clearance, 'mm')).toBe('0.0500 ±0.0082 mm');
  });

  it('is the root of the sum of squares with the sensitivities, and nothing from nothing', () => {
    expect(
      combinedUncertainty([
        { u: 3, sensitivity: 1 },
        { u: 2, sensitivity: -2 },
      ]),
    ).toBe(5);
    expect(combinedUncertainty([])).toBe(0);
    expect(linear([])).toEqual({ value: 0, u: 0 });
  });

  it('is shared out among the inputs by variance', () => {
    const shares = varianceShares([
      { u: 3, sensitivity: 1 },
      { u: 2, sensitivity: -2 },
    ]);
    expect(shares[0]).toBeCloseTo(0.36, 12);
    expect(shares[1]).toBeCloseTo(0.64, 12);
    expect(varianceShares([{ u: 0, sensitivity: 1 }])).toEqual([0]);
  });
});

describe('printing a value with its uncertainty', () => {
  // Two significant digits of uncertainty, value to the same place: GUM 7.2.6, recalled; rounding by hand.
  it.each<[number, number, string]>([
    [57.0123, 0.00617, '57.012 ±0.012 mm'],
    [57.0123, 0.0498, '57.01 ±0.10 mm'],
    [57.0123, 6.17, '57 ±12 mm'],
    [1234.5, 61.7, '1230 ±120 mm'],
    [-0.0004, 0.006, '0.000 ±0.012 mm'],
  ])('%d with u %d mm is "%s"', (value, u, text) => {
    expect(formatUncertain('length', measured(value, u), 'mm')).toBe(text);
  });

  it('takes another coverage factor, and another unit', () => {
    expect(formatUncertain('length', measured(57.0123, 0.00617), 'mm', { coverage: 1 })).toBe('57.0123 ±0.0062 mm');
    expect(formatUncertain('length', { value: inch(2.5), u: inch(0.00005) }, 'in')).toBe('2.50000 ±0.00010 in');
    expect(formatUncertain('temperature', { value: celsius(80), u: 1 }, '°F')).toBe('176.0 ±3.6 °F');
    expect(formatUncertain('ratio', { value: 9.5, u: 0.05 }, ':1')).toBe('9.50 ±0.10:1');
    expect(formatUncertain('ratio', { value: 9.5, u: 0.05 }, '')).toBe('9.50 ±0.10');
  });

  it('prints an exact value alone, and no data for none', () => {
    expect(formatUncertain('length', exactly(inch(1)), 'mm', { places: 1 })).toBe('25.4 mm');
    expect(formatUncertain('length', exactly(mm(25)), 'mm')).toBe('25 mm');
    expect(formatUncertain('length', { value: Number.NaN, u: 0 }, 'mm')).toBe('no data');
    expect(formatUncertain('length', { value: 1, u: Number.POSITIVE_INFINITY }, 'mm')).toBe('no data');
  });
});
