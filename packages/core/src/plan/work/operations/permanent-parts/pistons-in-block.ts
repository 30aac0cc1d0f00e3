import { CONSUMABLES } from '../../consumables.js';
import { HAZARDS } from '../../hazards.js';
import type { Operation } from '../../model.js';
import { felt, value } from '../act.js';

/** O23: pistons in, rods tightened. */
export const pistonsInBlock: Operation = {
  id: 'pistons-in-block',
  key: 'O23',
  title: 'Put the pistons in the block and tighten the rods',
  phase: 'permanent-parts',
  chain: 'built-on',
  needs: ['crankshaft', 'rear-seal', 'pistons-on-rods'],
  consumables: [CONSUMABLES.bore, CONSUMABLES.shellBack, CONSUMABLES.shellFace, CONSUMABLES.crankBolt],
  tools: [
    'ring compressor',
    'bolt sleeves',
    'wooden handle',
    'torque wrench or stretch gauge',
    'beam wrench for turning drag',
  ],
  cautions: [HAZARDS.turning, HAZARDS.edges, HAZARDS.twice],
  mistakes: [
    { wrong: 'pushed on against a ring that sprang out', cost: 'a broken ring or land' },
    { wrong: 'an over-tightened bolt, and no note of which', cost: 'the whole set is replaced' },
    { wrong: 'cap of another rod', cost: 'a scrap rod' },
  ],
  acts: [
    felt(
      'rod-shell-in',
      3,
      'Press the shells in dry; sleeve the bolts; crankpin down.',
      'Which shell; hole open; sleeves on',
      { per: 'cylinder' },
    ),
    felt(
      'piston-in',
      8,
      'Wet bore and rings as the ring maker says; tap it in; stop at any resistance.',
      'How it went, front mark forward',
      { per: 'cylinder', badPause: 'a rod without its cap can mark the crankpin' },
    ),
    felt(
      'rod-cap-on',
      4,
      'Sleeves off; cap by its number; nuts by hand; turn the crank once.',
      'Numbers match on one side; sleeves counted; turns free',
      { per: 'cylinder' },
    ),
    {
      id: 'rods-tightened',
      minutes: 8,
      per: 'cylinder',
      joint: 'rods',
      does: 'Tighten the rod bolts by stages or stretch, and mark each.',
      ask: 'Value or stretch of each bolt, lubricant and where they are from',
      answer: 'value',
      asked: 'torque',
      critical: true,
    },
    felt('rod-side-room', 3, 'Push the rod along its pin.', 'Side room by feeler', { per: 'cylinder', chain: 'order' }),
    value(
      'torque',
      'turning-drag',
      5,
      'Turn the crank steadily with a beam wrench.',
      'Drag of the whole short engine',
      { chain: 'order' },
    ),
  ],
};
