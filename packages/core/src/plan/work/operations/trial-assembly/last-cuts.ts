import { HAZARDS } from '../../hazards.js';
import type { Operation } from '../../model.js';
import { felt, list } from '../act.js';

/** O14: the trial apart, and the last chips made. */
export const lastCuts: Operation = {
  id: 'last-cuts',
  key: 'O14',
  title: 'Take the trial apart; make every chip that is still to be made',
  phase: 'trial-assembly',
  chain: 'in-turn',
  needs: ['balance'],
  consumables: [],
  tools: ['fine files and stones', 'chamfer tools', 'chasers', 'the list of aids'],
  cautions: [HAZARDS.edges, HAZARDS.dust],
  mistakes: [
    { wrong: 'a checking spring left in', cost: 'the valve floats and meets the piston' },
    { wrong: 'chips made after the wash', cost: 'the wash once more, or the bearings' },
  ],
  acts: [
    felt(
      'trial-apart',
      60,
      'Take the trial assembly apart, caps kept to their places.',
      'Anything that rubbed or left a mark',
    ),
    list('aids-back', 10, 'Count every aid of the trial back.', 'Aid and number', {
      closes: true,
      mustDo: 'an aid left inside ends the engine',
    }),
    felt(
      'room-cut',
      40,
      'Relieve what the trial showed: rails, notches, pushrod holes.',
      'What was cut, or that nothing was',
      { noReturn: 'metal that is cut stays off' },
    ),
    felt('edges-broken', 60, 'Break sharp edges: webs, caps, bores, decks, bolt holes.', 'What a glove catches on', {
      noReturn: 'metal that is cut stays off',
    }),
    felt('oil-holes-eased', 20, 'Ease the edges of oil holes in journals and block.', 'Feel across each hole', {
      noReturn: 'metal that is cut stays off',
    }),
    list('threads-last-chased', 20, 'Chase the threads for the last time.', 'Holes that needed more than a chaser'),
  ],
};
