/** Inputs that the shim entries share, and the words of their refusals. */
import { type Length, mm, type Outcome } from '../../../quantity/index.js';
import { type Conflict, conflict } from '../../catalogue/index.js';
import { THICKEST } from '../shim-sizes.js';
import type { ShimFault } from '../types.js';

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

const inMm = (length: Length) => Math.round(length * 1e6) / 1e3;

function because(fault: ShimFault): string {
  switch (fault.code) {
    case 'length-out-of-range':
      return `${fault.what} is out of range; ${inMm(fault.low)} to ${inMm(fault.high)} mm is valid`;
    case 'sizes-unusable':
      return {
        none: 'there are no sizes to choose from',
        step: 'the step must be above 0',
        ends: 'the thinnest must not be thicker than the thickest',
        'too-many': 'that makes more than 1000 sizes',
      }[fault.reason];
    case 'window-empty':
      return `${fault.what}: its lower end is above its upper end`;
    case 'beyond-sizes':
      return `${inMm(fault.ideal)} mm would be needed; sizes run from ${inMm(fault.thinnest)} to ${inMm(fault.thickest)} mm`;
    case 'place-repeated':
      return `${fault.place} is named twice`;
    case 'too-many-places':
      return `${fault.given} valves; up to ${fault.most} is valid`;
  }
}

/** Refusals of this subject in the words of the catalogue. */
export const shimConflict = (inputs: readonly string[], faults: readonly ShimFault[]): Outcome<never, Conflict> =>
  conflict(inputs, faults.map(because).join('; '));
