import type { Length } from '../../quantity/index.js';

/** A worn section as two half ellipses about the original axis [m]: half-widths toward the major and the minor thrust side, and along the crank. */
export interface WornSection {
  readonly major: number;
  readonly minor: number;
  readonly along: number;
}

/**
 * Section of a worn bore from its two diameters [m].
 *
 * `across` thrust diameter, `along` diameter along the crank, `standard` the unworn size; `share` 0 to 1 of the thrust
 * wear lies on the major side. Wear along the crank is taken as even. Source: derived.
 */
export function wornSection(across: Length, along: Length, standard: Length, share: number): WornSection {
  const wear = across - standard;
  return { major: standard / 2 + share * wear, minor: standard / 2 + (1 - share) * wear, along: along / 2 };
}

/**
 * Farthest point of a half ellipse from a point on its axis [m].
 *
 * Half-widths a `semi` toward the half that is looked at and b `along` beside it; the point lies d `away` on the other
 * side of the centre (negative: on the same side). On (a·cos t, b·sin t) the squared distance (a·cos t + d)² + (b·sin t)²
 * has its largest value at cos t = a·d/(b² − a²) when b > a and that lies between 0 and 1, else at an end.
 * Source: derived (derivative set to zero). Example: a circle of 50 mm with d = 1 mm: 51 mm.
 */
export function farthest(semi: number, along: number, away: number): number {
  const squared = (c: number) => (semi * c + away) ** 2 + along ** 2 * (1 - c ** 2);
  const inside = along > semi ? Math.min(1, Math.max(0, (semi * away) / (along ** 2 - semi ** 2))) : 0;
  return Math.sqrt(Math.max(squared(0), squared(1), squared(inside)));
}

/** Radius of the smallest circle about an axis moved by `shift` toward the major side that takes in every section [m]. */
export const reachAt = (sections: readonly WornSection[], shift: number): number =>
  Math.max(
    ...sections.map((one) => Math.max(farthest(one.major, one.along, -shift), farthest(one.minor, one.along, shift))),
  );

/** Golden section; 100 steps narrow any bore's shift far below a nanometre. */
const GOLDEN = (Math.sqrt(5) - 1) / 2;
const STEPS = 100;

export interface CleanUp {
  readonly diameter: Length;
  /** Shift of the axis toward the major side at which it is needed. */
  readonly shift: Length;
}

/**
 * Smallest diameter that cleans up a bore worn to ellipses, when the axis may move by up to `most` [m] toward either side
 * of the thrust direction (never along the crank, never tilted).
 *
 * The reach is a largest distance to points, so it is convex in the shift and a golden-section search finds its least.
 * Source: derived. Example: one section worn 0.1 mm on one wall, along the crank unworn at 100 mm: shift 0.05, 100.1 mm.
 */
export function smallestCleanUp(sections: readonly WornSection[], most: Length): CleanUp {
  let low = -most as number;
  let high = most as number;
  for (let step = 0; step < STEPS; step += 1) {
    const width = GOLDEN * (high - low);
    if (reachAt(sections, high - width) <= reachAt(sections, low + width)) high = low + width;
    else low = high - width;
  }
  const middle = (low + high) / 2;
  const shift = [0, middle].reduce((best, one) => (reachAt(sections, one) < reachAt(sections, best) ? one : best));
  return { diameter: (2 * reachAt(sections, shift)) as Length, shift: shift as Length };
}
