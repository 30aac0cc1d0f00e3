import { describe, expect, it } from 'vitest';
import { turnWords } from './turn-words.js';

// How turns of a nut are counted at the bench: common practice, no source.
describe('turns of the nut in words', () => {
  it.each([
    [0.125, '1/8'],
    [0.5, '1/2'],
    [0.625, '5/8'],
    [0.75, '3/4'],
    [1, '1'],
    [1.25, '1 1/4'],
    [0, '0'],
  ])('%f is %s', (turns, words) => expect(turnWords(turns)).toBe(words));

  it('stay decimal where no eighth fits', () => {
    expect(turnWords(0.7)).toBe('0.7');
  });
});
