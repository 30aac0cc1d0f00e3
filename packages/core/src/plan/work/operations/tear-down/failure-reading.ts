import type { Operation } from '../../model.js';
import { felt, list, photo } from '../act.js';

/** O04: what the parts tell about the cause. */
export const failureReading: Operation = {
  id: 'failure-reading',
  key: 'O04',
  title: 'Read from the parts why it wore or failed',
  phase: 'tear-down',
  chain: 'free',
  needs: ['tear-down'],
  consumables: [],
  tools: ['magnet', 'white tray', 'lens', 'camera'],
  cautions: [],
  mistakes: [{ wrong: 'new bearings on top of the old cause', cost: 'the same failure once more' }],
  acts: [
    photo('main-shells-read', 3, 'Lay both shells out, face and back.', 'Photo, with what the pattern tells', {
      per: 'main',
    }),
    photo('rod-shells-read', 3, 'Lay both rod shells out, face and back.', 'Photo, with what the pattern tells', {
      per: 'cylinder',
    }),
    felt('piston-read', 3, 'Look at skirt, lands and ring faces.', 'Scuffs and on which side', { per: 'cylinder' }),
    photo(
      'lobes-read',
      15,
      'Look at lobes and follower faces; a flat lifter that is hollow is finished.',
      'Photo of every lobe that is not whole',
      { per: 'camshaft' },
    ),
    felt(
      'gasket-read',
      5,
      'Look at the fire ring marks and water holes of the old gasket.',
      'Where it leaked, or that it was whole',
      { per: 'head' },
    ),
    felt('debris-read', 10, 'Sort the debris from pan and filter with a magnet.', 'Steel, bearing metal, or none'),
    list(
      'cause-named',
      15,
      'Say what the cause was, and what else it reached: cooler, pump, lifters, galleries.',
      'Cause, and parts it condemns',
      { position: 'join' },
    ),
  ],
};
