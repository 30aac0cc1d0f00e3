import type { Length } from '../../quantity/index.js';

/**
 * How much too thick a flat measuring face reads on the hollow side of a shell: h = R − √(R² − w²/4) [m].
 *
 * R `insideRadius` of the shell, w `faceWidth` across the curve, both [m], above 0, w below 2·R: the face bridges the
 * curve and rests on its edges. NaN beyond. A ball anvil has no such error.
 * Example: R 1.225 in, w 0.123 in: 0.00155 in, and the pair of shells doubles it.
 * Source: rise of an arc over its chord.
 */
export function flatFaceError(insideRadius: Length, faceWidth: Length): Length {
  const half = faceWidth / 2;
  // The difference of two near-equal numbers, written so that it keeps its digits.
  return (half ** 2 / (insideRadius + Math.sqrt(insideRadius ** 2 - half ** 2))) as Length;
}
