import type { Length } from '../../../quantity/index.js';
import { answer, defineCalculation } from '../../catalogue/index.js';
import { discArea } from '../volumes.js';
import { lengthOut } from './inputs.js';
import { chamber, gasket, pistonVolume, smallParts } from './parts.js';
import { clearanceOut, freeRoom, goal, lengthOf } from './solve.js';

export const deckForRatio = defineCalculation({
  id: 'cylinder.deck-for-ratio',
  subject: 'cylinder',
  title: 'Deck clearance for a compression ratio',
  summary: 'How far below the deck, or proud of it, the piston must stop; with the clearance now also the deck cut.',
  inputs: {
    ...goal,
    chamber,
    ...gasket,
    pistonVolume: { ...pistonVolume, optional: true },
    ...smallParts,
    deckNow: {
      kind: 'length',
      symbol: 'd0',
      meaning: 'deck clearance now, below the deck positive; gives the cut',
      unit: 'mm',
      range: { from: -0.1, to: 1 },
      optional: true,
    },
  },
  outputs: {
    deckClearance: lengthOut('d', 'deck clearance: below the deck positive, proud negative'),
    deckCut: { ...lengthOut('c', 'to take off the deck; negative: a longer way down is needed'), optional: true },
    clearance: clearanceOut,
  },
  formula: 'd = [π/4·B²·S/(CR − 1) − (V1 + Vg + Vp + Vv + Vk + Vo)]/(π/4·B²); c = d0 − d',
  assumptions: ['Parts and signs as in cylinder.compression-ratio. Check quench and valve room with the new deck.'],
  sources: ['derived-here'],
  example: {
    inputs: {
      ratio: '10.0',
      bore: '100 mm',
      stroke: '90 mm',
      chamber: '60 cc',
      gasketThickness: '1 mm',
      gasketBore: '100 mm',
      pistonVolume: '5 cc',
      deckNow: '1 mm',
    },
    outputs: { deckClearance: '0.724 mm', deckCut: '0.276 mm' },
    from: 'hand arithmetic: 78.540 − 60 − 7.854 − 5 = 5.686 cc over 78.540 cm²',
  },
  compute: (v) => {
    const free = freeRoom(v, 'deck');
    if (!free.ok) return free;
    const { room, clearance, cautions } = free.value;
    const deckClearance = lengthOf(room, discArea(v.bore));
    const deckCut = v.deckNow === undefined ? undefined : ((v.deckNow - deckClearance) as Length);
    return answer({ deckClearance, deckCut, clearance }, cautions);
  },
});
