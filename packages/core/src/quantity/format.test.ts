import { describe, expect, it } from 'vitest';
import {
  celsius,
  degrees,
  formatNumber,
  formatQuantity,
  formatWindow,
  inch,
  mm,
  newtonMetres,
  type QuantityKind,
  ratio,
  turns,
} from './index.js';

describe('printing a value', () => {
  it.each<[QuantityKind, number, string, number, string]>([
    ['length', inch(4.03), 'in', 3, '4.030 in'],
    ['length', inch(0.0025), 'in', 4, '0.0025 in'],
    ['length', mm(0.0635), 'mm', 3, '0.064 mm'],
    ['length', mm(-0.0635), 'mm', 3, '-0.064 mm'],
    ['length', mm(1.005), 'mm', 2, '1.01 mm'],
    ['length', mm(9.996), 'mm', 2, '10.00 mm'],
    ['length', mm(-0.0004), 'mm', 3, '0.000 mm'],
    ['length', -0, 'mm', 1, '0.0 mm'],
    ['length', mm(1234.5), 'um', 0, '1234500 µm'],
    ['torque', newtonMetres(84), 'Nm', 0, '84 N·m'],
    ['angle', degrees(90), '°', 0, '90 deg'],
    ['angle', turns(0.5), 'turn', 1, '0.5 turn'],
    ['angle', turns(1), 'turn', 0, '1 turn'],
    ['angle', turns(2), 'turn', 0, '2 turns'],
    ['temperature', celsius(20), '°F', 0, '68 °F'],
    ['ratio', ratio(1.52), '', 2, '1.52'],
    ['ratio', ratio(10.5), ':1', 1, '10.5:1'],
    ['ratio', ratio(0.5), '%', 0, '50 %'],
  ])('%s %d in %s with %d places is "%s"', (kind, value, unit, places, text) => {
    expect(formatQuantity(kind, value, unit, places)).toBe(text);
  });

  it('rounds halves away from zero as a person does, whatever the last binary digit says', () => {
    for (let half = 5; half < 1000; half += 10) {
      const [tens] = [(half + 5) / 10];
      expect(formatNumber(half / 1000, 2)).toBe((tens / 100).toFixed(2));
    }
  });

  it('has no exponent, however large or small', () => {
    expect(formatNumber(1e21, 0)).toBe('1000000000000000000000');
    expect(formatNumber(1e-9, 3)).toBe('0.000');
    expect(formatNumber(1.5, 30)).toBe('1.50000000000000000000');
    expect(formatNumber(1.5, -2)).toBe('2');
  });

  it('prints no data for a value that is none', () => {
    for (const value of [Number.NaN, Number.POSITIVE_INFINITY]) {
      expect(formatQuantity('length', value, 'mm', 2)).toBe('no data');
      expect(formatWindow('length', { low: value, high: 1 }, 'mm', 2)).toBe('no data');
      expect(formatWindow('length', { low: 0, high: value }, 'mm', 2)).toBe('no data');
    }
    expect(formatWindow('length', {}, 'mm', 2)).toBe('no data');
  });

  it('treats a unit of another kind as a defect of the caller', () => {
    expect(() => formatQuantity('length', 1, 'N', 2)).toThrow(RangeError);
  });
});

describe('printing a window', () => {
  it.each<[{ low?: number; high?: number }, string]>([
    [{ low: inch(0.001), high: inch(0.0025) }, '0.0010..0.0025 in'],
    [{ high: inch(0.0025) }, '<= 0.0025 in'],
    [{ low: inch(0.001) }, '>= 0.0010 in'],
    [{ low: inch(0.001), high: inch(0.001) }, '0.0010 in'],
    [{ low: inch(-0.001), high: inch(0.001) }, '-0.0010..0.0010 in'],
  ])('%j is "%s"', (window, text) => {
    expect(formatWindow('length', window, 'in', 4)).toBe(text);
  });

  it('takes the plural from its high end', () => {
    expect(formatWindow('angle', { low: turns(0.5), high: turns(1.5) }, 'turn', 1)).toBe('0.5..1.5 turns');
    expect(formatWindow('angle', { low: turns(0.5), high: turns(1) }, 'turn', 1)).toBe('0.5..1.0 turn');
    expect(formatWindow('ratio', { low: 9, high: 9.5 }, ':1', 1)).toBe('9.0..9.5:1');
  });
});
