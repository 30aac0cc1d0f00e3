import { answer, defineCalculation } from '../../catalogue/index.js';
import { gapByFactor } from '../rings.js';
import { bore, lengthOut } from './inputs.js';

const factor = { kind: 'ratio', unit: '', range: { above: 0, to: 0.05 } } as const;

export const ringGap = defineCalculation({
  id: 'cylinder.ring-gap',
  subject: 'cylinder',
  title: 'Ring end gap by factor',
  summary: 'Smallest end gap of top and second ring from the ring maker’s factors.',
  inputs: {
    bore,
    topFactor: {
      ...factor,
      symbol: 'f1',
      meaning: 'top ring: gap over bore, in in per in (0.0045 for 0.0045 in per in)',
    },
    secondFactor: { ...factor, symbol: 'f2', meaning: 'second ring: gap over bore', optional: true },
  },
  outputs: {
    top: lengthOut('g1', 'end gap of the top ring', 4),
    second: { ...lengthOut('g2', 'end gap of the second ring', 4), optional: true },
  },
  formula: 'g = f·B',
  assumptions: ['Factors are minima unless the maker says otherwise; which ring gets more differs between makers.'],
  sources: ['ring-gap-worked'],
  example: {
    inputs: { bore: '4.030 in', topFactor: '0.0045', secondFactor: '0.0050' },
    outputs: { top: '0.0181 in', second: '0.0202 in' },
    from: 'trade magazine (reference row O-07)',
  },
  compute: (v) =>
    answer({
      top: gapByFactor(v.bore, v.topFactor),
      second: v.secondFactor === undefined ? undefined : gapByFactor(v.bore, v.secondFactor),
    }),
});
