import { answer, type Caution, defineCalculation } from '../../catalogue/index.js';
import { clearanceWithHalves } from '../undersize.js';
import { noClearance } from './faults.js';
import { clearance, clearanceOut } from './inputs.js';

const half = { ...clearance, default: 0 } as const;

/** One step of 0.001 in, with room for rounding. */
const WIDEST_MIX = 0.0000254 + 1e-9;
const tooWide: Caution = {
  code: 'wide-mix',
  text: 'the halves are more than one step of 0.001 in apart: makers refuse such a mix',
};

export const mixedHalves = defineCalculation({
  id: 'bearings.mixed-halves',
  subject: 'bearings',
  title: 'Oil clearance with one or two undersize halves',
  summary: 'What exchanging standard halves for undersize ones does to the clearance.',
  inputs: {
    clearance: { ...clearance, symbol: 'C', meaning: 'clearance with two standard halves' },
    upperUndersize: { ...half, symbol: 'uu', meaning: 'undersize mark of the upper half; 0: standard' },
    lowerUndersize: { ...half, symbol: 'ul', meaning: 'undersize mark of the lower half; 0: standard' },
  },
  outputs: {
    change: { ...clearanceOut, symbol: 'ΔC', meaning: 'change of clearance' },
    clearance: { ...clearanceOut, symbol: "C'", meaning: 'clearance with these halves' },
  },
  formula: "C' = C − (uu + ul)/2",
  assumptions: ['A half of undersize u is thicker by u/2. Mix neighbouring sizes only.'],
  sources: ['shop-practice', 'derived-here'],
  example: {
    inputs: { clearance: '0.0030 in', upperUndersize: '0.001 in' },
    outputs: { change: '-0.0005 in', clearance: '0.0025 in' },
    from: 'reference row O-14, common practice',
  },
  compute: (v) => {
    const found = clearanceWithHalves(v.clearance, v.upperUndersize, v.lowerUndersize);
    if (found <= 0) return noClearance(['clearance', 'upperUndersize', 'lowerUndersize']);
    const wide = Math.abs(v.upperUndersize - v.lowerUndersize) > WIDEST_MIX;
    return answer({ change: (found - v.clearance) as typeof found, clearance: found }, wide ? [tooWide] : []);
  },
});
