import { CONSUMABLES } from '../../consumables.js';
import { HAZARDS } from '../../hazards.js';
import type { Operation } from '../../model.js';
import { felt, value } from '../act.js';

/** O27: valves, springs and seals into the head. */
export const headAssembly: Operation = {
  id: 'head-assembly',
  key: 'O27',
  title: 'Assemble the heads',
  phase: 'top-end',
  chain: 'built-on',
  needs: ['final-wash'],
  consumables: [CONSUMABLES.stem],
  tools: ['spring compressor', 'height gauge', 'spring tester', 'vacuum or fluid to prove the seats'],
  cautions: [HAZARDS.springs, HAZARDS.edges],
  mistakes: [
    { wrong: 'a lock half seated', cost: 'the valve drops in' },
    { wrong: 'intake and exhaust seals mixed', cost: 'smoke, or a stem that seizes' },
  ],
  acts: [
    felt(
      'seat-proved',
      4,
      'Set the valve in its guide dry; prove the seat by fluid or vacuum.',
      'What comes through, how long it holds',
      { per: 'valve' },
    ),
    {
      id: 'head-worksheet',
      minutes: 4,
      does: 'Read it with seat, retainer and locks as they will stay.',
      ask: 'The readings',
      answer: 'worksheet',
      worksheets: 'heads',
    },
    value('length', 'spring-shimmed', 5, 'Shim the spring to its height.', 'Height and shims, load on the seat', {
      per: 'valve',
    }),
    felt('stem-seal-on', 2, 'Oil the stem; fit its own seal over a sleeve.', 'Kind, seated all round', {
      per: 'valve',
    }),
    felt(
      'locks-seated',
      4,
      'Compress the spring; seat both locks; tap the stem end with a soft mallet.',
      'Both locks level',
      { per: 'valve', badPause: 'locks that are not tapped can spring out' },
    ),
    felt('head-covered', 3, 'Cover chambers and ports.', 'What covers it', { per: 'head', chain: 'order' }),
  ],
};
