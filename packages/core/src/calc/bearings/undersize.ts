import type { Length } from '../../quantity/index.js';

/**
 * Wall of an undersize shell: t + u/2 [m]. "Undersize" names the journal: each half is thicker by half of it.
 *
 * t `standardWall`, u `undersize` of the journal, both [m], u 0 or more.
 * Example: 2.512 mm and 0.25 undersize: 2.637 mm. Source: two shells fill what was ground off the diameter.
 */
export function undersizeWall(standardWall: Length, undersize: Length): Length {
  return (standardWall + undersize / 2) as Length;
}

/**
 * Clearance after exchanging halves for undersize ones: C − (uu + ul)/2 [m].
 *
 * C `clearance` with standard halves, uu and ul the undersize marks of the halves, 0 for standard, all [m].
 * Example: one half of 0.001 in undersize takes 0.0005 in. Source: `undersizeWall`, common practice.
 */
export function clearanceWithHalves(clearance: Length, upper: Length, lower: Length): Length {
  return (clearance - (upper + lower) / 2) as Length;
}

export interface UndersizeChoice {
  readonly undersize: Length;
  /** Standard size less the undersize. */
  readonly finished: Length;
  /** What the worst journal has to spare over the finished size and the grinding allowance. */
  readonly spare: Length;
}

/**
 * Smallest undersize at which every journal of a group cleans up, or undefined when none in the list does.
 *
 * D0 `standard` finished size, d `worn` smallest diameters measured, a `allowance` to be ground off the diameter at
 * the worst place, all [m]: D0 − u ≤ min d − a. The whole group goes to one size.
 * Source: common practice, one undersize for all journals of a group.
 */
export function smallestUndersize(
  standard: Length,
  worn: readonly Length[],
  allowance: Length,
  undersizes: readonly Length[],
): UndersizeChoice | undefined {
  const worst = Math.min(...worn) - allowance;
  const undersize = undersizes.toSorted((a, b) => a - b).find((one) => standard - one <= worst + NANOMETRE);
  if (undersize === undefined) return undefined;
  const finished = (standard - undersize) as Length;
  return { undersize, finished, spare: Math.max(0, worst - finished) as Length };
}
const NANOMETRE = 1e-9;
