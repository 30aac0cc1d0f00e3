import { CONSUMABLES } from '../../consumables.js';
import { HAZARDS } from '../../hazards.js';
import type { Operation } from '../../model.js';
import { felt, list, value } from '../act.js';

/** O30: rockers on, every valve set. */
export const valveSetting: Operation = {
  id: 'valve-setting',
  key: 'O30',
  title: 'Fit the rockers and set every valve',
  phase: 'top-end',
  chain: 'in-turn',
  needs: ['followers', 'cam-timing'],
  consumables: [CONSUMABLES.rockerPivot],
  tools: ['feeler gauges', 'adjusting key', 'bar for the crank'],
  cautions: [HAZARDS.turning, HAZARDS.valvesMeet],
  mistakes: [
    { wrong: 'valve of another cylinder set', cost: 'found once all is buttoned up' },
    { wrong: 'turns taken from another thread or ratio', cost: 'too much preload, valves held open' },
    { wrong: 'set cold to a hot figure', cost: 'noise, or a burnt valve' },
  ],
  acts: [
    {
      id: 'rockers-tightened',
      minutes: 30,
      joint: 'rockers',
      does: 'Fit the rockers, oil holes the right way; tighten them as the sheet says.',
      ask: 'Value and where it is from; which way the holes look',
      answer: 'value',
      asked: 'torque',
      when: ['rockers'],
    },
    felt('lifters-bled', 15, 'Wait until pumped-up lifters have bled down.', 'How long; plungers springy', {
      when: ['hydraulic'],
    }),
    list(
      'shims-chosen',
      40,
      'Read every valve in its place; choose all shims together, old ones moved before new ones are bought.',
      'Lash and shim of each valve',
      { when: ['shims'] },
    ),
    value(
      'length',
      'valve-set',
      4,
      'On its base circle: set the valve as the sheet asks.',
      'Lash, turns or plunger travel; crank position; cold or hot',
      { per: 'valve', setsValve: true, two: 'one turns, one feels' },
    ),
    felt('set-two-turns', 5, 'Turn two full turns by hand.', 'Where it caught, if anywhere'),
    value('length', 'valve-read-again', 2, 'Read or feel the valve again.', 'Lash or play found now', { per: 'valve' }),
    list(
      'valves-spot-checked',
      10,
      'Another way round: read a few valves in the reverse order, by another position.',
      'Which valves, what was found',
      { critical: true },
    ),
  ],
};
