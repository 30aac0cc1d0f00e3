import { HAZARDS } from '../../hazards.js';
import type { Operation } from '../../model.js';
import { felt, list } from '../act.js';

/** O07: every size. */
export const measuring: Operation = {
  id: 'measuring',
  key: 'O07',
  title: 'Measure everything',
  phase: 'inspection',
  chain: 'free',
  needs: ['first-clean'],
  consumables: [],
  tools: ['micrometers and bore gauge with their standards', 'dial indicator', 'straightedge', 'thermometer'],
  cautions: [HAZARDS.edges],
  mistakes: [
    { wrong: 'one reading a bore', cost: 'taper and out-of-round stay hidden' },
    { wrong: 'a part warm from the sun', cost: 'a third of a clearance read wrong' },
    { wrong: 'bore gauge and micrometer never held against each other', cost: 'a clearance that is not there' },
  ],
  acts: [
    list(
      'gauges-checked',
      15,
      'Let parts and gauges lie together; deburr; read each gauge on its standard.',
      'Each gauge, its reading on the standard, temperature',
      { position: 'first' },
    ),
    {
      id: 'worksheet',
      minutes: 4,
      does: 'Fill in the worksheet.',
      ask: 'The readings',
      answer: 'worksheet',
      worksheets: 'parts-apart',
    },
    felt(
      'readings-looked-through',
      20,
      'Go through what is out, too close to tell, or missing; measure those again.',
      'What stays in doubt',
      { position: 'join' },
    ),
  ],
};
