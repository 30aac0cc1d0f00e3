import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { gapInBore } from '../rings.js';
import { height, lengthOut, signedLength } from './inputs.js';

export const ringGapBoreChange = defineCalculation({
  id: 'cylinder.ring-gap-bore-change',
  subject: 'cylinder',
  title: 'Ring end gap after a change of bore',
  summary: 'The gap follows 3.14 times the change of bore: after honing, in another cylinder, higher up in a worn one.',
  inputs: {
    gap: height('g', 'end gap measured'),
    boreChange: signedLength('ΔB', 'bore there less bore where the gap was measured, larger positive'),
  },
  outputs: {
    newGap: lengthOut('g′', 'end gap after the change', 5),
    gapChange: lengthOut('Δg', 'change of gap', 5),
  },
  formula: 'g′ = g + π·ΔB',
  assumptions: ['Ring square in the bore and touching all round.'],
  sources: ['ring-gap-pi', 'derived-here'],
  example: {
    inputs: { gap: '0.0160 in', boreChange: '0.0040 in' },
    outputs: { newGap: '0.02857 in' },
    from: 'reference row O-08',
  },
  compute: (v) => {
    const newGap = gapInBore(v.gap, 0 as typeof v.gap, v.boreChange);
    if (newGap < 0) return conflict(['gap', 'boreChange'], 'the ring ends would meet before it goes into the bore');
    return answer({ newGap, gapChange: (newGap - v.gap) as typeof newGap });
  },
});
