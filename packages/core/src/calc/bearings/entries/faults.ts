/** Refusals of this subject in the words of the catalogue. */
import type { Outcome } from '../../../quantity/index.js';
import { type Conflict, conflict } from '../../catalogue/index.js';

/** A shaft does not turn in a hole that is no larger: a size is wrong, most often a wall read with flat anvils. */
export const noClearance = (inputs: readonly string[]): Outcome<never, Conflict> =>
  conflict(
    inputs,
    'no clearance is left, so one size is wrong: re-measure the shell wall with a ball anvil (a flat one bridges the curve)',
  );
