import { HAZARDS } from '../../hazards.js';
import type { Operation } from '../../model.js';
import { felt, photo, value } from '../act.js';

/** O06: cracks before any money is spent on cutting. */
export const crackTest: Operation = {
  id: 'crack-test',
  key: 'O06',
  title: 'Look for cracks and thin walls before anything is cut',
  phase: 'inspection',
  chain: 'free',
  needs: ['first-clean'],
  consumables: [],
  tools: ['magnetic particle or dye penetrant', 'pressure plates', 'wall thickness gauge'],
  cautions: [HAZARDS.air, HAZARDS.hot],
  mistakes: [{ wrong: 'a cracked block machined', cost: 'all of the machining, found at the last torque stage' }],
  acts: [
    felt(
      'block-cracks',
      40,
      'Test the block: head bolt holes, main webs, valley, freeze-prone walls.',
      'Where a line shows, or none and by which method',
    ),
    felt(
      'head-cracks',
      30,
      'Test the head: between the seats, round plugs and injectors.',
      'Where a line shows, or none and by which method',
      { per: 'head' },
    ),
    felt(
      'crank-cracks',
      20,
      'Test the crank at fillets and oil holes.',
      'Where a line shows, or none and by which method',
    ),
    felt(
      'rod-cracks',
      5,
      'Test the rod at beam, bolt seats and small end.',
      'Where a line shows, or none and by which method',
      { per: 'cylinder' },
    ),
    value(
      'pressure',
      'water-jacket-tested',
      40,
      'Close the water jacket, put it under pressure and wait.',
      'Pressure at the start and after the wait',
    ),
    value('length', 'wall-read', 4, 'Read the thinnest wall, on the thrust sides.', 'Thinnest wall and where', {
      per: 'cylinder',
    }),
    photo('crack-map', 10, 'Keep certificate and crack map together.', 'Photo of both', { position: 'join' }),
  ],
};
