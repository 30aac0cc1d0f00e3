import { CONSUMABLES } from '../../consumables.js';
import { HAZARDS } from '../../hazards.js';
import type { Operation } from '../../model.js';
import { felt, value } from '../act.js';

/** O24: timing drive on, cam degreed. */
export const camTiming: Operation = {
  id: 'cam-timing',
  key: 'O24',
  title: 'Fit the timing drive and prove the cam timing',
  phase: 'permanent-parts',
  chain: 'built-on',
  needs: ['camshaft', 'pistons-in-block'],
  consumables: [CONSUMABLES.lockedScrew],
  tools: ['positive stop', 'degree wheel with a stiff pointer', 'dial indicator in line with the follower'],
  cautions: [HAZARDS.turning, HAZARDS.valvesMeet],
  mistakes: [
    { wrong: 'wheel slips or pointer bends after dead centre was set', cost: 'every angle after it is wrong' },
    { wrong: 'read on the way back', cost: 'the slack of the drive is in the figure' },
    { wrong: 'cam degrees taken for crank degrees', cost: 'twice the error' },
  ],
  acts: [
    value(
      'angle',
      'dead-centre-found',
      15,
      'Find dead centre by a positive stop from both sides; split the difference.',
      'Both stops, and the middle',
    ),
    felt(
      'drive-fitted',
      20,
      'Fit gears, chain or belt: marks together, key and offset as chosen.',
      'Marks, key, offset',
      { chain: 'order' },
    ),
    {
      id: 'cam-gear-tightened',
      minutes: 10,
      joint: 'cam-gear',
      does: 'Tighten the cam gear screws on clean dry threads with locker.',
      ask: 'Value and where it is from',
      answer: 'value',
      asked: 'torque',
    },
    felt(
      'drive-tensioned',
      10,
      'Set and release tensioner and guides; take out every lock.',
      'Slack by feel, or that this drive has none',
    ),
    value(
      'angle',
      'cam-read',
      30,
      'In the running direction only, read both lobes of one cylinder by equal lifts; check the events of the card.',
      'Centre of intake and exhaust',
      { critical: true, two: 'one turns, one reads' },
    ),
    felt(
      'cam-timing-accepted',
      5,
      'Hold it against the card and say what stays.',
      'Difference to the card, accepted or moved',
    ),
    felt(
      'timed-two-turns',
      5,
      'Turn two full turns by hand; bring the marks round.',
      'Where it caught; the marks meet again',
    ),
  ],
};
