import type { Length } from '../../../quantity/index.js';
import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { lengthOut, signedLength, size, stroke } from './inputs.js';

export const deckStack = defineCalculation({
  id: 'cylinder.deck-stack',
  subject: 'cylinder',
  title: 'The one height that makes the deck come out',
  summary: 'Leave out exactly one of deck height, rod, compression height and deck clearance: it is worked out.',
  inputs: {
    stroke,
    deckHeight: { ...size('H', 'crankshaft centre to deck'), optional: true },
    rodLength: { ...size('l', 'connecting rod, centre to centre'), optional: true },
    compressionHeight: { ...size('K', 'piston pin centre to crown flat'), optional: true },
    deckClearance: { ...signedLength('d', 'deck clearance, below positive, proud negative'), optional: true },
  },
  outputs: {
    deckHeight: lengthOut('H', 'crankshaft centre to deck'),
    rodLength: lengthOut('l', 'rod, centre to centre'),
    compressionHeight: lengthOut('K', 'pin centre to crown flat'),
    deckClearance: lengthOut('d', 'deck clearance'),
  },
  formula: 'H = S/2 + l + K + d',
  assumptions: ['Bearing clearances, pin offset and heat left out.'],
  sources: ['derived-here'],
  example: {
    inputs: { stroke: '3.480 in', deckHeight: '9.025 in', rodLength: '6.000 in', deckClearance: '0.005 in' },
    outputs: { compressionHeight: '1.280 in' },
    from: 'hand arithmetic',
  },
  compute: (v) => {
    const { deckHeight: H, rodLength: l, compressionHeight: K, deckClearance: d } = v;
    const missing = [H, l, K, d].filter((one) => one === undefined).length;
    if (missing !== 1) {
      return conflict(
        ['deckHeight', 'rodLength', 'compressionHeight', 'deckClearance'],
        'exactly one of deckHeight, rodLength, compressionHeight and deckClearance must be left out',
      );
    }
    const half = v.stroke / 2;
    const known = half + (l ?? 0) + (K ?? 0) + (d ?? 0);
    const rest = ((H ?? 0) - known) as Length;
    const full = {
      deckHeight: H ?? (known as Length),
      rodLength: l ?? rest,
      compressionHeight: K ?? rest,
      deckClearance: d ?? rest,
    };
    if (full.rodLength <= 0 || full.compressionHeight <= 0) {
      return conflict(['stroke', 'deckHeight', 'deckClearance'], 'no height is left for the part');
    }
    return answer(full);
  },
});
