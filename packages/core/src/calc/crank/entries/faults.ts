/** Refusals of this subject in the words of the catalogue. */
import type { Outcome } from '../../../quantity/index.js';
import { type Conflict, conflict } from '../../catalogue/index.js';
import type { FiringFault } from '../firing.js';
import type { RodTooShort } from '../slider-crank.js';

export const rodTooShort = (fault: RodTooShort): Outcome<never, Conflict> =>
  conflict(['stroke', 'rodLength', 'pinOffset'], 'the crank could not turn', {
    input: 'rodLength',
    above: fault.needed,
  });

export function firingFault(fault: FiringFault): Outcome<never, Conflict> {
  switch (fault.code) {
    case 'no-cylinders':
      return conflict(['firingOrder'], 'the firing order names no cylinder');
    case 'cylinder-twice':
      return conflict(['firingOrder'], `cylinder ${fault.cylinder} is named twice`);
    case 'interval-count':
      return conflict(
        ['firingOrder', 'intervals'],
        `${fault.intervals} intervals for ${fault.cylinders} cylinders; valid is one interval a cylinder`,
      );
    case 'intervals-not-720': {
      const sum = Math.round((fault.sum * 180 * 100) / Math.PI) / 100;
      return conflict(['intervals'], `the intervals sum to ${sum} deg; valid is 720 deg`);
    }
  }
}
