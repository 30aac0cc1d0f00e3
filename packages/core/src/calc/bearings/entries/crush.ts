import { mm } from '../../../quantity/index.js';
import { answer, defineCalculation } from '../../catalogue/index.js';
import { crushInterference } from '../crush.js';
import { clearanceOut } from './inputs.js';

export const crush = defineCalculation({
  id: 'bearings.crush',
  subject: 'bearings',
  title: 'Crush of a pair of shells',
  summary: 'Interference on the diameter that shell ends standing proud of the joint make when the cap is tightened.',
  inputs: {
    proud: {
      kind: 'length',
      symbol: 'h',
      meaning: 'height of each shell end above the parting line; list every end that stands proud (up to four)',
      unit: 'mm',
      range: { from: 0, to: mm(5) },
      list: true,
    },
  },
  outputs: {
    excess: { ...clearanceOut, symbol: 'Σh', meaning: 'excess of circumference' },
    interference: { ...clearanceOut, symbol: 'δ', meaning: 'equivalent interference on the diameter', places: 5 },
  },
  formula: 'δ = Σh/π',
  assumptions: ['Crush is not spread: the free shell is wider than the bore as well.'],
  sources: ['derived-here'],
  example: {
    inputs: { proud: ['0.0015 in', '0.0015 in', '0.0015 in', '0.0015 in'] },
    outputs: { excess: '0.0060 in', interference: '0.00191 in' },
    from: 'reference row O-16',
  },
  compute: ({ proud }) =>
    answer({
      excess: proud.reduce((sum, one) => sum + one, 0) as (typeof proud)[number],
      interference: crushInterference(proud),
    }),
});
