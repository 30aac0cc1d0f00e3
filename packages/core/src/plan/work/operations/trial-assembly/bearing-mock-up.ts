import { CONSUMABLES } from '../../consumables.js';
import { HAZARDS } from '../../hazards.js';
import type { Operation } from '../../model.js';
import { felt, register, value } from '../act.js';

/** O11: bearing clearances before anything is final. */
export const bearingMockUp: Operation = {
  id: 'bearing-mock-up',
  key: 'O11',
  title: 'Try the bearings',
  phase: 'trial-assembly',
  chain: 'free',
  needs: ['parts-received', 'machining'],
  consumables: [CONSUMABLES.shellBack, CONSUMABLES.crankBolt],
  tools: ['bore gauge set on the micrometer that read the journal', 'torque wrench', 'rod vice with soft jaws'],
  cautions: [HAZARDS.dirt],
  mistakes: [
    { wrong: 'clearance read near the parting line', cost: 'shells are thinner there: it looks larger than it is' },
    { wrong: 'a gauging strip read after the crank moved', cost: 'a width that means nothing' },
    { wrong: 'a journal polished down for room', cost: 'its shape is lost' },
  ],
  acts: [
    felt('shells-wiped', 15, 'Wipe shells and housings dry.', 'No oil, no burr, no lint', { position: 'first' }),
    {
      id: 'main-bearing-worksheet',
      minutes: 5,
      does: 'Read the main bore with its shells in, caps as final.',
      ask: 'The readings',
      answer: 'worksheet',
      worksheets: 'main-bearings',
    },
    {
      id: 'rod-bearing-worksheet',
      minutes: 5,
      does: 'Read the big end with its shells in, caps as final.',
      ask: 'The readings',
      answer: 'worksheet',
      worksheets: 'rod-bearings',
    },
    value('length', 'main-room', 5, 'Take journal from bore, straight across the parting line.', 'Clearance', {
      per: 'main',
    }),
    value('length', 'rod-room', 5, 'Take crankpin from bore, straight across the parting line.', 'Clearance', {
      per: 'cylinder',
    }),
    felt(
      'crush-felt',
      10,
      'On one cap: slacken one bolt fully and feel the parting gap.',
      'Gap on that side, and which cap',
    ),
    register('shells-placed', 15, 'Fix which shell goes where, thick and thin.', 'Shell, position, upper or lower', {
      position: 'join',
    }),
  ],
};
