import type { Length } from '../../quantity/index.js';

/** The two halves of a plain bearing, each measured at its crown, 90° from the parting line. */
export interface ShellPair {
  readonly upper: Length;
  readonly lower: Length;
}

/**
 * Oil clearance on the diameter: C = H − tu − tl − J [m].
 *
 * H `housing` bore without shells at bolt torque, tu and tl `walls`, J `journal` (its largest diameter), all [m], above
 * 0. Negative: the sizes contradict each other, as a shaft turns in no such hole. Bearing theory uses C/2.
 * Example: H 68.350, walls 2.430, J 63.440 mm: 0.050 mm. Source: definition, by subtraction.
 */
export function oilClearance(housing: Length, walls: ShellPair, journal: Length): Length {
  return (housing - walls.upper - walls.lower - journal) as Length;
}

/**
 * Journal to grind to: J = H − tu − tl − C [m]; symbols as in `oilClearance`, C `clearance` on the diameter.
 *
 * Example: H 75.005, walls 2.637, C 0.017 mm: 69.714 mm. Source: `oilClearance` solved for J.
 */
export function journalForClearance(housing: Length, walls: ShellPair, clearance: Length): Length {
  return (housing - walls.upper - walls.lower - clearance) as Length;
}

/** Ends of a range of sizes, low at most high. */
export interface Sizes {
  readonly low: Length;
  readonly high: Length;
}

/**
 * Least and most clearance that parts from stated ranges can give: each part at the end that closes or opens it [m].
 *
 * Symbols as in `oilClearance`. Worst case by interval arithmetic: all parts at their ends together.
 * Example: H 74.032..74.038, walls 2.492..2.495, J 68.994..69.000 mm: 0.042..0.060 mm.
 * Source: interval arithmetic on `oilClearance`.
 */
export function worstCaseClearance(
  housing: Sizes,
  walls: { readonly upper: Sizes; readonly lower: Sizes },
  journal: Sizes,
): Sizes {
  const tight = { upper: walls.upper.high, lower: walls.lower.high };
  const loose = { upper: walls.upper.low, lower: walls.lower.low };
  return {
    low: oilClearance(housing.low, tight, journal.high),
    high: oilClearance(housing.high, loose, journal.low),
  };
}

/** How the clearances of a set of parts lie to a printed window. */
export type Agreement = 'equal' | 'inside' | 'reaches outside' | 'cannot';

/** Ends that differ by no more than this [m] are equal: half of the last digit in which shells are graded. */
const HALF_DIGIT = 0.5e-6;

/**
 * Whether part ranges can give a printed clearance: `equal` ends within 0.5 µm, all `inside`, some combinations
 * `reaches outside`, or `cannot`: none inside. The last two say that a figure is misprinted or misread.
 *
 * `found` from `worstCaseClearance`, `printed` window [m]. Source: comparison of two ranges.
 */
export function agreement(found: Sizes, printed: Sizes): Agreement {
  const below = printed.low - found.low;
  const above = found.high - printed.high;
  if (Math.abs(below) <= HALF_DIGIT && Math.abs(above) <= HALF_DIGIT) return 'equal';
  if (below <= HALF_DIGIT && above <= HALF_DIGIT) return 'inside';
  return found.low > printed.high || found.high < printed.low ? 'cannot' : 'reaches outside';
}

/** Clearance that the trade allows for each unit of journal diameter. */
const LEAST_SHARE = 0.00075;
const MOST_SHARE = 0.001;

/**
 * Rule of thumb for the clearance of a journal: 0.00075 to 0.0010 of its diameter [m].
 *
 * Example: journal 2.000 in: 0.0015 to 0.0020 in. The engine maker's window outranks it.
 * Source: bearing maker's leaflet, bibliography key `clearance-rule`.
 */
export function clearanceByRule(journal: Length): Sizes {
  return { low: (LEAST_SHARE * journal) as Length, high: (MOST_SHARE * journal) as Length };
}
