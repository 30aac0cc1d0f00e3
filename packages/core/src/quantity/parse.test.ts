import { describe, expect, it } from 'vitest';
import {
  mm,
  parseQuantity,
  parseWindow,
  printedAlike,
  type QuantityFault,
  type QuantityKind,
  type ReadOptions,
  toUnit,
} from './index.js';

function value(kind: QuantityKind, text: string, options?: ReadOptions) {
  const read = parseQuantity(kind, text, options);
  if (!read.ok) throw new Error(`${text}: ${read.fault.code}`);
  return read.value;
}
function window(kind: QuantityKind, text: string, options?: ReadOptions) {
  const read = parseWindow(kind, text, options);
  if (!read.ok) throw new Error(`${text}: ${read.fault.code}`);
  return read.value;
}
function fault(kind: QuantityKind, text: string, options?: ReadOptions): QuantityFault | undefined {
  const read = parseQuantity(kind, text, options);
  return read.ok ? undefined : read.fault;
}
function windowFault(kind: QuantityKind, text: string): QuantityFault | undefined {
  const read = parseWindow(kind, text);
  return read.ok ? undefined : read.fault;
}

describe('a value as typed', () => {
  // Hand arithmetic from the exact definitions of the units.
  it.each<[QuantityKind, string, number, string, number]>([
    ['length', '4.030 in', 0.102362, 'in', 3],
    ['length', '0.0015 in', 0.0000381, 'in', 4],
    ['length', '38.25 mm', 0.03825, 'mm', 2],
    ['length', '15 thou', 0.000381, 'thou', 0],
    ['length', '3/8 in', 0.009525, 'in', 3],
    ['length', '1 1/2"', 0.0381, 'in', 1],
    ['length', '1½ in', 0.0381, 'in', 1],
    ['length', '⅜ in', 0.009525, 'in', 3],
    ['length', '3⁄8 in', 0.009525, 'in', 3],
    ['length', '.0025 in', 0.0000635, 'in', 4],
    ['length', '25µm', 0.000025, 'µm', 0],
    ['length', '  2.5\u00a0mm ', 0.0025, 'mm', 1],
    ['length', '−0.05 mm', -0.00005, 'mm', 2],
    ['length', '+0.05 mm', 0.00005, 'mm', 2],
    ['length', '-3/8 in', -0.009525, 'in', 3],
    ['length', '3/2 in', 0.0381, 'in', 1],
    ['length', '10/8 in', 0.03175, 'in', 2],
    ['length', '99/8 in', 0.314325, 'in', 3],
    ['length', '0 mm', 0, 'mm', 0],
    ['torque', '84 N·m', 84, 'N·m', 0],
    ['torque', '84Nm', 84, 'N·m', 0],
    ['angle', '1/2 turn', Math.PI, 'turn', 1],
    ['angle', '1 1/2 turns', 3 * Math.PI, 'turn', 1],
    ['angle', '3/4 turn', 1.5 * Math.PI, 'turn', 2],
    ['angle', '90 deg', Math.PI / 2, 'deg', 0],
    ['angle', '90°', Math.PI / 2, 'deg', 0],
    ['temperature', '20 °C', 293.15, '°C', 0],
    ['temperature', '68 °F', 293.15, '°F', 0],
    ['temperature', '-40 °F', 233.15, '°F', 0],
    ['temperature', '0 K', 0, 'K', 0],
    ['temperature-difference', '18 °F', 10, '°F', 0],
    ['time', '20 min', 1200, 'min', 0],
    ['frequency', '50 1/s', 50, 'Hz', 0],
    ['ratio', '1.52', 1.52, '', 2],
    ['ratio', '10.5:1', 10.5, ':1', 1],
    ['ratio', '50 %', 0.5, '%', 0],
    ['volume', '65.8 cc', 0.0000658, 'cm3', 1],
  ])('%s "%s"', (kind, text, si, unit, places) => {
    const typed = value(kind, text);
    expect(typed.value).toBeCloseTo(si, 15);
    expect(typed).toMatchObject({ text, unit, places });
    expect(typed).not.toHaveProperty('plusMinus');
  });

  it('keeps the trailing zero of 4.030 as resolution', () => {
    expect(value('length', '4.03 in').places).toBe(2);
    expect(value('length', '4.030 in').places).toBe(3);
    expect(value('length', '1/64 in').places).toBe(6);
    expect(value('angle', '1/3 turn').places).toBe(6);
    expect(value('length', '3/8 ±1/16 in')).toMatchObject({ places: 4, plusMinus: 0.0015875 });
    expect(value('length', '3/08 in').value).toBe(value('length', '3/8 in').value);
  });

  it('gives the very same number for the same size in inch and millimetre', () => {
    for (const [a, b] of [
      ['4.030 in', '102.362 mm'],
      ['3.7500 in', '95.25 mm'],
      ['0.0015 in', '38.1 µm'],
      ['1.5 thou', '0.0381 mm'],
    ]) {
      expect(value('length', a!).value).toBe(value('length', b!).value);
    }
  });

  it('carries a tolerance that is given with it', () => {
    const typed = value('length', '3.7500 ±0.0005 in');
    expect(typed.value).toBe(0.09525);
    expect(typed.plusMinus).toBe(0.0000127);
    expect(value('length', '3.7500 +/- 0.0005 in')).toMatchObject({ value: typed.value, plusMinus: typed.plusMinus });
    expect(value('length', '95.25 mm ± 0.5 thou').plusMinus).toBeCloseTo(0.0000127, 15);
    expect(value('length', '3.75 ±0.0005 in').places).toBe(4);
    expect(value('length', '95.25 mm ± 0.5 thou')).toMatchObject({ unit: 'mm', places: 2 });
    expect(value('temperature', '80 ±5 °C').plusMinus).toBe(5);
  });

  // Reference: mechanism-open MO-29 (thread designations, from memory; exact by definition; printed to five places).
  it.each([
    ['1/24 in', 0.04167],
    ['1/20 in', 0.05],
    ['1.25 mm', 0.04921],
    ['1.0 mm', 0.03937],
  ])('an adjuster pitch of %s is %d in a turn', (text, inches) => {
    expect(toUnit('length', value('length', text).value, 'in')).toBeCloseTo(inches, 5);
  });
});

describe('a window as typed', () => {
  it.each<[QuantityKind, string, number | undefined, number | undefined, string, number]>([
    ['length', '0.0010..0.0025 in', 0.0000254, 0.0000635, 'in', 4],
    ['length', '0.0010 in .. 0.0025 in', 0.0000254, 0.0000635, 'in', 4],
    ['length', '0.001…0.0025 in', 0.0000254, 0.0000635, 'in', 4],
    ['length', '0.0010 to 0.0025 in', 0.0000254, 0.0000635, 'in', 4],
    ['length', '-0.008..0.048 mm', -0.000008, 0.000048, 'mm', 3],
    ['length', '0.6 thou..0.05 mm', 0.00001524, 0.00005, 'thou', 1],
    ['torque', '37-43 N·m', 37, 43, 'N·m', 0],
    ['torque', '37 – 43 N-m', 37, 43, 'N·m', 0],
    ['torque', '12-15 kgf-m', 117.6798, 147.09975, 'kgf·m', 0],
    ['angle', '1/2-3/4 turn', Math.PI, 1.5 * Math.PI, 'turn', 2],
    ['angle', '1-1 1/2 turns', 2 * Math.PI, 3 * Math.PI, 'turn', 1],
    ['length', '<= 0.12 mm', undefined, 0.00012, 'mm', 2],
    ['length', '≤0.12mm', undefined, 0.00012, 'mm', 2],
    ['length', '< 0.12 mm', undefined, 0.00012, 'mm', 2],
    ['length', 'max 0.12 mm', undefined, 0.00012, 'mm', 2],
    ['length', 'Max. 0.12 mm', undefined, 0.00012, 'mm', 2],
    ['length', '0.12 mm maximum', undefined, 0.00012, 'mm', 2],
    ['length', '0.12 mm max.', undefined, 0.00012, 'mm', 2],
    ['force', '>= 5 N', 5, undefined, 'N', 0],
    ['force', '≥ 5 N', 5, undefined, 'N', 0],
    ['force', '> 5 N', 5, undefined, 'N', 0],
    ['force', 'min 5 N', 5, undefined, 'N', 0],
    ['force', 'minimum 5 N', 5, undefined, 'N', 0],
    ['force', '5 N min', 5, undefined, 'N', 0],
    ['time', '5 min', 300, 300, 'min', 0],
    ['time', 'min 5 min', 300, undefined, 'min', 0],
    ['time', '5 min max', undefined, 300, 'min', 0],
    ['length', '3.7500 ±0.0005 in', 0.0952373, 0.0952627, 'in', 4],
    ['torque', '50 +10/-5 N·m', 45, 60, 'N·m', 0],
    ['torque', '50 N·m +10 -5 N·m', 45, 60, 'N·m', 0],
    ['length', '20 +0.021/-0 mm', 0.02, 0.020021, 'mm', 3],
    ['temperature', '80 ±9 °F', 294.8166666666667, 304.8166666666667, '°F', 0],
    ['ratio', '9.0..9.5', 9, 9.5, '', 1],
    ['ratio', '9.0..9.5:1', 9, 9.5, ':1', 1],
    ['length', '0.25 mm', 0.00025, 0.00025, 'mm', 2],
    ['length', '5..5 mm', 0.005, 0.005, 'mm', 0],
    ['torque', '10-12 N·m', 10, 12, 'N·m', 0],
    ['length', '0.5 mm minimum', 0.0005, undefined, 'mm', 1],
    ['length', '3.75±0.25 in', 0.0889, 0.1016, 'in', 2],
  ])('%s "%s"', (kind, text, low, high, unit, places) => {
    const read = window(kind, text);
    expect(read).toMatchObject({ text, unit, places });
    expect('low' in read).toBe(low !== undefined);
    expect('high' in read).toBe(high !== undefined);
    if (low !== undefined) expect(read.low).toBeCloseTo(low, 12);
    if (high !== undefined) expect(read.high).toBeCloseTo(high, 12);
  });

  it('puts a reading that equals the limit on the limit, whichever unit it was typed in', () => {
    expect(window('length', '0.0010..0.0025 in').high).toBe(value('length', '63.5 µm').value);
    expect(window('length', '3.7500 ±0.0005 in').high).toBe(value('length', '3.7505 in').value);
    expect(window('length', '3.7500 ±0.0005 in').low).toBe(value('length', '3.7495 in').value);
  });

  // Misprint read in a service manual: metrology-open O-05, limits of a bore grade with the lower above the upper.
  it('refuses a window whose low end is above its high end', () => {
    expect(windowFault('length', '93.979-92.988 mm')).toEqual({ code: 'reversed', low: '93.979', high: '92.988 mm' });
  });
});

describe('one figure printed in two units', () => {
  const agree = (metric: string, english: string) =>
    printedAlike('length', value('length', metric), value('length', english));

  // Reference: metrology-open O-05, a printed oversize table (read); computed inches to five places, tolerance 0.00005 in.
  it.each([
    ['81.006 mm', '3.1892 in', 3.18921],
    ['81.019 mm', '3.1897 in', 3.18972],
    ['81.256 mm', '3.1990 in', 3.19906],
    ['81.269 mm', '3.1996 in', 3.19957],
    ['81.506 mm', '3.2089 in', 3.2089],
    ['81.519 mm', '3.2094 in', 3.20941],
  ])('%s beside %s can both be right', (metric, english, computed) => {
    expect(Math.abs(toUnit('length', value('length', metric).value, 'in') - computed)).toBeLessThan(0.00005);
    expect(agree(metric, english)).toBe(true);
  });

  // Misprints of the same row (read).
  it.each([
    ['0.15 mm', '0.014 in'],
    ['90.18 mm', '3.299 in'],
  ])('%s beside %s is a misprint', (metric, english) => {
    expect(agree(metric, english)).toBe(false);
  });
});

describe('what is refused, never guessed', () => {
  it('reads a text of 64 characters and no longer one', () => {
    expect(value('length', `${'1'.repeat(61)} mm`).value / 1e57).toBeCloseTo(1.1111111111, 9);
    expect(fault('length', `${'1'.repeat(62)} mm`)).toEqual({ code: 'too-long', length: 65, limit: 64 });
  });

  it.each<[QuantityKind, string, QuantityFault['code']]>([
    ['length', '', 'empty'],
    ['length', ' \t\n', 'empty'],
    ['length', `${'1'.repeat(62)} mm`, 'too-long'],
    ['length', '4.03', 'unit-missing'],
    ['length', '3/8', 'unit-missing'],
    ['length', '4.03 N', 'unit-of-other-kind'],
    ['torque', '84 lb', 'unit-of-other-kind'],
    ['length', '4.03 parsec', 'unit-unknown'],
    ['length', 'mm', 'not-a-number'],
    ['length', 'NaN mm', 'not-a-number'],
    ['length', 'Infinity mm', 'not-a-number'],
    ['length', '1e3 mm', 'unit-unknown'],
    ['length', '0x10 mm', 'unit-unknown'],
    ['length', '5. mm', 'not-a-number'],
    ['length', '. mm', 'not-a-number'],
    ['length', '1 250 mm', 'not-a-number'],
    ['length', '1/2/3 mm', 'not-a-number'],
    ['length', '1 2 3/4 in', 'not-a-number'],
    ['length', '- 5 mm', 'not-a-number'],
    ['length', '--5 mm', 'not-a-number'],
    ['length', '4.0.30 in', 'second-mark'],
    ['length', '1,250,000 mm', 'second-mark'],
    ['length', '1,250.5 mm', 'second-mark'],
    ['length', '1,250 mm', 'mark-question'],
    ['length', '05 mm', 'leading-zero'],
    ['length', '1/0 in', 'zero-denominator'],
    ['length', '1/00 in', 'zero-denominator'],
    ['length', '12-1/2 in', 'hyphen-question'],
    ['length', '1-11/16 in', 'hyphen-question'],
    ['length', '1/4 ±+1/8 in', 'negative-tolerance'],
    ['length', '±0.01 mm', 'empty'],
    ['length', '5 mm -2', 'unit-missing'],
    ['length', '13/8 in', 'space-question'],
    ['length', '113/64 in', 'space-question'],
    ['length', '1 11/8 in', 'not-a-number'],
    ['length', '1 8/8 in', 'not-a-number'],
    ['length', '1-1/2 in', 'hyphen-question'],
    ['angle', '-5-3 deg', 'hyphen-question'],
    ['length', '0.001..0.002 in', 'not-one-value'],
    ['length', '<= 0.12 mm', 'not-one-value'],
    ['torque', '50 +10/-5 N·m', 'not-one-value'],
    ['torque', '37-43 N·m', 'not-one-value'],
    ['length', '3.75 ±-0.01 in', 'negative-tolerance'],
    ['temperature', '-300 °C', 'below-absolute-zero'],
  ])('%s "%s": %s', (kind, text, code) => {
    expect(fault(kind, text)?.code).toBe(code);
  });

  it.each<[QuantityKind, string, QuantityFault['code']]>([
    ['length', '1-1/2 in', 'hyphen-question'],
    ['length', '1-1/2..2 in', 'hyphen-question'],
    ['length', '0.001.. in', 'not-a-number'],
    ['length', '50 ++10/-5 mm', 'negative-tolerance'],
    ['length', '<=', 'empty'],
    ['length', '.. 5 mm', 'empty'],
    ['length', '1..2..3 mm', 'not-a-number'],
    ['length', '0.001..0.002', 'unit-missing'],
    ['length', '4..030 in', 'leading-zero'],
    ['length', '1..2 N', 'unit-of-other-kind'],
    ['length', 'max', 'empty'],
    ['length', '5 min', 'unit-missing'],
    ['length', '3.75 ±-0.01 in', 'negative-tolerance'],
    ['length', '3.75 ±0.01 ±0.02 in', 'not-a-number'],
    ['temperature', '-300..20 °C', 'below-absolute-zero'],
    ['temperature', '<= -300 °C', 'below-absolute-zero'],
  ])('window of %s "%s": %s', (kind, text, code) => {
    expect(windowFault(kind, text)?.code).toBe(code);
  });
});

describe('the decimal comma', () => {
  it('is asked about where it could group thousands', () => {
    expect(fault('length', '1,250 mm')).toEqual({
      code: 'mark-question',
      given: '1,250',
      asDecimal: '1.250',
      asThousands: '1250',
    });
  });

  it('is read where it can only be a decimal mark', () => {
    expect(value('length', '4,03 in')).toMatchObject({ value: value('length', '4.03 in').value, places: 2 });
    expect(value('length', '0,025 mm')).toMatchObject({ value: mm(0.025), places: 3 });
    expect(value('length', '1250,5 mm').value).toBe(mm(1250.5));
    expect(value('length', '1250,500 mm').places).toBe(3);
    expect(value('length', '1,2500 mm').value).toBe(mm(1.25));
    expect(fault('length', '12,500 mm')?.code).toBe('mark-question');
    expect(fault('length', '125,000 mm')?.code).toBe('mark-question');
  });

  it('is read everywhere once the project has fixed it, and then the point is asked about', () => {
    const comma = { decimalMark: ',' } as const;
    expect(value('length', '1,250 mm', comma)).toMatchObject({ value: mm(1.25), places: 3 });
    expect(fault('length', '1.250 mm', comma)).toMatchObject({
      code: 'mark-question',
      asDecimal: '1,250',
      asThousands: '1250',
    });
    expect(value('length', '1.25 mm', comma).value).toBe(mm(1.25));
    expect(window('length', '0,010..0,025 mm', comma)).toMatchObject({ low: mm(0.01), high: mm(0.025) });
    expect(fault('length', '1,250 mm', { decimalMark: '.' })?.code).toBe('mark-question');
  });
});
