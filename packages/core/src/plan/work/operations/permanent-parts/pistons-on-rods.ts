import { CONSUMABLES } from '../../consumables.js';
import { HAZARDS } from '../../hazards.js';
import type { Operation } from '../../model.js';
import { felt, photo } from '../act.js';

/** O22: pistons on rods, rings on. */
export const pistonsOnRods: Operation = {
  id: 'pistons-on-rods',
  key: 'O22',
  title: 'Put pistons on rods, and rings on pistons',
  phase: 'permanent-parts',
  chain: 'built-on',
  needs: ['final-wash'],
  consumables: [CONSUMABLES.pin],
  tools: ['pin press or rod heater', 'lock tool', 'ring expander'],
  cautions: [HAZARDS.heat, HAZARDS.edges],
  mistakes: [
    { wrong: 'rod or piston the wrong way round', cost: 'chamfer against its mate, relief under the wrong valve' },
    { wrong: 'ends of the oil expander lapped over', cost: 'it smokes' },
    { wrong: 'second ring upside down', cost: 'it pumps oil' },
  ],
  acts: [
    felt(
      'piston-to-rod',
      3,
      'Lay piston to rod: front mark, valve reliefs, chamfer to its fillet, for its bank.',
      'Which way each faces',
      { per: 'cylinder' },
    ),
    felt('pin-in', 6, 'Fit the pin by its kind: pressed or floating.', 'Turns free, middle found, end room', {
      per: 'cylinder',
      noReturn: 'a pressed pin is not pressed twice',
      two: 'pressing with heat',
    }),
    felt(
      'pin-locks-in',
      3,
      'Seat the locks and turn each in its groove; press on the pin where it is pressed.',
      'Snapped in on both sides, or no locks on this piston',
      { per: 'cylinder', badPause: 'a pin without both locks looks finished' },
    ),
    felt(
      'rings-on',
      5,
      'Fit expander, rails, second, top: dots up, ends butted.',
      'Each ring free in its groove, mark up',
      { per: 'cylinder' },
    ),
    photo('ring-ends-placed', 2, 'Turn the ring ends to their clock places.', 'Photo of the ends', { per: 'cylinder' }),
  ],
};
