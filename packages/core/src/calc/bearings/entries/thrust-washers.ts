import type { Length } from '../../../quantity/index.js';
import { answer, conflict, defineCalculation, reversedEnds, verdictOf } from '../../catalogue/index.js';
import { chooseWashers } from '../end-float.js';
import { clearance, clearanceOut, size, verdict } from './inputs.js';

export const thrustWashers = defineCalculation({
  id: 'bearings.thrust-washers',
  subject: 'bearings',
  title: 'Thrust washers that bring the end float right',
  summary: 'End float with each washer size that can be had, and the size nearest to what is wanted.',
  inputs: {
    float: { ...clearance, symbol: 'f', meaning: 'end float measured with the present washers' },
    present: { ...size, symbol: 't', meaning: 'thickness of each present washer' },
    count: {
      kind: 'count',
      symbol: 'n',
      meaning: 'thicknesses in the float that are exchanged together: 2 for one on each side, 1 for one side',
      range: { from: 1, to: 4 },
      default: 2,
    },
    sizes: { ...size, symbol: "t'", meaning: 'thicknesses that can be had', list: true },
    lowest: { ...clearance, symbol: 'f min', meaning: 'lowest end float accepted', optional: true },
    highest: { ...clearance, symbol: 'f max', meaning: 'highest end float accepted', optional: true },
    target: {
      ...clearance,
      symbol: 'f*',
      meaning: 'end float wanted; left out: the middle of lowest and highest',
      optional: true,
    },
  },
  outputs: {
    thickness: { ...clearanceOut, symbol: "t'", meaning: 'thickness to fit', places: 3 },
    float: { ...clearanceOut, symbol: "f'", meaning: 'end float with it', places: 3 },
    verdict,
  },
  formula: "f' = f − n·(t' − t), nearest to f*",
  assumptions: ['All washers of the shaft are exchanged for one size, on both sides where n is 2.'],
  sources: ['end-float', 'derived-here'],
  example: {
    inputs: { float: '0.26 mm', present: '2.455 mm', sizes: ['2.455 mm', '2.485 mm'], target: '0.20 mm' },
    outputs: { thickness: '2.485 mm', float: '0.20 mm', verdict: 'no data' },
    from: 'reference row O-45: 0.03 mm thicker on each side',
  },
  compute: (v) => {
    const reversed = reversedEnds(v, ['lowest', 'highest']);
    if (reversed) return reversed;
    const { lowest: low, highest: high } = v;
    const middle = low === undefined || high === undefined ? undefined : (((low + high) / 2) as Length);
    const target = v.target ?? middle;
    if (target === undefined) {
      return conflict(['target', 'lowest', 'highest'], 'target is needed, or lowest and highest together');
    }
    const choice = chooseWashers(v.float, v.present, v.count, v.sizes, target);
    if (!choice) return conflict(['float', 'present', 'sizes'], 'the shaft would bind with every size in the list');
    return answer({ ...choice, verdict: verdictOf(choice.float, low, high) });
  },
});
