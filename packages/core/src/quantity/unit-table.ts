import type { QuantityKind } from './kinds.js';

/** `both` marks units that inch shops and metric shops share (degrees, seconds, rpm). */
export type UnitSystem = 'inch' | 'metric' | 'both';

/**
 * `size` is the unit in SI as products of exact decimal texts, with at most one `/`, so that a typed value can be
 * converted with a single rounding. `also` lists other spellings that are read, parted by `|`; letter case, multiplication
 * signs and superscripts are settled before the look-up. `plural` is printed when the magnitude is above one; `zero`
 * is the SI value at 0 on the unit's scale.
 */
export type UnitRow = readonly [
  name: string,
  size: string,
  system: UnitSystem,
  also?: string,
  more?: { readonly plural?: string; readonly zero?: string },
];

const POUND_FORCE = '4.4482216152605'; // 0.45359237 kg x 9.80665 m/s2, both exact by definition
const POUND = '0.45359237';
const PI = '3.14159265358979323846264338327950288';

/**
 * Sizes: inch 25.4 mm, pound 0.45359237 kg, standard gravity 9.80665 m/s2, US gallon 231 in3 are exact by definition.
 * Source: NIST SP 811 (2008), Appendix B, from memory; recomputed from the base definitions.
 */
export const UNIT_ROWS: Readonly<Record<QuantityKind, readonly UnitRow[]>> = {
  length: [
    ['mm', '1/1000', 'metric'],
    ['in', '0.0254', 'inch', 'inch|inches|"|″'],
    ['thou', '0.0254/1000', 'inch', 'mil|mils'],
    ['µm', '1/1000000', 'metric', 'micron|microns'],
    ['cm', '1/100', 'metric'],
    ['m', '1', 'metric'],
    ['ft', '0.3048', 'inch', 'foot|feet'],
  ],
  area: [
    ['mm2', '1/1000000', 'metric', 'sq mm'],
    ['in2', '0.00064516', 'inch', 'sq in'],
    ['cm2', '1/10000', 'metric', 'sq cm'],
    ['m2', '1', 'metric'],
  ],
  volume: [
    ['cm3', '1/1000000', 'metric', 'cc|ccm'],
    ['in3', '0.000016387064', 'inch', 'cu in|cuin'],
    ['mL', '1/1000000', 'metric'],
    ['L', '1/1000', 'metric', 'l|litre|litres|liter|liters|dm3'],
    ['mm3', '1/1000000000', 'metric'],
    ['m3', '1', 'metric'],
    ['US qt', '0.000946352946', 'inch'],
    ['US gal', '0.003785411784', 'inch'],
  ],
  angle: [
    ['deg', `${PI}/180`, 'both', '°|degree|degrees'],
    ['turn', `${PI}/0.5`, 'both', 'rev|revs|rotation|rotations', { plural: 'turns' }],
    ['rad', '1', 'both'],
  ],
  torque: [
    ['N·m', '1', 'metric', 'Nm'],
    ['lbf·ft', `${POUND_FORCE}*0.3048`, 'inch', 'lb·ft|ft·lb|ft·lbf|ft·lbs|lbs·ft'],
    ['lbf·in', `${POUND_FORCE}*0.0254`, 'inch', 'lb·in|in·lb|in·lbf|in·lbs|lbs·in'],
    ['kgf·m', '9.80665', 'metric', 'kg·m|kgm|m·kg|m·kgf'],
    ['kgf·cm', '0.0980665', 'metric', 'kg·cm|cm·kg'],
    ['N·cm', '1/100', 'metric', 'Ncm'],
  ],
  force: [
    ['N', '1', 'metric'],
    ['kN', '1000', 'metric'],
    ['lbf', POUND_FORCE, 'inch', 'lb|lbs'],
    ['kgf', '9.80665', 'metric', 'kg|kp'],
    ['ozf', `${POUND_FORCE}/16`, 'inch', 'oz'],
  ],
  pressure: [
    ['MPa', '1000000', 'metric', 'N/mm2'],
    ['psi', `${POUND_FORCE}/0.00064516`, 'inch', 'lbf/in2|lb/in2|lb/sq in'],
    ['kPa', '1000', 'metric'],
    ['bar', '100000', 'metric'],
    ['Pa', '1', 'metric'],
    ['GPa', '1000000000', 'metric'],
    ['kgf/cm2', '98066.5', 'metric', 'kg/cm2'],
    ['mmHg', '133.322387415', 'metric'],
    ['inHg', '133.322387415*25.4', 'inch'],
  ],
  stiffness: [
    ['N/mm', '1000', 'metric'],
    ['lbf/in', `${POUND_FORCE}/0.0254`, 'inch', 'lb/in|lbs/in'],
    ['N/m', '1', 'metric'],
    ['kgf/mm', '9806.65', 'metric', 'kg/mm'],
  ],
  mass: [
    ['g', '1/1000', 'metric', 'gram|grams'],
    ['kg', '1', 'metric'],
    ['lb', POUND, 'inch', 'lbs'],
    ['oz', `${POUND}/16`, 'inch'],
  ],
  time: [
    ['s', '1', 'both', 'sec|second|seconds'],
    ['min', '60', 'both', 'minute|minutes'],
    ['h', '3600', 'both', 'hr|hour|hours'],
    ['ms', '1/1000', 'both'],
  ],
  temperature: [
    ['°C', '1', 'metric', 'C|degC|deg C|Celsius', { zero: '273.15' }],
    ['°F', '5/9', 'inch', 'F|degF|deg F|Fahrenheit', { zero: '2298.35/9' }],
    ['K', '1', 'metric'],
  ],
  'temperature-difference': [
    ['K', '1', 'metric', '°C|C|degC|deg C'],
    ['°F', '5/9', 'inch', 'F|degF|deg F'],
  ],
  speed: [
    ['m/s', '1', 'metric'],
    ['ft/min', '0.3048/60', 'inch', 'fpm'],
    ['ft/s', '0.3048', 'inch'],
    ['mm/s', '1/1000', 'metric'],
    ['km/h', '1/3.6', 'metric'],
    ['mph', '0.44704', 'inch'],
  ],
  acceleration: [
    ['m/s2', '1', 'metric'],
    ['ft/s2', '0.3048', 'inch'],
    ['g', '9.80665', 'both'],
    ['in/s2', '0.0254', 'inch'],
  ],
  'angular-speed': [
    ['rpm', `${PI}/30`, 'both', 'r/min|rev/min|1/min'],
    ['rad/s', '1', 'both'],
    ['deg/s', `${PI}/180`, 'both', '°/s'],
  ],
  frequency: [
    ['Hz', '1', 'both', '1/s'],
    ['kHz', '1000', 'both'],
  ],
  density: [
    ['kg/m3', '1', 'metric'],
    ['g/cm3', '1000', 'metric', 'g/cc|g/mL'],
    ['lb/in3', `${POUND}/0.000016387064`, 'inch'],
  ],
  'thermal-expansion': [
    [
      'ppm/K',
      '1/1000000',
      'metric',
      'ppm/°C|ppm/C|µm/(m·K)|µm/m·K|µm/m/K|µm/(m·°C)|µm/m/°C|1e-6/K|10-6/K|10^-6/K|e-6/K',
    ],
    ['ppm/°F', '9/5000000', 'inch', 'ppm/F|µin/(in·°F)|µin/in·°F'],
    ['1/K', '1', 'metric', 'm/m/K|/K|1/°C|1/C|/°C|K^-1'],
    ['1/°F', '9/5', 'inch', '1/F|/°F|in/in/°F|in/in/F|in/(in·°F)'],
  ],
  viscosity: [
    ['mPa·s', '1/1000', 'metric', 'cP'],
    ['µreyn', `${POUND_FORCE}/0.00064516*1000000`, 'inch', 'microreyn'],
    ['Pa·s', '1', 'metric', 'N·s/m2'],
    ['reyn', `${POUND_FORCE}/0.00064516`, 'inch', 'lbf·s/in2|psi·s'],
  ],
  compliance: [
    ['µm/kN', '1/1000000000', 'metric', 'nm/N'],
    ['µin/lbf', `0.0254/${POUND_FORCE}*1000000`, 'inch'],
    ['mm/N', '1/1000', 'metric'],
    ['in/lbf', `0.0254/${POUND_FORCE}`, 'inch'],
    ['m/N', '1', 'metric'],
  ],
  'volume-flow': [
    ['cm3/s', '1/1000000', 'metric', 'cc/s|mL/s'],
    ['in3/s', '0.000016387064', 'inch', 'cu in/s'],
    ['L/min', '1/60000', 'metric', 'l/min'],
    ['m3/s', '1', 'metric'],
    ['US gal/min', '0.003785411784/60', 'inch', 'gpm'],
  ],
  power: [
    ['kW', '1000', 'metric'],
    ['hp', `${POUND_FORCE}*0.3048*550`, 'inch'],
    ['W', '1', 'metric'],
    ['PS', '75*9.80665', 'metric'],
  ],
  'mass-moment': [
    ['g·mm', '1/1000000', 'metric', 'mm·g|gmm'],
    ['oz·in', `${POUND}*0.0254/16`, 'inch', 'in·oz|ozin'],
    ['g·cm', '1/100000', 'metric', 'cm·g|gcm'],
    ['g·in', '0.0254/1000', 'inch', 'in·g'],
    ['kg·m', '1', 'metric', 'm·kg'],
  ],
  ratio: [
    ['', '1', 'both'],
    [':1', '1', 'both'],
    ['%', '1/100', 'both', 'percent'],
  ],
};
