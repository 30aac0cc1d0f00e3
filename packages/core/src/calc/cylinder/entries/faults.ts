/** Refusals of this subject in the words of the catalogue. */
import type { Outcome } from '../../../quantity/index.js';
import { type Conflict, conflict } from '../../catalogue/index.js';
import type { RodTooShort } from '../../crank/index.js';

export const rodTooShort = (fault: RodTooShort): Outcome<never, Conflict> =>
  conflict(['stroke', 'rodLength', 'pinOffset'], 'the crank could not turn', {
    input: 'rodLength',
    above: fault.needed,
  });
