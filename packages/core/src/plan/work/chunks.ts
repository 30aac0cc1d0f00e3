const MOST = 9;

/**
 * Cuts a list of so many acts into chunks as even as can be, at most nine in each; with five acts or more none is below five. Returns the
 * number of its chunk for each act, from 1. Chunks of 5 to 9: checklist guideline on long lists tied to one assembly (read); the number
 * is common practice, no source.
 */
export function chunksOf(count: number): readonly number[] {
  const chunks = Math.max(1, Math.ceil(count / MOST));
  return Array.from({ length: count }, (_, index) => Math.floor((index * chunks) / count) + 1);
}
