/** Uncertainty of a result by trying many inputs: the cross-check of the derivatives. */
import type { AnyValues, Calculation } from './calculation.js';
import { type Doubtful, numbersAt } from './compute.js';
import { fillNormals, type RandomState } from './random.js';

export interface Spread {
  readonly mean: number;
  readonly standard: number;
  /** Ends between which 95 % of the trials fell. */
  readonly low: number;
  readonly high: number;
}
export interface Trials {
  readonly spreads: ReadonlyMap<string, Spread>;
  readonly trials: number;
  /** Trials whose inputs the calculation refuses; they are in no spread. */
  readonly refused: number;
  readonly after: RandomState;
}

/**
 * Spread of each number of an answer over `trials` draws (2 or more); each doubtful input is drawn from a normal
 * distribution about its value, independent of the others. Pure: the random state is handed in and handed back.
 * Source: JCGM 101, propagation of distributions (from memory).
 */
export function monteCarlo(
  calc: Calculation,
  values: AnyValues,
  doubtful: readonly Doubtful[],
  trials: number,
  random: RandomState,
): Trials {
  const samples = new Map<string, number[]>();
  const normals = new Float64Array(doubtful.length);
  const drawn = doubtful.map(({ value }) => value);
  let state = random;
  let refused = 0;
  for (let trial = 0; trial < trials; trial += 1) {
    state = fillNormals(state, normals);
    for (let at = 0; at < drawn.length; at += 1) {
      drawn[at] = doubtful[at]!.value + normals[at]! * doubtful[at]!.standard;
    }
    const numbers = numbersAt(calc, values, doubtful, drawn);
    if (!numbers) refused += 1;
    for (const [output, number] of numbers ?? []) {
      const sample = samples.get(output);
      if (sample) sample.push(number);
      else samples.set(output, [number]);
    }
  }
  const usable = [...samples].filter(([, sample]) => sample.length > 1);
  return { spreads: new Map(usable.map(([name, sample]) => [name, spreadOf(sample)])), trials, refused, after: state };
}

function spreadOf(sample: readonly number[]): Spread {
  // Differences from the first one, so that draws that are all alike have no spread at all.
  const first = sample[0]!;
  const mean = first + sample.reduce((sum, one) => sum + (one - first), 0) / sample.length;
  const squares = sample.reduce((sum, one) => sum + (one - mean) ** 2, 0);
  const sorted = Float64Array.from(sample).sort();
  const at = (share: number) => sorted[Math.round(share * (sorted.length - 1))]!;
  return { mean, standard: Math.sqrt(squares / (sample.length - 1)), low: at(0.025), high: at(0.975) };
}
