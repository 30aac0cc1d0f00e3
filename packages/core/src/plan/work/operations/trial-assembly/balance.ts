import { HAZARDS } from '../../hazards.js';
import type { Operation } from '../../model.js';
import { felt, list, value } from '../act.js';

/** O13: weights, bobweight, crank balanced. */
export const balance: Operation = {
  id: 'balance',
  key: 'O13',
  title: 'Balance',
  phase: 'trial-assembly',
  chain: 'in-turn',
  needs: ['combination-mock-up'],
  consumables: [],
  tools: ['scale to 0.1 g', 'rod-end hanger', 'balancing machine'],
  cautions: [HAZARDS.dust, HAZARDS.metalGone],
  mistakes: [
    { wrong: 'balanced before rings, shells and pistons were final', cost: 'balanced for another engine' },
    { wrong: 'damper or flywheel of the other kind of balance', cost: 'it shakes, and the crank breaks' },
  ],
  acts: [
    list('pieces-weighed', 6, 'Weigh piston, pin, locks, rings, shells and both rod ends.', 'Mass of each piece', {
      per: 'cylinder',
    }),
    felt(
      'outer-weights-belong',
      10,
      'Tell whether damper and flywheel carry part of the balance.',
      'Inside or outside balance, and by what it is known',
    ),
    value(
      'mass',
      'bobweight-figured',
      10,
      'Work out the bobweight with the factor of this layout.',
      'Bobweight and factor; skip where the layout needs none',
    ),
    list(
      'crank-balanced',
      10,
      'Shop: spin the crank and correct it.',
      'What is left at each end, metal added or drilled',
      { awaits: 'shop', noReturn: 'drilled metal stays off' },
    ),
  ],
};
