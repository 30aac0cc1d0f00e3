/** Inputs that the entries on springs and moving masses share. */
import {
  kilograms,
  kilogramsPerCubicMetre,
  megapascals,
  mm,
  newtons,
  newtonsPerMillimetre,
} from '../../../quantity/index.js';

export const height = { kind: 'length', unit: 'mm', range: { above: 0, to: mm(1000) } } as const;
export const load = { kind: 'force', unit: 'N', range: { from: 0, to: newtons(100_000) } } as const;
export const rateInput = {
  kind: 'stiffness',
  symbol: 'k',
  meaning: 'rate of the spring (of all springs of the valve together)',
  unit: 'N/mm',
  range: { above: 0, to: newtonsPerMillimetre(10_000) },
} as const;
export const mass = { kind: 'mass', unit: 'g', range: { from: 0, to: kilograms(100) } } as const;

export const shownForce = { kind: 'force', unit: 'N', places: 1 } as const;
export const shownLength = { kind: 'length', unit: 'mm', places: 3 } as const;
/** Steel of ordinary valve springs by default. */
export const wireMaterial = {
  shearModulus: {
    kind: 'pressure',
    symbol: 'G',
    meaning: 'shear modulus of the wire',
    unit: 'GPa',
    range: { above: 0, to: megapascals(500_000) },
    default: megapascals(79_300),
  },
  density: {
    kind: 'density',
    symbol: 'ρ',
    meaning: 'density of the wire',
    unit: 'kg/m3',
    range: { above: 0, to: kilogramsPerCubicMetre(25_000) },
    default: kilogramsPerCubicMetre(7850),
  },
} as const;
