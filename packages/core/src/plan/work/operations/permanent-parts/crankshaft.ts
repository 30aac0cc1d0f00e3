import { CONSUMABLES } from '../../consumables.js';
import { HAZARDS } from '../../hazards.js';
import type { Operation } from '../../model.js';
import { felt, value } from '../act.js';

/** O19: crankshaft in, mains tightened. */
export const crankshaft: Operation = {
  id: 'crankshaft',
  key: 'O19',
  title: 'Lay the crankshaft in and tighten the mains',
  phase: 'permanent-parts',
  chain: 'built-on',
  needs: ['plugs-and-liners'],
  consumables: [CONSUMABLES.shellBack, CONSUMABLES.shellFace, CONSUMABLES.crankBolt, CONSUMABLES.rearCap],
  tools: ['torque wrench checked in its range', 'soft mallet', 'dial indicator', 'paint pen'],
  cautions: [HAZARDS.lifting, HAZARDS.dirt, HAZARDS.twice],
  mistakes: [
    { wrong: 'cap turned round', cost: 'the crank binds, the bore is spoilt' },
    { wrong: 'shell without a hole over an oil hole', cost: 'that main starves' },
    { wrong: 'two lengths of bolt mixed', cost: 'one bottoms before it clamps, one strips' },
  ],
  acts: [
    felt('saddles-wiped', 10, 'Wipe saddles, caps and shell backs dry.', 'No oil, no lint, holes open'),
    felt(
      'main-shell-in',
      3,
      'Press the shells in by place: hole over hole, tang in its slot.',
      'Which shell, hole seen open',
      { per: 'main' },
    ),
    felt(
      'seal-half-in',
      10,
      'Where the rear seal is in halves, fit the upper half now; lip to the oil, ends off the parting line.',
      'Kind of seal, and which way the lip looks',
    ),
    felt(
      'crank-laid-in',
      15,
      'Lube the shell faces; lower the crank straight down.',
      'How it sits and turns on its shells',
      { two: 'lowering the crank', badPause: 'caps off and lube open to dust: put the caps on now' },
    ),
    felt(
      'main-cap-on',
      4,
      'Set the cap by number and arrow; tap it home; bolts by hand.',
      'Number, arrow, seated on both sides',
      { per: 'main', badPause: 'a cap that is only hand tight looks finished' },
    ),
    felt(
      'thrust-lined-up',
      5,
      'Tap the crank back and then forward before the thrust cap is tightened.',
      'That it moved, and both faces meet',
      { badPause: 'mains are only hand tight' },
    ),
    {
      id: 'mains-tightened',
      minutes: 8,
      per: 'main',
      joint: 'mains',
      does: 'Tighten the main caps in their order and stages; turn the crank after each.',
      ask: 'Value, lubricant and where they are from',
      answer: 'value',
      asked: 'torque',
      critical: true,
    },
    felt('crank-spins', 5, 'Turn the crank by hand.', 'Free all round, or where it drags'),
    value('length', 'crank-float', 10, 'Pry the crank to and fro against the dial.', 'End float'),
  ],
};
