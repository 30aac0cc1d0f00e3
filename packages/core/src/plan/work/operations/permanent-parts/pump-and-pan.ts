import { CONSUMABLES } from '../../consumables.js';
import { HAZARDS } from '../../hazards.js';
import type { Operation } from '../../model.js';
import { felt, list, photo, value } from '../act.js';

/** O25: oil pump, pickup, pan. */
export const pumpAndPan: Operation = {
  id: 'pump-and-pan',
  key: 'O25',
  title: 'Fit oil pump and pickup; last look; close the pan',
  phase: 'permanent-parts',
  chain: 'built-on',
  needs: ['pistons-in-block'],
  consumables: [CONSUMABLES.pumpGears, CONSUMABLES.lockedScrew, CONSUMABLES.endSeal],
  tools: ['feeler gauges', 'straightedge', 'clay or depth gauge', 'lamp', 'tool count'],
  cautions: [HAZARDS.leftInside, HAZARDS.turning],
  mistakes: [
    {
      wrong: 'drive shaft bound once the pump was tight',
      cost: 'found when the distributor does not seat, or the drive shears',
    },
    { wrong: 'pickup on the floor, or far above it', cost: 'no oil, or air in bends' },
  ],
  acts: [
    value(
      'length',
      'pump-room-read',
      15,
      'Read end and side room of the gears; press the relief valve.',
      'Rooms, and that the relief moves and comes back',
    ),
    felt('pump-packed', 5, 'Pack the gears.', 'With what', { badPause: 'an open packed pump gathers dust' }),
    {
      id: 'pump-tightened',
      minutes: 10,
      joint: 'pump',
      does: 'Fit and tighten the oil pump.',
      ask: 'Value and where it is from',
      answer: 'value',
      asked: 'torque',
    },
    felt('pump-drive-free', 5, 'Turn and lift the drive by hand after the pump is tight.', 'Free, with end room', {
      critical: true,
    }),
    value(
      'length',
      'pickup-gap',
      10,
      'Fix the pickup; read its gap to the pan floor.',
      'Gap, and how the pickup is held',
      { critical: true },
    ),
    photo(
      'bottom-last-seen',
      10,
      'Turn two turns; see a mark on every rod and main fastener.',
      'Photo with every mark',
    ),
    list('pan-counted', 5, 'Count tools, rags and aids before the pan.', 'Counted out and counted in'),
    felt('pan-sealed', 5, 'Gasket dry or as its sheet says; bead at the joints only.', 'Where the bead lies', {
      badPause: 'sealer is curing with the joint open',
    }),
    {
      id: 'pan-tightened',
      minutes: 20,
      joint: 'pan',
      does: 'Set the pan on and tighten it from the middle out.',
      ask: 'Value and where it is from',
      answer: 'value',
      asked: 'torque',
      closes: true,
      noReturn: 'the pan closes on rods and mains',
    },
  ],
};
