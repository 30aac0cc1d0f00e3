import { answer, defineCalculation, reversedEnds } from '../../catalogue/index.js';
import { extraPart } from '../extra-part.js';
import {
  goal,
  lengthOut,
  noParts,
  parts,
  partsAnswer,
  partsOutputs,
  places,
  proofOf,
  signedLength,
  size,
  target,
  tooMany,
  windowOf,
} from './fit-inputs.js';

export const extraPartEntry = defineCalculation({
  id: 'selection.extra-part',
  subject: 'selection',
  title: 'Which single different part would help most',
  summary:
    'Tries every size on offer beside the parts on hand and names the one that makes the best plan better by most.',
  inputs: {
    places,
    parts,
    onOffer: { ...size('b′', 'sizes of which one could be had'), list: true },
    target,
    lowest: { ...signedLength('c₁', 'lowest fit accepted; left out: any'), optional: true },
    highest: { ...signedLength('c₂', 'highest fit accepted; left out: any'), optional: true },
    goal,
  },
  outputs: {
    size: { ...lengthOut('b*', 'size that helps most; absent when none helps'), optional: true },
    gain: {
      ...lengthOut('gain', 'how much less of the goal with it; absent when without it not every place has a part'),
      optional: true,
    },
    ...partsOutputs,
  },
  formula: 'b* = the b′ with the least goal of the best plan for b and b′ together; gain = goal without − goal with',
  assumptions: [
    'One part is added; the part that it displaces stays on the bench.',
    'The extra part is numbered after the parts on hand. Of equal sizes the first in the list is named.',
  ],
  sources: ['assignment-duality', 'hopcroft-karp', 'balanced-assignment'],
  example: {
    inputs: {
      places: ['80.010 mm', '80.020 mm'],
      parts: ['79.970 mm', '79.972 mm'],
      onOffer: ['79.975 mm', '79.981 mm', '79.990 mm'],
      target: '0.040 mm',
    },
    outputs: { size: '79.981 mm', gain: '0.0070 mm', total: '0.0010 mm' },
    from: 'hand arithmetic: without 0 + 0.008; with 79.981 in the second bore 0 + 0.001, with 79.975 0.005',
  },
  compute: (v) => {
    const { onOffer, lowest, highest, ...rest } = v;
    const fault =
      reversedEnds(v, ['lowest', 'highest']) ?? tooMany({ places: v.places, parts: v.parts, onOffer: v.onOffer });
    if (fault) return fault;
    const found = extraPart({ ...rest, window: windowOf(lowest, highest) }, onOffer);
    if (!found.ok) return noParts(['places', 'parts', 'onOffer', 'target', 'lowest', 'highest'], found.fault);
    const { plan, size: best, gain } = found.value;
    return answer({
      size: best,
      gain,
      ...partsAnswer(plan, `all ${onOffer.length} sizes were tried; ${proofOf(plan, v.goal)}`),
    });
  },
});
