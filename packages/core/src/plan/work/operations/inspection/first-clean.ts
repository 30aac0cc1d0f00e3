import { HAZARDS } from '../../hazards.js';
import type { Operation } from '../../model.js';
import { felt, list } from '../act.js';

/** O05: clean enough to see and measure. */
export const firstClean: Operation = {
  id: 'first-clean',
  key: 'O05',
  title: 'Clean it so that it can be seen and measured',
  phase: 'inspection',
  chain: 'in-turn',
  needs: ['failure-reading'],
  consumables: [],
  tools: ['solvent or alkaline wash', 'gallery brushes', 'thread chaser', 'plastic scraper', 'drift for plugs'],
  cautions: [HAZARDS.caustic, HAZARDS.air, HAZARDS.edges],
  mistakes: [
    { wrong: 'aluminium in hot caustic', cost: 'the part dissolves' },
    { wrong: 'a plug left in', cost: 'a pocket of grit behind it' },
    { wrong: 'abrasive disc on a gasket face', cost: 'low spots, and grit in the bearings' },
  ],
  acts: [
    list('plugs-out', 40, 'Take out every gallery, core and cup plug, and count.', 'Number and place of each'),
    felt(
      'cam-bearings-out',
      20,
      'Draw the cam bearings before a hot tank.',
      'Their size by position, and which way they turned',
      { when: ['pushrod'] },
    ),
    felt(
      'galleries-brushed',
      40,
      'Brush every gallery through, from both ends.',
      'What came out, and that the brush goes through',
    ),
    felt('face-cleaned', 20, 'Clean the gasket faces with a plastic scraper.', 'What is left on it; scratches', {
      per: 'head',
    }),
    list('threads-chased', 30, 'Run a chaser, not a tap, down every threaded hole.', 'Holes that are torn or tight'),
    felt('rust-kept-off', 10, 'Oil the bare iron at once.', 'Colour of the cloth after wiping'),
  ],
};
