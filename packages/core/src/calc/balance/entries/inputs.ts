/** Inputs that several entries of this subject share. */
import { degrees, kilograms, mm, rpm } from '../../../quantity/index.js';

export const mass = (symbol: string, meaning: string) =>
  ({ kind: 'mass', symbol, meaning, unit: 'g', range: { above: 0, to: kilograms(10_000) } }) as const;
export const massOrNone = (symbol: string, meaning: string) =>
  ({ kind: 'mass', symbol, meaning, unit: 'g', range: { from: 0, to: kilograms(10_000) } }) as const;
export const size = (symbol: string, meaning: string) =>
  ({ kind: 'length', symbol, meaning, unit: 'mm', range: { above: 0, to: mm(10_000) } }) as const;
export const place = (symbol: string, meaning: string) =>
  ({ kind: 'length', symbol, meaning, unit: 'mm', range: { from: mm(-100_000), to: mm(100_000) } }) as const;
export const direction = (symbol: string, meaning: string) =>
  ({ kind: 'angle', symbol, meaning, unit: 'deg', range: { from: degrees(-720), to: degrees(720) } }) as const;
export const crankSpeed = {
  kind: 'angular-speed',
  symbol: 'n',
  meaning: 'crank speed',
  unit: 'rpm',
  range: { above: 0, to: rpm(30_000) },
} as const;
export const factor = {
  kind: 'ratio',
  symbol: 'f',
  meaning: 'balance factor: share of the reciprocating mass that the counterweights carry (50 % for a 90 deg vee)',
  unit: '%',
  range: { from: 0, to: 1 },
  default: 0.5,
} as const;

export const massOut = (symbol: string, meaning: string, places = 1) =>
  ({ kind: 'mass', symbol, meaning, unit: 'g', places }) as const;
export const forceOut = (symbol: string, meaning: string) =>
  ({ kind: 'force', symbol, meaning, unit: 'N', places: 1 }) as const;
export const coupleOut = (symbol: string, meaning: string) =>
  ({ kind: 'torque', symbol, meaning, unit: 'N·m', places: 2 }) as const;
export const angleOut = (symbol: string, meaning: string) =>
  ({ kind: 'angle', symbol, meaning, unit: 'deg', places: 2 }) as const;
