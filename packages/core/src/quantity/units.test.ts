import { describe, expect, it } from 'vitest';
import {
  cubicInches,
  degrees,
  fahrenheit,
  findUnit,
  fromUnit,
  inch,
  kindsOfUnit,
  mm,
  poundFeet,
  QUANTITY_KINDS,
  type QuantityKind,
  rpm,
  thou,
  toQuantityKind,
  toUnit,
  turns,
  unitsOf,
} from './index.js';
import { UNIT_ROWS } from './unit-table.js';

describe('sizes of units', () => {
  // NIST SP 811 (2008), Appendix B.8, values from memory, to the digits printed there.
  it.each<[QuantityKind, string, number, number]>([
    ['length', 'in', 0.0254, 0],
    ['length', 'ft', 0.3048, 0],
    ['length', 'mil', 2.54e-5, 0],
    ['area', 'in2', 6.4516e-4, 0],
    ['volume', 'in3', 1.6387064e-5, 0],
    ['volume', 'US qt', 9.463529e-4, 5e-11],
    ['volume', 'US gal', 3.785412e-3, 5e-10],
    ['mass', 'lb', 0.45359237, 0],
    ['mass', 'oz', 2.834952e-2, 5e-9],
    ['force', 'lbf', 4.448222, 5e-7],
    ['force', 'ozf', 0.2780139, 5e-8],
    ['force', 'kgf', 9.80665, 0],
    ['torque', 'lbf·ft', 1.355818, 5e-7],
    ['torque', 'lbf·in', 0.1129848, 5e-8],
    ['torque', 'kgf·m', 9.80665, 0],
    ['pressure', 'psi', 6894.757, 5e-4],
    ['pressure', 'kgf/cm2', 98066.5, 0],
    ['pressure', 'bar', 1e5, 0],
    ['pressure', 'mmHg', 133.3224, 5e-5],
    ['pressure', 'inHg', 3386.389, 5e-4],
    ['stiffness', 'lbf/in', 175.1268, 5e-5],
    ['density', 'lb/in3', 27679.9, 5e-2],
    ['density', 'g/cm3', 1000, 0],
    ['speed', 'ft/min', 5.08e-3, 0],
    ['speed', 'mph', 0.44704, 0],
    ['speed', 'km/h', 0.2777778, 5e-8],
    ['acceleration', 'g', 9.80665, 0],
    ['angular-speed', 'rpm', 0.1047198, 5e-8],
    ['angle', 'deg', 1.745329e-2, 5e-9],
    ['angle', 'turn', 6.283185, 5e-7],
    ['temperature-difference', '°F', 0.5555556, 5e-8],
    ['time', 'h', 3600, 0],
    ['ratio', '%', 0.01, 0],
  ])('%s: 1 %s is %d in SI', (kind, unit, expected, printed) => {
    expect(Math.abs(fromUnit(kind, 1, unit) - expected)).toBeLessThanOrEqual(Math.max(printed, expected * 4e-16));
  });

  // Reference: fasteners-open O-18, derived from exact definitions, tolerance 0.01.
  it('keeps the three torques of O-18 apart', () => {
    expect(fromUnit('torque', 65, 'lbf.ft')).toBeCloseTo(88.13, 2);
    expect(fromUnit('torque', 6.5, 'kgf.m')).toBeCloseTo(63.74, 2);
    expect(toUnit('torque', fromUnit('torque', 6.5, 'kgf.m'), 'lbf.ft')).toBeCloseTo(47.01, 2);
    expect(fromUnit('torque', 45, 'kgf.cm')).toBeCloseTo(4.413, 2);
    expect(toUnit('torque', poundFeet(1), 'lbf·in')).toBeCloseTo(12, 12);
  });

  // Reference: mechanism-open MO-12 (12.8704 read, tolerance 0.0003; 16.387064 exact by definition).
  it('makes 12.8704 cc of each cubic inch of bore squared times stroke', () => {
    expect(toUnit('volume', cubicInches(1), 'cc')).toBeCloseTo(16.387064, 12);
    expect(Math.abs((Math.PI / 4) * toUnit('volume', cubicInches(1), 'cc') - 12.8704)).toBeLessThan(0.0003);
  });

  // Fixed points of the scales, common knowledge.
  it('puts the fixed points of the temperature scales where they belong', () => {
    expect(fahrenheit(32)).toBeCloseTo(273.15, 10);
    expect(toUnit('temperature', fahrenheit(212), '°C')).toBeCloseTo(100, 10);
    expect(toUnit('temperature', fahrenheit(-40), '°C')).toBeCloseTo(-40, 10);
    expect(fromUnit('temperature-difference', 9, '°F')).toBeCloseTo(5, 12);
  });

  it('gives the constructors the sizes of the table', () => {
    expect(inch(1)).toBe(0.0254);
    expect(thou(1000)).toBeCloseTo(inch(1), 15);
    expect(mm(25.4)).toBeCloseTo(inch(1), 15);
    expect(turns(1)).toBeCloseTo(degrees(360), 14);
    expect(rpm(60)).toBeCloseTo(2 * Math.PI, 14);
  });

  it('knows the units of heat, oil and stretch by their definitions', () => {
    // Worked out from the inch, the pound and standard gravity; 745.7 W a horsepower as NIST SP 811 prints it.
    expect(fromUnit('power', 1, 'hp')).toBeCloseTo(745.69987158227, 10);
    expect(fromUnit('power', 1, 'PS')).toBe(735.49875);
    expect(fromUnit('viscosity', 1, 'reyn')).toBeCloseTo(6894.7572931684, 9);
    expect(fromUnit('viscosity', 1, 'µreyn')).toBeCloseTo(0.0068947572931684, 15);
    expect(fromUnit('viscosity', 1, 'cP')).toBe(0.001);
    expect(fromUnit('thermal-expansion', 10, 'ppm/°F')).toBeCloseTo(18e-6, 18);
    expect(fromUnit('thermal-expansion', 11.7, 'µm/(m·K)')).toBeCloseTo(11.7e-6, 18);
    expect(fromUnit('compliance', 1, 'µin/lbf')).toBeCloseTo(1e-6 / 175.12683524647, 18);
    expect(fromUnit('volume-flow', 1, 'in3/s')).toBe(0.000016387064);
  });

  it('knows the units of a balancing machine by their definitions', () => {
    // 0.45359237/16 kg times 0.0254 m; balancing tables round it to 720 g·mm (from memory).
    expect(toUnit('mass-moment', fromUnit('mass-moment', 1, 'oz·in'), 'g·mm')).toBeCloseTo(720.07788, 4);
    expect(fromUnit('mass-moment', 1, 'g·cm')).toBeCloseTo(fromUnit('mass-moment', 10, 'g·mm'), 18);
    expect(fromUnit('mass-moment', 1, 'g·in')).toBeCloseTo(25.4e-6, 18);
  });

  it('undoes every conversion', () => {
    for (const kind of QUANTITY_KINDS) {
      for (const unit of unitsOf(kind)) {
        for (const number of [-12.5, 0, 1, 4.03]) {
          expect(toUnit(kind, fromUnit(kind, number, unit.name), unit.name), unit.name).toBeCloseTo(number, 9);
        }
      }
    }
  });
});

describe('spellings of units', () => {
  it.each<[QuantityKind, string, readonly string[]]>([
    ['torque', 'N·m', ['N.m', 'Nm', 'N-m', 'N m', 'n·m', 'NM', 'N*m', 'N⋅m', 'N • m']],
    [
      'torque',
      'lbf·ft',
      ['  lb-ft ', 'ft  lb', 'ft - lb', 'ft-lb', 'lbf-ft', 'ft lb', 'ft·lbf', 'FT-LBS', 'lb.ft', 'lb ft'],
    ],
    ['torque', 'lbf·in', ['lb-in', 'in-lb', 'in·lbf', 'in lbs', 'lb.in']],
    ['torque', 'kgf·m', ['kg-m', 'kgf-m', 'kgf.m', 'kg·m', 'm·kg']],
    ['length', 'µm', ['um', 'μm', 'µm', 'micron', 'UM']],
    ['length', 'in', ['"', '″', 'IN', 'inch', 'inches']],
    ['volume', 'cm3', ['cc', 'cm³', 'cm^3', 'CC']],
    ['volume', 'mL', ['ml', 'ML']],
    ['angle', 'deg', ['°', 'º', 'degrees', 'Deg']],
    ['angle', 'turn', ['turns', 'rev', 'revs']],
    ['pressure', 'MPa', ['N/mm2', 'N/mm²', 'mpa']],
    ['temperature', '°C', ['C', 'degC', 'deg C', '˚C']],
    ['angular-speed', 'rpm', ['r/min', 'RPM', '1/min']],
    ['force', 'lbf', ['lb', 'lbs']],
    ['thermal-expansion', 'ppm/K', ['µm/m/K', 'um/m/K', 'ppm/°C', '1e-6/K', 'µm/(m·K)']],
    ['thermal-expansion', '1/°F', ['in/in/°F', 'in/in/F']],
    ['mass-moment', 'oz·in', ['oz-in', 'oz in', 'in-oz', 'oz.in']],
    ['mass-moment', 'g·mm', ['g mm', 'gmm', 'g-mm']],
    ['ratio', '', ['']],
  ])('%s in %s is also written %j', (kind, name, words) => {
    for (const word of words) expect(findUnit(kind, word)?.name, word).toBe(name);
  });

  it('never reads one spelling as two units of a kind', () => {
    const fold = (word: string) => word.toLowerCase().replace(/[·.*-]/g, '·');
    for (const kind of QUANTITY_KINDS) {
      const owner = new Map<string, string>();
      for (const [name, , , also = '', more] of UNIT_ROWS[kind]) {
        for (const word of [name, more?.plural ?? name, ...also.split('|').filter(Boolean)].map(fold)) {
          expect(owner.get(word) ?? name, `${kind}: ${word}`).toBe(name);
          owner.set(word, name);
        }
      }
    }
  });

  it('reads g as a gram of mass and as standard gravity of acceleration', () => {
    expect(fromUnit('mass', 1, 'g')).toBe(0.001);
    expect(fromUnit('acceleration', 1, 'g')).toBe(9.80665);
    expect(kindsOfUnit('g')).toEqual(['mass', 'acceleration']);
  });

  it('knows no unit that is not in the table, and a conversion to it is a defect', () => {
    expect(findUnit('length', 'furlong')).toBeUndefined();
    expect(findUnit('length', 'constructor')).toBeUndefined();
    expect(() => fromUnit('length', 1, 'N')).toThrow(RangeError);
    expect(() => toUnit('length', 1, '')).toThrow('"" is no unit of length');
  });
});

describe('kinds of quantity', () => {
  it('are recognised by their exact name only', () => {
    for (const kind of QUANTITY_KINDS) expect(toQuantityKind(kind)).toBe(kind);
    for (const other of ['Length', '', 'toString', undefined, 3]) expect(toQuantityKind(other)).toBeUndefined();
  });

  it('all have units, and each is listed once', () => {
    expect(new Set(QUANTITY_KINDS).size).toBe(24);
    expect(Object.keys(UNIT_ROWS)).toEqual([...QUANTITY_KINDS]);
  });
});
