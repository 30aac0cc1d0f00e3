import type { Length, Pressure } from '../../quantity/index.js';

export interface Strength {
  readonly name: string;
  /** Nominal diameter from (exclusive) and to (inclusive). */
  readonly over: Length;
  readonly upTo: Length;
  readonly proof: Pressure;
  readonly yield: Pressure;
  readonly tensile: Pressure;
  readonly source: 'iso-898-1' | 'sae-j429';
}

const MPA = 1e6;
const MILLIMETRE = 0.001;
const INCH = 0.0254;
/** 1 lbf = 0.45359237 kg × 9.80665 m/s², over one square inch, times a thousand. */
const KSI = (1000 * 0.45359237 * 9.80665) / INCH ** 2;

type Row = readonly [name: string, over: number, upTo: number, proof: number, yielding: number, tensile: number];

/** Diameters in mm, stresses in MPa. */
const metric: readonly Row[] = [
  ['8.8', 0, 16, 580, 640, 800],
  ['8.8', 16, 39, 600, 660, 830],
  ['10.9', 0, 39, 830, 940, 1040],
  ['12.9', 0, 39, 970, 1100, 1220],
];
/** Diameters in inches, stresses in ksi. Grade 2 has no proof stress of 55 ksi above 3/4 in. */
const inch: readonly Row[] = [
  ['grade 2', 0, 0.75, 55, 57, 74],
  ['grade 5', 0, 1, 85, 92, 120],
  ['grade 5', 1, 1.5, 74, 81, 105],
  ['grade 8', 0, 1.5, 120, 130, 150],
];

const rowsOf = (rows: readonly Row[], size: number, stress: number, source: Strength['source']): readonly Strength[] =>
  rows.map(([name, over, upTo, proof, yielding, tensile]) => ({
    name,
    over: (over * size) as Length,
    upTo: (upTo * size) as Length,
    proof: (proof * stress) as Pressure,
    yield: (yielding * stress) as Pressure,
    tensile: (tensile * stress) as Pressure,
    source,
  }));

/** Minimum properties by class. Source: ISO 898-1 and SAE J429 as read in copies. */
export const strengthTable: readonly Strength[] = [
  ...rowsOf(metric, MILLIMETRE, MPA, 'iso-898-1'),
  ...rowsOf(inch, INCH, KSI, 'sae-j429'),
];
