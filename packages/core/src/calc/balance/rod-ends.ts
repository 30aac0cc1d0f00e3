import type { Length, Mass } from '../../quantity/index.js';

/** A rod as two masses, one at each eye. */
export interface RodEnds {
  readonly bigEnd: Mass;
  readonly smallEnd: Mass;
}

/**
 * Rod parted into its two ends by its centre of mass [kg]: big end = m·(l − x)/l, small end = m·x/l.
 *
 * m `total`, l `rodLength` between the eyes, x `fromBigEnd` of the centre of mass from the big eye [m], 0 to l. The two
 * masses have the same sum and centre, which is what the usual bobweight counts with.
 * Example: 600 g, 150 mm, 40 mm: 440 and 160 g. Source: lever; `khurmi-balance`.
 */
export const rodEndsByCentre = (total: Mass, rodLength: Length, fromBigEnd: Length): RodEnds => {
  const smallEnd = (total * fromBigEnd) / rodLength;
  return { bigEnd: (total - smallEnd) as Mass, smallEnd: smallEnd as Mass };
};
