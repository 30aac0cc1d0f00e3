import { HAZARDS } from '../../hazards.js';
import type { Operation } from '../../model.js';
import { felt, list, photo, register } from '../act.js';

/** O02: outside off, on the stand. */
export const externalStrip: Operation = {
  id: 'external-strip',
  key: 'O02',
  title: 'Drain it, take off what hangs outside, put it on the stand',
  phase: 'as-found',
  chain: 'in-turn',
  needs: ['identify'],
  consumables: [],
  tools: ['trays for fluids', 'bags and tags', 'hoist', 'engine stand with a plate that shows its load'],
  cautions: [HAZARDS.fire, HAZARDS.lifting, HAZARDS.hot],
  mistakes: [
    { wrong: 'distributor drawn out with nothing marked', cost: 'its place has to be found again from nothing' },
    { wrong: 'force on a seized long stud', cost: 'a sheared stud and a broken cover' },
  ],
  acts: [
    list(
      'fluids-drained',
      30,
      'Drain fuel, oil and coolant into separate trays; look at each.',
      'Amount and look of each: water, fuel, metal',
    ),
    photo('outside-photographed', 15, 'Photograph each bracket, hose and plug where it sits.', 'The photo'),
    photo(
      'ignition-marked',
      10,
      'Set cylinder 1 at firing dead centre; mark rotor and housing against the block.',
      'The photo with both marks',
      { when: ['petrol'] },
    ),
    photo(
      'injection-marked',
      10,
      'Set cylinder 1 at firing dead centre; mark the injection pump drive against its housing.',
      'The photo with the mark',
      { when: ['diesel'] },
    ),
    register(
      'outside-bolts',
      60,
      'Take the outside parts off; put each bolt on the card at its hole.',
      'Part, hole, length of each bolt',
    ),
    felt(
      'on-stand',
      30,
      'Bolt the stand to the block; lift, roll and lock it.',
      'Grade and grip of the bolts, and that the head of the stand stays put',
      { two: 'hoist and stand' },
    ),
  ],
};
