import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  displayUnit,
  inSystem,
  inUnit,
  matchingPlaces,
  parseQuantity,
  parseWindow,
  QUANTITY_KINDS,
  type QuantityKind,
  windowInSystem,
  windowInUnit,
} from './index.js';

function typed(kind: QuantityKind, text: string) {
  const read = parseQuantity(kind, text);
  if (!read.ok) throw new Error(read.fault.code);
  return read.value;
}
function typedWindow(kind: QuantityKind, text: string) {
  const read = parseWindow(kind, text);
  if (!read.ok) throw new Error(read.fault.code);
  return read.value;
}

describe('units of an inch shop and of a metric shop', () => {
  it('are the usual ones of the trade (common practice, no source)', () => {
    const table = QUANTITY_KINDS.map((kind) => `${kind} ${displayUnit(kind, 'metric')} ${displayUnit(kind, 'inch')}`);
    expect(table).toEqual([
      'length mm in',
      'area mm2 in2',
      'volume cm3 in3',
      'angle deg deg',
      'torque N·m lbf·ft',
      'force N lbf',
      'pressure MPa psi',
      'stiffness N/mm lbf/in',
      'mass g lb',
      'time s s',
      'temperature °C °F',
      'temperature-difference K °F',
      'speed m/s ft/min',
      'acceleration m/s2 ft/s2',
      'angular-speed rpm rpm',
      'frequency Hz Hz',
      'density kg/m3 lb/in3',
      'thermal-expansion ppm/K ppm/°F',
      'viscosity mPa·s µreyn',
      'compliance µm/kN µin/lbf',
      'volume-flow cm3/s in3/s',
      'power kW hp',
      'mass-moment g·mm oz·in',
      'ratio  ',
    ]);
  });
});

describe('resolution after a change of unit', () => {
  // The pairs that tables of tolerances print side by side (common practice); exact values by hand.
  it.each<[QuantityKind, string, string, string]>([
    ['length', '0.001 in', 'mm', '0.025 mm'],
    ['length', '0.0001 in', 'mm', '0.0025 mm'],
    ['length', '4.030 in', 'mm', '102.362 mm'],
    ['length', '0.01 mm', 'in', '0.0004 in'],
    ['length', '38.25 mm', 'in', '1.5059 in'],
    ['length', '0.001 mm', 'in', '0.00004 in'],
    ['length', '0.0015 in', 'thou', '1.5 thou'],
    ['length', '15 thou', 'in', '0.015 in'],
    ['length', '2.5 mm', 'µm', '2500 µm'],
    ['torque', '65 lbf·ft', 'N·m', '88.1 N·m'],
    ['torque', '84 N·m', 'lbf·ft', '62.0 lbf·ft'],
    ['temperature', '20 °C', '°F', '68.0 °F'],
    ['angle', '1/2 turn', 'deg', '180 deg'],
    ['pressure', '12.5 bar', 'kPa', '1250 kPa'],
  ])('%s %s in %s is %s', (kind, text, unit, shown) => {
    expect(inUnit(kind, typed(kind, text), unit)).toBe(shown);
  });

  it('loses no step of the typed figure and invents less than two digits', () => {
    const units = fc.constantFrom('in', 'mm', 'thou', 'µm', 'cm');
    fc.assert(
      fc.property(
        fc.integer({ min: -99_999, max: 99_999 }),
        fc.integer({ min: 0, max: 4 }),
        units,
        units,
        (digits, places, from, to) => {
          const one = typed('length', `${(digits / 10 ** places).toFixed(places)} ${from}`);
          const shown = inUnit('length', one, to);
          expect(inUnit('length', { ...typed('length', shown), unit: from, places }, from)).toBe(
            inUnit('length', one, from),
          );
          expect(matchingPlaces('length', places, from, from)).toBe(places);
        },
      ),
    );
  });

  it('is never negative: whole units at the coarsest', () => {
    expect(matchingPlaces('length', 0, 'm', 'µm')).toBe(0);
  });
});

describe('what a person sees who chose a system', () => {
  it('keeps a unit that belongs to the system, and changes the others', () => {
    expect(inSystem('length', typed('length', '15 thou'), 'inch')).toBe('15 thou');
    expect(inSystem('length', typed('length', '15 thou'), 'metric')).toBe('0.381 mm');
    expect(inSystem('torque', typed('torque', '84 Nm'), 'metric')).toBe('84 N·m');
    expect(inSystem('torque', typed('torque', '84 Nm'), 'inch')).toBe('62.0 lbf·ft');
    expect(inSystem('length', typed('length', '.0025 in'), 'inch')).toBe('0.0025 in');
    expect(windowInSystem('length', typedWindow('length', '0.0010..0.0025 in'), 'metric')).toBe('0.0254..0.0635 mm');
    expect(windowInSystem('length', typedWindow('length', '0.0010-0.0025 in'), 'inch')).toBe('0.0010..0.0025 in');
    expect(windowInUnit('torque', typedWindow('torque', '37-43 N·m'), 'lbf·ft')).toBe('27.3..31.7 lbf·ft');
  });

  it('keeps a fraction a fraction where nothing is converted', () => {
    expect(inSystem('angle', typed('angle', ' 1/2 turn'), 'inch')).toBe('1/2 turn');
    expect(inSystem('length', typed('length', '1½ in'), 'inch')).toBe('1½ in');
    expect(inSystem('length', typed('length', '3/8 in'), 'metric')).toBe('9.525 mm');
    expect(windowInSystem('angle', typedWindow('angle', ' 1/2-3/4 turn'), 'metric')).toBe('1/2-3/4 turn');
    expect(windowInSystem('length', typedWindow('length', '3/8..1/2 in'), 'metric')).toBe('9.525..12.700 mm');
    expect(inSystem('stiffness', typed('stiffness', '350 lb/in'), 'inch')).toBe('350 lbf/in');
  });
});
