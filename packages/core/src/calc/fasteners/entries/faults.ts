/** Refusals of this subject in the words of the catalogue. */
import type { Length, Outcome } from '../../../quantity/index.js';
import { type Conflict, conflict } from '../../catalogue/index.js';

/** A bearing ring must be a ring: the outside above the hole. */
export const noRing = (hole: Length): Outcome<never, Conflict> =>
  conflict(['bearingOutside', 'bearingHole'], 'nothing is left to bear on', { input: 'bearingOutside', above: hole });
