/**
 * Seeded random numbers for the Monte Carlo cross-check. Pure: the state goes in and comes out, so that the same seed
 * gives the same figures on every machine.
 */
export interface RandomState {
  readonly word: number;
  /** Normal numbers come in pairs: the one that is not used yet. */
  readonly spare: number | undefined;
}
export const seeded = (seed: number): RandomState => ({ word: seed >>> 0, spare: undefined });

const STEP = 0x9e3779b9;

/** Mixes a word and spreads it over 0 (exclusive) to 1 (exclusive). */
function even(word: number): number {
  let mixed = Math.imul(word ^ (word >>> 16), 0x85ebca6b);
  mixed = Math.imul(mixed ^ (mixed >>> 13), 0xc2b2ae35);
  mixed = (mixed ^ (mixed >>> 16)) >>> 0;
  return (mixed + 0.5) / 2 ** 32;
}

/**
 * Next number, evenly spread in 0 (exclusive) to 1 (exclusive), and the state after it.
 *
 * A Weyl sequence whose words are mixed by two multiply-and-shift rounds; 2³² steps until it repeats.
 * Source: the 32-bit finaliser of a published hash by A. Appleby (public domain), constants from memory.
 */
export function nextEven(state: RandomState): readonly [number, RandomState] {
  const word = (state.word + STEP) >>> 0;
  return [even(word), { word, spare: state.spare }];
}

/**
 * Fills a row of one or more places with the next numbers of the standard normal distribution and answers the state
 * after them.
 *
 * Polar method: a point evenly spread in the unit circle gives two independent numbers.
 * Source: G. Marsaglia and T. A. Bray, 1964 (from memory).
 */
export function fillNormals(state: RandomState, row: Float64Array): RandomState {
  let { word, spare } = state;
  let at = 0;
  if (spare !== undefined) {
    row[0] = spare;
    spare = undefined;
    at = 1;
  }
  while (at < row.length) {
    const x = 2 * even((word + STEP) >>> 0) - 1;
    word = (word + 2 * STEP) >>> 0;
    const y = 2 * even(word) - 1;
    const square = x * x + y * y;
    if (square >= 1) continue;
    const stretch = Math.sqrt((-2 * Math.log(square)) / square);
    row[at] = x * stretch;
    if (at + 1 < row.length) row[at + 1] = y * stretch;
    else spare = y * stretch;
    at += 2;
  }
  return { word, spare };
}

/** Next number of the standard normal distribution, as `fillNormals`. */
export function nextNormal(state: RandomState): readonly [number, RandomState] {
  const row = new Float64Array(1);
  const after = fillNormals(state, row);
  return [row[0]!, after];
}
