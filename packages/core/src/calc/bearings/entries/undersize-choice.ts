import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { smallestUndersize } from '../undersize.js';
import { clearance, clearanceOut, size } from './inputs.js';

export const undersizeChoice = defineCalculation({
  id: 'bearings.undersize-choice',
  subject: 'bearings',
  title: 'Undersize to which a group of journals is ground',
  summary: 'Smallest undersize in the list at which the worst journal of the group cleans up.',
  inputs: {
    standard: { ...size, symbol: 'D0', meaning: 'finished size of the standard journal' },
    worn: { ...size, symbol: 'd', meaning: 'smallest diameter measured on each journal of the group', list: true },
    allowance: {
      ...clearance,
      symbol: 'a',
      meaning: 'what grinding must take off the diameter at the worst place, scores and bend included',
      default: 0,
    },
    undersizes: { ...clearance, symbol: 'u', meaning: 'undersizes for which shells can be had', list: true },
  },
  outputs: {
    undersize: { ...clearanceOut, symbol: 'u', meaning: 'undersize for the whole group', places: 3 },
    finished: { ...clearanceOut, symbol: 'D0 − u', meaning: 'finished size' },
    spare: { ...clearanceOut, symbol: 's', meaning: 'what the worst journal has to spare' },
    worst: { kind: 'count', symbol: 'worst', meaning: 'which journal of the list decides, counted from 1' },
  },
  formula: 'smallest u with D0 − u ≤ min d − a; s = min d − a − (D0 − u)',
  assumptions: [
    'All journals of a group go to one size. The crank maker’s regrind limit and hardening depth outrank the list.',
    'Grinding stays concentric: wear on one side and a bent crank belong into the allowance.',
  ],
  sources: ['shop-practice', 'derived-here'],
  example: {
    inputs: {
      standard: '2.4490 in',
      worn: ['2.4481 in', '2.4476 in', '2.4484 in'],
      allowance: '0.0020 in',
      undersizes: ['0.010 in', '0.020 in', '0.030 in'],
    },
    outputs: { undersize: '0.010 in', finished: '2.4390 in', spare: '0.0066 in', worst: 2 },
    from: 'hand arithmetic',
  },
  compute: (v) => {
    const choice = smallestUndersize(v.standard, v.worn, v.allowance, v.undersizes);
    if (!choice) {
      return conflict(
        ['standard', 'worn', 'allowance', 'undersizes'],
        'no undersize in the list cleans up every journal',
      );
    }
    return answer({ ...choice, worst: v.worn.indexOf(v.worn.toSorted((a, b) => a - b)[0]!) + 1 });
  },
});
