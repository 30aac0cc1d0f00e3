import { CONSUMABLES } from '../../consumables.js';
import { HAZARDS } from '../../hazards.js';
import type { Operation } from '../../model.js';
import { felt, list, photo, value } from '../act.js';

/** O32: ignition or injection timed, fuel joints closed. */
export const ignition: Operation = {
  id: 'ignition',
  key: 'O32',
  title: 'Time the ignition or the injection; close the fuel joints',
  phase: 'top-end',
  chain: 'in-turn',
  needs: ['front-and-rear', 'valve-setting', 'intake'],
  consumables: [CONSUMABLES.camJournal],
  tools: ['degree mark that was proved', 'lamp', 'line spanners'],
  cautions: [HAZARDS.fire, HAZARDS.turning],
  mistakes: [
    {
      wrong: 'set on the overlap instead of firing',
      cost: 'a turn out: it spits back and grinds the cam while cranking',
    },
    {
      wrong: 'leads in order, but against the running of the rotor',
      cost: 'it does not start, and the paste is wiped off',
    },
  ],
  acts: [
    felt(
      'firing-centre',
      10,
      'Bring cylinder 1 to firing dead centre: both its valves shut and loose, the last one rocking.',
      'Which valves are loose, which rock',
    ),
    photo(
      'rotor-placed',
      15,
      'Drop the distributor to the drive mark; rotor at the post of cylinder 1.',
      'Photo of rotor and mark',
      { when: ['petrol'] },
    ),
    list(
      'leads-placed',
      10,
      'Lay the leads round the cap in firing order, the way the rotor turns.',
      'Order, and which way it turns',
      { when: ['petrol'] },
    ),
    value(
      'angle',
      'spark-set',
      10,
      'Set the standing advance by the proved mark; nip the clamp.',
      'Degrees before dead centre',
      { when: ['petrol'], badPause: 'a clamp that is only nipped moves' },
    ),
    value(
      'angle',
      'injection-set',
      20,
      'Time the injection pump by its marks or by spill.',
      'Degrees before dead centre',
      { when: ['diesel'] },
    ),
    value(
      'length',
      'injector-in',
      8,
      'Put a new washer under the injector; clamp it down evenly.',
      'How far the tip stands out; leak-off joined',
      { per: 'cylinder', when: ['diesel'] },
    ),
    felt(
      'fuel-joints-closed',
      15,
      'Close every fuel joint, pull at each pipe, and look with pressure on.',
      'Each joint, dry or wet',
      { critical: true },
    ),
  ],
};
