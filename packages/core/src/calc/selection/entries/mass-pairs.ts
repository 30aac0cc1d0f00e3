import { grams } from '../../../quantity/index.js';
import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { massPairs } from '../mass-groups.js';
import { tooMany } from './fit-inputs.js';
import { fromOne } from './lists.js';

const mass = (symbol: string, meaning: string) =>
  ({ kind: 'mass', symbol, meaning, unit: 'g', range: { above: 0, to: grams(1e6) }, list: true }) as const;

export const massPairsEntry = defineCalculation({
  id: 'selection.mass-pairs',
  subject: 'selection',
  title: 'Which pin to which piston, so that the sets weigh alike',
  summary:
    'Pairs two kinds of parts so that the heaviest and the lightest pair differ least; nothing is removed from any part.',
  inputs: {
    first: mass('m₁', 'mass of each part of the first kind, such as pistons, one a cylinder'),
    second: mass('m₂', 'mass of each part of the second kind, such as pins; as many or more'),
  },
  outputs: {
    partnerOf: { kind: 'count', symbol: 'j', meaning: 'second part of each first part, by its number', list: true },
    sums: { kind: 'mass', symbol: 'm₁+m₂', meaning: 'mass of each pair', unit: 'g', places: 2, list: true },
    spread: {
      kind: 'mass',
      symbol: 'Δm',
      meaning: 'heaviest less lightest pair; no other way to pair has less',
      unit: 'g',
      places: 2,
    },
  },
  formula: 'minimise max(m₁ + m₂) − min(m₁ + m₂)',
  assumptions: ['Any second part fits any first part. Pairs stay together from then on.'],
  sources: ['balanced-assignment'],
  example: {
    inputs: { first: ['500 g', '502 g'], second: ['101 g', '100 g', '99 g'] },
    outputs: { partnerOf: [1, 3], sums: ['601.00 g', '601.00 g'], spread: '0.00 g' },
    from: 'hand arithmetic',
  },
  compute: (v) => {
    const fault = tooMany({ first: v.first, second: v.second });
    if (fault) return fault;
    const found = massPairs(v.first, v.second);
    if (!found.ok) return conflict(['first', 'second'], 'there must be at least as many second parts as first parts');
    const { partnerOf, ...masses } = found.value;
    return answer({ partnerOf: fromOne(partnerOf), ...masses });
  },
});
