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

/**
 * Next number, evenly spread in 0 (exclusive) to 1 (exclusive), and the state after it.
 *
 * A Weyl sequence whose words are mixed by two multiply-and-shift rounds; 2³² steps until it repeats.
 * Source: the 32-bit finaliser of a published hash by A. Appleby (public domain), constants from memory.
 */
export function nextEven(state: RandomState): readonly [number, RandomState] {
  const word = (state.word + STEP) >>> 0;
  let mixed = Math.imul(word ^ (word >>> 16), 0x85ebca6b);
  mixed = Math.imul(mixed ^ (mixed >>> 13), 0xc2b2ae35);
  mixed = (mixed ^ (mixed >>> 16)) >>> 0;
  return [(mixed + 0.5) / 2 ** 32, { word, spare: state.spare }];
}

/** Next number of the standard normal distribution. Source: G. E. P. Box and M. E. Muller, 1958 (from memory). */
export function nextNormal(state: RandomState): readonly [number, RandomState] {
  if (state.spare !== undefined) return [state.spare, { word: state.word, spare: undefined }];
  const [first, between] = nextEven(state);
  const [second, { word }] = nextEven(between);
  const radius = Math.sqrt(-2 * Math.log(first));
  const angle = 2 * Math.PI * second;
  return [radius * Math.cos(angle), { word, spare: radius * Math.sin(angle) }];
}
