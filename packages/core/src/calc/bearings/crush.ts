import type { Length } from '../../quantity/index.js';

/**
 * Interference on the diameter that shell ends standing proud make: δ = Σh/π [m].
 *
 * h `proud` heights by which shell ends stand above the parting line [m], each end counted once: four in a pair that
 * stands proud on both sides. Holds while the heights are small against the bore.
 * Example: four ends of 0.0015 in: 0.00191 in. Source: excess of circumference over π.
 */
export function crushInterference(proud: readonly Length[]): Length {
  return (proud.reduce((sum, one) => sum + one, 0) / Math.PI) as Length;
}

/**
 * Free spread of a shell half: its width across the ends, free, less the housing bore [m]. Positive: it stays in by
 * its own spring. Spread says nothing about crush. Source: definition.
 */
export function freeSpread(freeWidth: Length, housing: Length): Length {
  return (freeWidth - housing) as Length;
}
