/**
 * Branded quantities from plain numbers in a named unit. The angle, torque and other sizes are those of the unit table.
 */
import type { QuantityKind, QuantityOf } from './kinds.js';
import { numberToSi, unitOrThrow } from './units.js';

/** The unit is looked up once, so that a constructor costs a product inside a loop. */
function of<K extends QuantityKind>(kind: K, name: string) {
  const unit = unitOrThrow(kind, name);
  return (n: number) => numberToSi(unit, n) as QuantityOf<K>;
}

export const metres = of('length', 'm');
export const mm = of('length', 'mm');
export const cm = of('length', 'cm');
export const micrometres = of('length', 'µm');
export const inch = of('length', 'in');
export const thou = of('length', 'thou');
export const feet = of('length', 'ft');

export const squareMetres = of('area', 'm2');
export const squareMillimetres = of('area', 'mm2');
export const squareInches = of('area', 'in2');

export const cubicMetres = of('volume', 'm3');
export const cubicCentimetres = of('volume', 'cm3');
export const cubicInches = of('volume', 'in3');
export const litres = of('volume', 'L');

export const radians = of('angle', 'rad');
export const degrees = of('angle', 'deg');
export const turns = of('angle', 'turn');

export const newtonMetres = of('torque', 'N·m');
export const poundFeet = of('torque', 'lbf·ft');
export const poundInches = of('torque', 'lbf·in');
export const kilogramForceMetres = of('torque', 'kgf·m');

export const newtons = of('force', 'N');
export const kilonewtons = of('force', 'kN');
export const poundsForce = of('force', 'lbf');
export const kilogramsForce = of('force', 'kgf');

export const pascals = of('pressure', 'Pa');
export const kilopascals = of('pressure', 'kPa');
export const megapascals = of('pressure', 'MPa');
export const bar = of('pressure', 'bar');
export const psi = of('pressure', 'psi');

export const newtonsPerMetre = of('stiffness', 'N/m');
export const newtonsPerMillimetre = of('stiffness', 'N/mm');
export const poundsPerInch = of('stiffness', 'lbf/in');

export const kilograms = of('mass', 'kg');
export const grams = of('mass', 'g');
export const pounds = of('mass', 'lb');
export const ounces = of('mass', 'oz');

export const seconds = of('time', 's');
export const minutes = of('time', 'min');
export const hours = of('time', 'h');

export const kelvin = of('temperature', 'K');
export const celsius = of('temperature', '°C');
export const fahrenheit = of('temperature', '°F');
export const kelvinDifference = of('temperature-difference', 'K');

export const metresPerSecond = of('speed', 'm/s');
export const feetPerMinute = of('speed', 'ft/min');
export const metresPerSecondSquared = of('acceleration', 'm/s2');

export const radiansPerSecond = of('angular-speed', 'rad/s');
export const rpm = of('angular-speed', 'rpm');
export const hertz = of('frequency', 'Hz');
export const kilogramsPerCubicMetre = of('density', 'kg/m3');

export const ratio = of('ratio', '');
export const percent = of('ratio', '%');
