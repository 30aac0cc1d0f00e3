/** Inputs and outputs that several entries of this subject share. */
import { celsius, kelvinDifference, type Length, megapascals, mm } from '../../../quantity/index.js';
import { readToleranceClass } from '../iso-class.js';

export const size = { kind: 'length', unit: 'mm', range: { above: 0, to: mm(2000) } } as const;
export const nominal = {
  kind: 'length',
  symbol: 'D',
  meaning: 'nominal size',
  unit: 'mm',
  range: { above: 0, to: mm(500) },
} as const;
export const toleranceClass = {
  kind: 'text',
  expected: 'a tolerance class such as "H7" (hole) or "p6" (shaft), letters c to h, js, k, m, n, p, r, s, t, u, x',
  read: readToleranceClass,
} as const;

const MICROMETRE = 1e-6;
export const microns = (n: number): Length => (n * MICROMETRE) as Length;

export const micronsOut = { kind: 'length', unit: 'µm', places: 1 } as const;
export const stress = { kind: 'pressure', unit: 'MPa', places: 1 } as const;

const modulus = { kind: 'pressure', unit: 'GPa', range: { above: 0, to: megapascals(1e6) } } as const;
const poisson = { kind: 'ratio', unit: '', range: { from: 0, to: 0.5 } } as const;

/** The two rings of a press fit. */
export const rings = {
  diameter: { ...size, symbol: 'd', meaning: 'diameter where they meet' },
  hubOutside: { ...size, symbol: 'Do', meaning: 'outside diameter of the outer part (hub)' },
  shaftBore: {
    kind: 'length',
    symbol: 'Di',
    meaning: 'bore of the inner part (shaft, ring, guide); 0: solid',
    unit: 'mm',
    range: { from: 0, to: mm(2000) },
    default: 0,
  },
  hubModulus: { ...modulus, symbol: 'Eh', meaning: 'Young’s modulus of the hub' },
  hubPoisson: { ...poisson, symbol: 'νh', meaning: 'Poisson’s ratio of the hub', default: 0.3 },
  shaftModulus: {
    ...modulus,
    symbol: 'Es',
    meaning: 'Young’s modulus of the shaft; left out: as the hub',
    optional: true,
  },
  shaftPoisson: {
    ...poisson,
    symbol: 'νs',
    meaning: 'Poisson’s ratio of the shaft; left out: as the hub',
    optional: true,
  },
} as const;

export const interference = {
  kind: 'length',
  symbol: 'δ',
  meaning: 'interference on the diameter: shaft less hole, before pressing',
  unit: 'mm',
  range: { above: 0, to: mm(50) },
} as const;
export const fitLength = { ...size, symbol: 'L', meaning: 'length of the fit' } as const;
export const friction = {
  kind: 'ratio',
  symbol: 'μ',
  meaning: 'friction between the two',
  unit: '',
  range: { above: 0, to: 2 },
} as const;

export const expansion = { kind: 'thermal-expansion', unit: 'ppm/K', range: { from: 0, to: 1e-4 } } as const;
export const temperature = {
  kind: 'temperature',
  unit: '°C',
  range: { from: celsius(-273), to: celsius(1000) },
} as const;
export const rise = {
  kind: 'temperature-difference',
  unit: 'K',
  range: { from: kelvinDifference(-300), to: kelvinDifference(1000) },
} as const;
