import { CONSUMABLES } from '../../consumables.js';
import type { Operation } from '../../model.js';
import { felt, photo, register } from '../act.js';

/** O17: cam bearings of a camshaft in the block. */
export const camBearings: Operation = {
  id: 'cam-bearings',
  key: 'O17',
  title: 'Fit the cam bearings',
  phase: 'permanent-parts',
  chain: 'built-on',
  needs: ['final-wash'],
  consumables: [CONSUMABLES.shellBack, CONSUMABLES.camJournal],
  tools: ['bearing driver', 'lamp', 'rod of the oil hole’s size'],
  cautions: [],
  mistakes: [{ wrong: 'oil hole of the bearing not over the gallery', cost: 'mains or rockers starve' }],
  acts: [
    register(
      'cam-bearings-sorted',
      10,
      'Lay the bearings out: their size steps by position.',
      'Number at each position',
      { when: ['pushrod'] },
    ),
    felt(
      'cam-bearings-in',
      40,
      'Drive each one square, its oil hole to the gallery at the clock position of the manual.',
      'Edges whole, none stands out',
      { when: ['pushrod'], noReturn: 'a driven bearing is not used again' },
    ),
    photo('cam-oil-holes-seen', 10, 'Sight each oil hole with a rod.', 'Photo of each hole', { when: ['pushrod'] }),
    felt(
      'cam-turns-in-bearings',
      10,
      'Slide the cam in on oil and spin it by hand; draw it out again.',
      'Free a whole turn, or where it binds',
      { when: ['pushrod'] },
    ),
  ],
};
