import { CONSUMABLES } from '../../consumables.js';
import { HAZARDS } from '../../hazards.js';
import type { Operation } from '../../model.js';
import { felt, list, photo } from '../act.js';

/** O28: heads on the block. */
export const headsOn: Operation = {
  id: 'heads-on',
  key: 'O28',
  title: 'Put the heads on',
  phase: 'top-end',
  chain: 'built-on',
  needs: ['head-assembly', 'pistons-in-block'],
  consumables: [CONSUMABLES.headGasket, CONSUMABLES.blindHead, CONSUMABLES.waterHead, CONSUMABLES.yieldBolt],
  tools: [
    'hoist or a second pair of hands',
    'guide studs',
    'torque wrench checked in its range',
    'angle gauge',
    'paint pen',
  ],
  cautions: [HAZARDS.lifting, HAZARDS.liquidInHole, HAZARDS.twice, HAZARDS.valvesMeet],
  mistakes: [
    { wrong: 'gasket turned end for end', cost: 'water is blocked; the far bank runs hot' },
    { wrong: 'long and short bolts mixed', cost: 'one bottoms, one strips' },
    { wrong: 'the place in the order lost', cost: 'a gasket that leaks later' },
  ],
  acts: [
    list(
      'gasket-held-up',
      8,
      'Hold the gasket to both faces: way up, front, fire ring, every opening.',
      'Part number, which side up, openings that do not meet',
      { per: 'head', critical: true },
    ),
    felt(
      'deck-dry',
      8,
      'Faces clean and dry; every hole blown out and looked into; dowels proud.',
      'Holes with liquid, dowels',
      { per: 'head' },
    ),
    list(
      'head-bolts-laid-out',
      10,
      'Lay the bolts out by hole; treat threads and heads as the sheet says.',
      'Length, new or used, treatment',
      { per: 'head' },
    ),
    felt('gasket-down', 3, 'Lay the gasket over the dowels.', 'Which word is up and where it lies', { per: 'head' }),
    felt('head-down', 10, 'Lower the head straight on to the dowels; snug the bolts.', 'Seated all round', {
      per: 'head',
      two: 'lowering the head',
      closes: true,
      badPause: 'the head is down and not tight',
      noReturn: 'a gasket is crushed once',
    }),
    {
      id: 'head-tightened',
      minutes: 40,
      per: 'head',
      joint: 'head',
      does: 'Tighten the head in its order, stage by stage, and mark each bolt.',
      ask: 'Value of each stage, lubricant and where they are from',
      answer: 'value',
      asked: 'torque',
      two: 'one calls the order',
      noReturn: 'a gasket is crushed once',
    },
    photo('head-marks-seen', 3, 'See a mark on every head bolt.', 'Photo of all marks', { per: 'head' }),
  ],
};
