import { CONSUMABLES } from '../../consumables.js';
import type { Operation } from '../../model.js';
import { felt, list, photo, value } from '../act.js';

/** O16: gallery and core plugs, dowels, restrictors, wet liners. */
export const plugsAndLiners: Operation = {
  id: 'plugs-and-liners',
  key: 'O16',
  title: 'Close the galleries; fit core plugs, dowels and liners',
  phase: 'permanent-parts',
  chain: 'in-turn',
  needs: ['final-wash'],
  consumables: [CONSUMABLES.taperPlug, CONSUMABLES.cupPlug],
  tools: ['the count of plugs from the clean', 'rod or air for the galleries', 'drift of the plug’s size'],
  cautions: [],
  mistakes: [
    { wrong: 'one plug missing behind cover or flywheel', cost: 'no oil pressure at the first start' },
    {
      wrong: 'a plug that stands into the cam bore or a gallery',
      cost: 'a cam that does not go in, a main that starves',
    },
  ],
  acts: [
    list('plugs-counted', 10, 'Lay the plugs out against the count of the clean.', 'Number and place of each'),
    photo(
      'gallery-plugs-in',
      20,
      'Fit the front and rear gallery plugs, also those that a cover or gear will hide.',
      'Photo of each end, with the number',
      { critical: true, noReturn: 'behind cover and flywheel it cannot be seen' },
    ),
    felt(
      'hidden-plug-in',
      10,
      'Look for a plug under the rear main cap or deep in the block, and fit it.',
      'Where it sits, or that this block has none',
      { critical: true, noReturn: 'under the rear cap it cannot be seen' },
    ),
    felt(
      'galleries-rodded',
      15,
      'Send a rod or air through every gallery.',
      'Each one open, and the air comes out where it should',
    ),
    felt('core-plugs-in', 20, 'Drive the core plugs square, to their depth.', 'Depth and squareness'),
    felt('dowels-in', 5, 'Fit the dowels at both ends of the deck.', 'How far each stands proud', { per: 'head' }),
    felt(
      'liner-in',
      8,
      'Wet the seals as the manual says; push the liner home by hand force.',
      'Seals not twisted, seat reached',
      { per: 'cylinder', when: ['wet-liners'], noReturn: 'a seal that was pushed in is not used again' },
    ),
    value(
      'length',
      'liner-height',
      5,
      'Hold the liner down as the manual says; read how far it stands proud.',
      'Protrusion',
      { per: 'cylinder', when: ['wet-liners'] },
    ),
  ],
};
