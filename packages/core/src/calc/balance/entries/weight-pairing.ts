import type { Mass } from '../../../quantity/index.js';
import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { pairOpposite } from '../matching.js';
import { mass, massOut } from './inputs.js';

export const weightPairing = defineCalculation({
  id: 'balance.weight-pairing',
  subject: 'balance',
  title: 'Pairing two sets of parts for equal weights',
  summary: 'Which pin (or rod) goes with which piston so that the sums lie closest, before any metal is taken off.',
  inputs: {
    first: { ...mass('a', 'masses of the first set, such as pistons'), list: true },
    second: { ...mass('b', 'masses of the second set, such as pins'), list: true },
  },
  outputs: {
    partner: {
      kind: 'count',
      symbol: 'j',
      meaning: 'part of the second set, by its place from 1, for each of the first',
      list: true,
    },
    sums: { ...massOut('a + b', 'mass of each pair', 2), list: true },
    spread: massOut('R', 'heaviest less lightest pair: the least that pairing can reach', 2),
  },
  formula: 'heaviest with lightest',
  assumptions: ['Proven least spread: exchanging the partners of any two never brings the sums closer.'],
  sources: ['derived-here'],
  example: {
    inputs: { first: ['580 g', '584 g'], second: ['120 g', '125 g'] },
    outputs: { partner: [2, 1], sums: ['705 g', '704 g'], spread: '1 g' },
    from: 'hand arithmetic; the other way round 700 and 709 g',
  },
  compute: (v) => {
    if (v.first.length !== v.second.length)
      return conflict(['first', 'second'], 'both sets need the same number of parts');
    const { partner, sums } = pairOpposite(v.first, v.second);
    const spread = (Math.max(...sums) - Math.min(...sums)) as Mass;
    return answer({ partner: partner.map((at) => at + 1), sums, spread });
  },
});
