import { HAZARDS } from '../../hazards.js';
import type { Operation } from '../../model.js';
import { felt, value } from '../act.js';

/** O36: what is tightened, set and looked at once more. */
export const reCheck: Operation = {
  id: 're-check',
  key: 'O36',
  title: 'Tighten and set again where the maker asks for it',
  phase: 'start-and-run-in',
  chain: 'free',
  needs: ['break-in'],
  consumables: [],
  tools: ['torque wrench', 'feeler gauges', 'timing lamp'],
  cautions: [HAZARDS.hot, HAZARDS.twice],
  mistakes: [
    { wrong: 'bolts tightened to yield are turned again', cost: 'stretched, perhaps torn' },
    { wrong: 'an aluminium head tightened hot', cost: 'too tight once cold' },
  ],
  acts: [
    felt(
      'head-again',
      20,
      'Read what the gasket maker asks; only then go round, cold, one bolt at a time. Look at the old mark first.',
      'What the maker asks; marks that had moved',
      { per: 'head' },
    ),
    value('length', 'lash-again', 3, 'Read the lash again as the sheet says, hot or cold.', 'Lash found and lash set', {
      per: 'valve',
      when: ['mechanical'],
    }),
    felt('outside-again', 20, 'Go round intake, exhaust and hose clamps.', 'What had moved'),
    value('angle', 'spark-again', 10, 'Read the timing at the proved mark, and lock it.', 'Degrees and speed', {
      when: ['petrol'],
    }),
    felt('leaks-again', 10, 'Look for leaks, cold and then hot.', 'Where it leaks, or dry', { position: 'join' }),
  ],
};
