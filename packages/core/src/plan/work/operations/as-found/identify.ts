import { HAZARDS } from '../../hazards.js';
import type { Operation } from '../../model.js';
import { felt, list, photo, value } from '../act.js';

/** O01: which engine it is, and how it ran. */
export const identify: Operation = {
  id: 'identify',
  key: 'O01',
  title: 'Find out which engine it is and how it runs',
  phase: 'as-found',
  chain: 'free',
  needs: [],
  consumables: [],
  tools: [
    'lamp and mirror',
    'camera',
    'pressure gauge for oil',
    'compression gauge',
    'leak-down tester',
    'bar for the crank',
  ],
  cautions: [HAZARDS.fire, HAZARDS.hot, HAZARDS.turning],
  mistakes: [
    {
      wrong: 'parts ordered by displacement alone',
      cost: 'seal, block or gasket of a sister engine, found at the first start',
    },
    { wrong: 'no figures taken while it still ran', cost: 'the cause of the strip stays a guess' },
  ],
  acts: [
    list(
      'numbers-read',
      10,
      'Read every cast and stamped number on block, heads and crank.',
      'Each number, and where it stands',
    ),
    photo('all-sides', 10, 'Photograph the engine from all six sides, before anything is moved.', 'The photo'),
    list(
      'story-heard',
      15,
      'Ask the owner why it comes apart, what hours it has, and what is wanted at what cost.',
      'Reason, hours or distance, wishes, budget',
    ),
    list('missing-named', 10, 'Look for what is not there: brackets, covers, dowels, plugs.', 'What is missing'),
    felt('whole-turn', 5, 'Bar the crank over by hand, two full turns.', 'Free all the way, or where it is tight', {
      two: 'one bars, one watches',
    }),
    value(
      'pressure',
      'oil-pressure-found',
      15,
      'If it runs: read the oil pressure hot, at idle.',
      'Pressure; skip with the reason where it does not run',
    ),
    value(
      'pressure',
      'compression-found',
      4,
      'If it turns on the starter: read the compression, dry and then wet.',
      'Dry figure and wet figure',
      { per: 'cylinder' },
    ),
    felt(
      'leak-path-found',
      5,
      'With air in the cylinder, listen at intake, exhaust, crankcase, coolant and the neighbour.',
      'How much is lost, and where it is heard',
      { per: 'cylinder' },
    ),
    felt(
      'identity-agrees',
      15,
      'Hold the numbers against the parts book.',
      'Which engine it is, and what does not agree',
      { position: 'join' },
    ),
  ],
};
