/** What can hurt or break while a cam is degreed. Common practice, no source; the engine maker's manual comes first. */
import { HAZARDS } from '../../plan/index.js';
import type { Caution } from '../views.js';

export const TURNING_CAUTIONS: readonly Caution[] = [
  HAZARDS.turning,
  {
    word: 'NOTICE',
    can: 'A piston that is driven onto its stop breaks the stop or marks the crown.',
    because: 'Near the top a little turn of the crank pushes very hard.',
    act: 'Come up to the stop slowly from either side. Take it out before the crank turns past the top.',
  },
  {
    word: 'NOTICE',
    can: 'Readings taken in both senses of turning do not agree.',
    because: 'Chain, gears and keys have slack.',
    act: 'Turn only in the running sense. Gone too far: back by a quarter turn, and come up to the place again.',
  },
];
