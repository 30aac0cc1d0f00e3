import type { Length } from '../../quantity/index.js';

/** Diameters of one bore from top to bottom, across (thrust) and along the crank [m]; both the same length, 1 or more. */
export interface BoreGrid {
  readonly across: readonly Length[];
  readonly along: readonly Length[];
}

export interface BoreShape {
  /** Largest |across − along| at one height. */
  readonly outOfRound: Length;
  /** Largest of one direction less smallest of the other, across heights: the rule of some makers. */
  readonly outOfRoundAnyHeight: Length;
  /** Larger of |top − bottom| of the two directions. */
  readonly taperEnds: Length;
  /** Larger of (largest − smallest) of the two directions: finds barrel and waist as well. */
  readonly taperSpread: Length;
  /** Largest of the top pair less smallest of the bottom pair. */
  readonly taperPairs: Length;
  readonly largest: Length;
  readonly smallest: Length;
}

const spread = (list: readonly number[]): number => Math.max(...list) - Math.min(...list);
const ends = (list: readonly Length[]): number => Math.abs((list[0] as Length) - (list.at(-1) as Length));

/**
 * Out of round and taper of a bore by each of the rules that are in print; a limit belongs to one of them.
 *
 * Two directions cannot see an odd number of lobes. Source: `bore-grid`, `bore-cylindricity`, `bore-taper-spread`,
 * `bore-taper-pairs`. Example: across 95.524, 95.520, 95.512, along 95.512, 95.514, 95.509 mm: out of round 0.012,
 * taper by ends 0.012.
 */
export function boreShape({ across, along }: BoreGrid): BoreShape {
  const all = [...across, ...along];
  const rounds = across.map((one, at) => Math.abs(one - (along[at] as Length)));
  const any = Math.max(Math.max(...across) - Math.min(...along), Math.max(...along) - Math.min(...across));
  const top = Math.max(across[0] as Length, along[0] as Length);
  const bottom = Math.min(across.at(-1) as Length, along.at(-1) as Length);
  return {
    outOfRound: Math.max(...rounds) as Length,
    outOfRoundAnyHeight: any as Length,
    taperEnds: Math.max(ends(across), ends(along)) as Length,
    taperSpread: Math.max(spread(across), spread(along)) as Length,
    taperPairs: (top - bottom) as Length,
    largest: Math.max(...all) as Length,
    smallest: Math.min(...all) as Length,
  };
}
