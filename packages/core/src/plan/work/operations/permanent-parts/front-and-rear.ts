import { CONSUMABLES } from '../../consumables.js';
import { HAZARDS } from '../../hazards.js';
import type { Operation } from '../../model.js';
import { felt, value } from '../act.js';

/** O26: timing cover, damper, flywheel. */
export const frontAndRear: Operation = {
  id: 'front-and-rear',
  key: 'O26',
  title: 'Close front and rear: cover, damper, flywheel',
  phase: 'permanent-parts',
  chain: 'built-on',
  needs: ['cam-timing'],
  consumables: [CONSUMABLES.seal, CONSUMABLES.lockedScrew, CONSUMABLES.intakeBolt],
  tools: ['puller and press for the damper', 'centring sleeve', 'bolt card', 'dial indicator'],
  cautions: [HAZARDS.lifting, HAZARDS.leftInside],
  mistakes: [
    { wrong: 'damper driven on with a hammer', cost: 'thrust bearing and damper suffer' },
    { wrong: 'a long bolt in a short hole', cost: 'a cracked cover, or water behind it' },
    { wrong: 'the pointer believed', cost: 'ignition timed to a mark that lies' },
  ],
  acts: [
    felt(
      'cover-clear',
      10,
      'Hold the cover on dry: nothing touches, seal in the middle.',
      'Where it touches; bolt length of each hole',
    ),
    {
      id: 'cover-tightened',
      minutes: 15,
      joint: 'timing-cover',
      does: 'Wet the seal, centre the cover, tighten it by bolt card.',
      ask: 'Value and where it is from',
      answer: 'value',
      asked: 'torque',
      closes: true,
      noReturn: 'the cover closes on plugs and drive',
    },
    felt('damper-on', 15, 'Draw the damper on with its tool, key in line.', 'How far it went; key seen', {
      noReturn: 'pressed: drawing it off again wears its fit',
    }),
    {
      id: 'damper-tightened',
      minutes: 10,
      joint: 'damper',
      does: 'Tighten the damper bolt.',
      ask: 'Value and where it is from',
      answer: 'value',
      asked: 'torque',
    },
    value(
      'angle',
      'pointer-proved',
      10,
      'Prove the pointer against the dead centre that was found.',
      'How far the mark is off; mark made new',
      { chain: 'order' },
    ),
    {
      id: 'flywheel-tightened',
      minutes: 20,
      joint: 'flywheel',
      does: 'Fit flywheel or drive plate and tighten it crosswise.',
      ask: 'Value and where it is from',
      answer: 'value',
      asked: 'torque',
      two: 'holding the flywheel',
      chain: 'order',
    },
  ],
};
