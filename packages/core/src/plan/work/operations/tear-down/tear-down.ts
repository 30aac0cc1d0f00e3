import { HAZARDS } from '../../hazards.js';
import type { Operation } from '../../model.js';
import { felt, list, photo, register } from '../act.js';

/** O03: apart, with the identity of every part kept. */
export const tearDown: Operation = {
  id: 'tear-down',
  key: 'O03',
  title: 'Take it apart so that every part knows its place',
  phase: 'tear-down',
  chain: 'in-turn',
  needs: ['external-strip'],
  consumables: [],
  tools: [
    'trays and tags by position',
    'paint pen',
    'bolt card',
    'camera',
    'spring compressor',
    'dial indicator',
    'feeler gauges',
  ],
  cautions: [HAZARDS.springs, HAZARDS.lifting, HAZARDS.edges],
  mistakes: [
    { wrong: 'bags without labels', cost: 'fasteners bought anew, and the old ones found afterwards' },
    { wrong: 'a used flat lifter put on another lobe', cost: 'lobe and lifter are eaten' },
    { wrong: 'main or rod caps swapped', cost: 'a line bore, or a scrap rod' },
  ],
  acts: [
    list(
      'trays-laid-out',
      15,
      'Lay out trays and tags, one for each position from the front.',
      'What is laid out, and how it is numbered',
    ),
    {
      id: 'as-found-worksheet',
      minutes: 4,
      does: 'Read what the strip-down destroys.',
      ask: 'The readings',
      answer: 'worksheet',
      worksheets: 'as-found',
    },
    register(
      'valve-gear-tagged',
      2,
      'Take follower, pushrod and rocker of this valve out and tag each.',
      'Position, end and face of each',
      { per: 'valve' },
    ),
    photo(
      'head-off',
      30,
      'Slacken its bolts in the reverse order; lift the head; look at the gasket before it is moved.',
      'Photo of both gasket faces',
      { per: 'head', two: 'lifting the head' },
    ),
    felt('ridge-felt', 2, 'Feel the top of the bore for a ridge.', 'How high, and where', { per: 'cylinder' }),
    register(
      'rod-marked',
      4,
      'Read number and side of rod and cap, and which way piston mark and reliefs face.',
      'Number, side, facing',
      { per: 'cylinder' },
    ),
    felt(
      'piston-out',
      8,
      'Guard the pin with sleeves on the bolts; push the piston up and out.',
      'Where it dragged; the rings free or stuck',
      { per: 'cylinder' },
    ),
    register(
      'main-cap-marked',
      3,
      'Read number and arrow of the cap, and the side of the thrust washers where it has them.',
      'Number, arrow, washers',
      { per: 'main' },
    ),
    felt(
      'crank-out',
      15,
      'Lift the crank straight up and stand it on end or in cradles.',
      'What the journals look like',
      { two: 'lifting the crank' },
    ),
    photo(
      'cam-and-drive-out',
      20,
      'Note the marks of gears or chain; draw the camshaft out without touching a bearing.',
      'The photo of marks and lobes',
    ),
    register('bolts-by-hole', 20, 'Go through the bolt card.', 'Length of the bolt of every hole'),
  ],
};
