import { HAZARDS } from '../../hazards.js';
import type { Operation } from '../../model.js';
import { felt, photo } from '../act.js';

/** O15: the last wash; no chip is made after it. */
export const finalWash: Operation = {
  id: 'final-wash',
  key: 'O15',
  title: 'Wash everything for the last time',
  phase: 'permanent-parts',
  chain: 'free',
  needs: ['last-cuts', 'ring-gaps'],
  consumables: [],
  tools: ['hot water and detergent', 'gallery and bore brushes', 'dry air', 'white cloths', 'covers'],
  cautions: [HAZARDS.air, HAZARDS.dirt],
  mistakes: [
    { wrong: 'clean because the shop said so', cost: 'bearings gone in the first hours' },
    { wrong: 'solvent alone after honing', cost: 'grit stays in the bore' },
  ],
  acts: [
    felt(
      'block-washed',
      60,
      'Brush block and every gallery with hot detergent; rinse hot; blow dry; oil the iron.',
      'Colour of the last rinse',
      { mustDo: 'grit left in it eats the bearings' },
    ),
    felt('bore-white', 3, 'Wipe the bore with oil on a white cloth until nothing comes.', 'Colour of the cloth', {
      per: 'cylinder',
      mustDo: 'honing grit left in a bore eats rings and shells',
    }),
    felt('crank-washed', 20, 'Brush every oil way of the crank through; rinse; oil it.', 'What came out last', {
      mustDo: 'grit in an oil way goes straight to a shell',
    }),
    felt('head-washed', 30, 'Wash the head, its oil ways and guides; blow dry.', 'Colour of the last rinse', {
      per: 'head',
    }),
    felt('piston-set-washed', 5, 'Wash piston, pin, rings, rod and cap.', 'Ring grooves and oil holes', {
      per: 'cylinder',
    }),
    felt(
      'small-parts-washed',
      40,
      'Wash followers, rockers, pushrods, pump, drive, covers and fasteners.',
      'Pushrods seen through; no grit in threads',
    ),
    photo('all-covered', 10, 'Cover everything; write date and name on the covers.', 'The photo', { position: 'join' }),
  ],
};
