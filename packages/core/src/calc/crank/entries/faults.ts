/** Refusals of this subject in the words of the catalogue. */
import type { Outcome } from '../../../quantity/index.js';
import { type Conflict, conflict } from '../../catalogue/index.js';
import type { FiringFault } from '../firing.js';
import { describeFiringFault } from '../firing-words.js';
import type { RodTooShort } from '../slider-crank.js';

export const rodTooShort = (fault: RodTooShort): Outcome<never, Conflict> =>
  conflict(['stroke', 'rodLength', 'pinOffset'], 'the crank could not turn', {
    input: 'rodLength',
    above: fault.needed,
  });

/** Every fault of a firing order and its intervals, beside those of the two that were given wrong. */
export function firingFault(faults: readonly FiringFault[]): Outcome<never, Conflict> {
  return conflict(['firingOrder', 'intervals'], faults.map(describeFiringFault).join('; '));
}
