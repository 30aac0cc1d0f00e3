/** Inputs that the shim entries share, and the words of their refusals. */
import { mm, type Outcome } from '../../../quantity/index.js';
import { type Conflict, conflict } from '../../catalogue/index.js';
import { THICKEST } from '../shim-sizes.js';
import type { ShimFault } from '../types.js';
import { describeShimFault } from '../words.js';

export const clearance = (symbol: string, meaning: string) =>
  ({ kind: 'length', symbol, meaning, unit: 'mm', range: { from: mm(-20), to: THICKEST } }) as const;
export const thickness = (symbol: string, meaning: string) =>
  ({ kind: 'length', symbol, meaning, unit: 'mm', range: { above: mm(0), to: THICKEST } }) as const;

export const rounding = {
  kind: 'choice',
  symbol: 'rounding',
  meaning: 'which size stands for an ideal thickness that is not on the list',
  choices: ['nearest', 'next-thinner', 'next-thicker'],
  default: 'nearest',
} as const;

/** Refusals of this subject in the words of the catalogue. */
export const shimConflict = (inputs: readonly string[], faults: readonly ShimFault[]): Outcome<never, Conflict> =>
  conflict(inputs, faults.map(describeShimFault).join('; '));
