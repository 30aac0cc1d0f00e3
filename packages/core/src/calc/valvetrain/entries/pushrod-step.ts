import { mm } from '../../../quantity/index.js';
import { answer, defineCalculation } from '../../catalogue/index.js';
import { gapOfTravel } from '../collapsed-lifter.js';
import { ratio } from './inputs.js';

export const pushrodStep = defineCalculation({
  id: 'valvetrain.pushrod-step',
  subject: 'valvetrain',
  title: 'What another pushrod length does to the gap at the valve',
  summary: 'Change of the gap at the valve for a longer or shorter pushrod.',
  inputs: {
    longer: {
      kind: 'length',
      symbol: 'Δl',
      meaning: 'how much longer the pushrod is; negative: shorter',
      unit: 'mm',
      range: { from: mm(-50), to: mm(50) },
    },
    ratio,
  },
  outputs: {
    gapChange: { kind: 'length', symbol: 'Δg', meaning: 'the gap closes by', unit: 'mm', places: 3 },
  },
  formula: 'Δg = Δl·R',
  assumptions: ['Small angles; the rocker’s own geometry hardly changes with the step.'],
  sources: ['derived-here', 'collapsed-gap'],
  example: {
    inputs: { longer: '0.060 in', ratio: '1.6' },
    outputs: { gapChange: '0.096 in' },
    from: 'reference row MO-28',
  },
  compute: (v) => answer({ gapChange: gapOfTravel(v.longer, v.ratio) }),
});
