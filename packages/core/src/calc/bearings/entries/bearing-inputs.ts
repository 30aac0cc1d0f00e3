/** Inputs of the entries about the oil film, and the loaded bearing that they describe. */
import { kilonewtons, type Length, mm, rpm } from '../../../quantity/index.js';
import type { Values } from '../../catalogue/index.js';
import type { LoadedBearing } from '../film.js';
import { size } from './inputs.js';

export const lengthToDiameter = {
  kind: 'ratio',
  symbol: 'L/D',
  meaning: 'bearing length over diameter',
  unit: '',
  range: { above: 0, to: 10 },
} as const;

export const oilless = {
  load: { kind: 'force', symbol: 'W', meaning: 'steady load', unit: 'N', range: { above: 0, to: kilonewtons(10_000) } },
  diameter: { ...size, symbol: 'D', meaning: 'journal diameter (twice the radius R)' },
  length: { ...size, symbol: 'L', meaning: 'bearing length along the shaft' },
  clearance: { ...size, symbol: 'C', meaning: 'clearance', range: { above: 0, to: mm(20) } },
  clearanceIs: {
    kind: 'choice',
    symbol: 'of',
    meaning: 'whether the clearance is the diametral one of workshop manuals or the radial one of bearing theory',
    choices: ['diametral', 'radial'],
    default: 'diametral',
  },
  speed: {
    kind: 'angular-speed',
    symbol: 'N',
    meaning: 'shaft speed',
    unit: 'rpm',
    range: { above: 0, to: rpm(200_000) },
  },
} as const;

export const loaded = {
  ...oilless,
  viscosity: {
    kind: 'viscosity',
    symbol: 'μ',
    meaning: 'dynamic viscosity of the oil at the film’s temperature',
    unit: 'mPa·s',
    range: { above: 0, to: 100 },
  },
} as const;

/** Radial clearance, whichever was given. */
export const radialOf = (clearance: Length, is: 'diametral' | 'radial'): Length =>
  (is === 'radial' ? clearance : clearance / 2) as Length;

export function bearingOf(v: Values<typeof loaded>): LoadedBearing {
  const { load, diameter, length, speed, viscosity } = v;
  return { load, diameter, length, speed, viscosity, radialClearance: radialOf(v.clearance, v.clearanceIs) };
}
