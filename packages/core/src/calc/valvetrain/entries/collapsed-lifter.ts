import { answer, defineCalculation } from '../../catalogue/index.js';
import { travelOfGap } from '../collapsed-lifter.js';
import { ratio, smallLength } from './inputs.js';

export const collapsedLifter = defineCalculation({
  id: 'valvetrain.collapsed-lifter',
  subject: 'valvetrain',
  title: 'Plunger travel left, from the gap at the valve with the lifter bled down',
  summary: 'Converts a gap measured between stem and rocker into plunger travel at the lifter.',
  inputs: { gap: { ...smallLength, symbol: 'g', meaning: 'gap at the valve tip, lifter bled down' }, ratio },
  outputs: {
    travel: { kind: 'length', symbol: 't', meaning: 'plunger travel left at the lifter', unit: 'mm', places: 3 },
  },
  formula: 't = g/R',
  assumptions: ['The gap is at the valve, the travel at the lifter: compare them only through the ratio.'],
  sources: ['derived-here', 'collapsed-gap'],
  example: {
    inputs: { gap: '0.096 in', ratio: '1.6' },
    outputs: { travel: '0.060 in' },
    from: 'reference row MO-28',
  },
  compute: (v) => answer({ travel: travelOfGap(v.gap, v.ratio) }),
});
