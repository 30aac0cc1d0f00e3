import type { InspectionLimit } from '../../engine/index.js';
import type { Word } from './words.js';

/**
 * One line of the vocabulary. `gives` are properties; in them `*` stands for the form that the row names (diameter, out-of-round,
 * taper) and `?` for the ring. The first line whose words are all there, and none of the others, is taken.
 */
export interface Phrase {
  readonly gives: readonly string[];
  readonly words: readonly Word[];
  readonly without?: readonly Word[];
  readonly only?: (limit: InspectionLimit) => boolean;
}

export const phrase = (
  gives: string | readonly string[],
  words: readonly Word[],
  without: readonly Word[] = [],
): Phrase => ({
  gives: typeof gives === 'string' ? [gives] : gives,
  words,
  without,
});
