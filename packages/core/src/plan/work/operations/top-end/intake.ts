import { CONSUMABLES } from '../../consumables.js';
import { HAZARDS } from '../../hazards.js';
import type { Operation } from '../../model.js';
import { felt, list } from '../act.js';

/** O31: intake, and all other joints of the outside. */
export const intake: Operation = {
  id: 'intake',
  key: 'O31',
  title: 'Fit the intake and what else is bolted outside',
  phase: 'top-end',
  chain: 'built-on',
  needs: ['heads-on'],
  consumables: [CONSUMABLES.intakeBolt, CONSUMABLES.endSeal, CONSUMABLES.sparkPlug],
  tools: ['lamp', 'torque wrench', 'guide studs'],
  cautions: [HAZARDS.leftInside],
  mistakes: [
    { wrong: 'only the water bolts sealed', cost: 'oil weeps along the others' },
    { wrong: 'gasket slid as the intake went down', cost: 'it sucks oil, or leaks into the valley' },
  ],
  acts: [
    felt('ports-meet', 15, 'Set the intake on dry: ports, bolt holes, gap at the ends.', 'What does not meet'),
    list('valley-counted', 5, 'Look into ports and valley; count tools and rags.', 'Counted out and counted in'),
    felt(
      'intake-sealed',
      8,
      'Gaskets on; beads at the ends; sealer on threads that reach oil or water.',
      'What was put where',
      { badPause: 'sealer is curing with the joint open' },
    ),
    {
      id: 'intake-tightened',
      minutes: 20,
      joint: 'intake',
      does: 'Lower the intake straight down; tighten it in its order.',
      ask: 'Value and where it is from',
      answer: 'value',
      asked: 'torque',
      closes: true,
      noReturn: 'the intake closes on the followers',
    },
    {
      id: 'other-joints-tightened',
      minutes: 20,
      joint: 'other',
      does: 'Fit and tighten exhaust, water pump and what else is bolted outside.',
      ask: 'Part, value and where it is from',
      answer: 'value',
      asked: 'torque',
      chain: 'order',
    },
  ],
};
