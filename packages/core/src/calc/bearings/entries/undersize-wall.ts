import type { Length } from '../../../quantity/index.js';
import { answer, defineCalculation } from '../../catalogue/index.js';
import { undersizeWall as find } from '../undersize.js';
import { clearance, size } from './inputs.js';

const length = { kind: 'length', unit: 'mm', places: 4 } as const;

export const undersizeWall = defineCalculation({
  id: 'bearings.undersize-wall',
  subject: 'bearings',
  title: 'Wall of an undersize shell',
  summary: 'How much thicker each half is for a journal ground undersize, and whether a printed wall agrees with it.',
  inputs: {
    standardWall: { ...size, symbol: 't', meaning: 'wall of a standard half (middle of its range)' },
    undersize: { ...clearance, symbol: 'u', meaning: 'undersize of the journal, on its diameter' },
    undersizeWall: {
      ...size,
      symbol: 't u',
      meaning: 'wall printed or measured for the undersize half (middle of its range)',
      optional: true,
    },
  },
  outputs: {
    increase: { ...length, symbol: 'u/2', meaning: 'each half is thicker by' },
    wall: { ...length, symbol: 't + u/2', meaning: 'wall of an undersize half' },
    difference: { ...length, symbol: 't u − t', meaning: 'undersize wall given less the standard', optional: true },
    deviation: { ...length, symbol: 'Δ', meaning: 'wall given less the one expected', optional: true },
  },
  formula: 't u = t + u/2',
  assumptions: ['"Undersize" names the journal: 0.010 in undersize is 0.005 in of extra wall in each half.'],
  sources: ['undersize-walls', 'derived-here'],
  example: {
    inputs: { standardWall: '2.512 mm', undersize: '0.25 mm', undersizeWall: '2.637 mm' },
    outputs: { increase: '0.125 mm', wall: '2.637 mm', difference: '0.125 mm', deviation: '0.000 mm' },
    from: 'reference row O-14, middles of the printed ranges',
  },
  compute: (v) => {
    const wall = find(v.standardWall, v.undersize);
    const given = v.undersizeWall;
    return answer({
      increase: (v.undersize / 2) as Length,
      wall,
      difference: given === undefined ? undefined : ((given - v.standardWall) as Length),
      deviation: given === undefined ? undefined : ((given - wall) as Length),
    });
  },
});
