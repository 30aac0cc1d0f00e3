import { HAZARDS } from '../../hazards.js';
import type { Operation } from '../../model.js';
import { register, value } from '../act.js';

/** O21: each ring gapped in its own bore, before the wash. */
export const ringGaps: Operation = {
  id: 'ring-gaps',
  key: 'O21',
  title: 'Gap the rings, each in its own bore',
  phase: 'trial-assembly',
  chain: 'built-on',
  needs: ['parts-received', 'machining'],
  consumables: [],
  tools: ['ring filer', 'squaring tool', 'feeler gauges', 'torque plate where the bore was honed with it'],
  cautions: [HAZARDS.edges, HAZARDS.metalGone],
  mistakes: [
    { wrong: 'gapped high in a worn bore', cost: 'the ends meet lower down, and the bore is scored' },
    { wrong: 'filed outward', cost: 'the face coating chips' },
  ],
  acts: [
    register('rings-laid-to-bore', 3, 'Lay the set to its bore.', 'Set and bore', { per: 'cylinder' }),
    {
      id: 'ring-worksheet',
      minutes: 4,
      does: 'Square the ring in its bore and read the gap.',
      ask: 'The readings',
      answer: 'worksheet',
      worksheets: 'rings',
    },
    value(
      'length',
      'rings-filed',
      12,
      'File inward, a little at a time; take the burr off; read again.',
      'Final gaps: top, second, rails',
      { per: 'cylinder', noReturn: 'a filed ring does not grow back' },
    ),
    value(
      'length',
      'groove-room-read',
      4,
      'Roll each ring round its groove; read its side room.',
      'Side room of top and second',
      { per: 'cylinder' },
    ),
    register('rings-kept', 2, 'Bag the set with the number of its bore.', 'Number on the bag', { per: 'cylinder' }),
  ],
};
