import { describe, expect, it } from 'vitest';
import { spokenNumber } from './spoken-number.js';

// First line: the wording asked for in the project's bench ergonomics, sound and speech (common practice, no source).
describe('a number said aloud', () => {
  it('gives every digit by itself, with point and the unit', () => {
    expect(spokenNumber('0.0025 in')).toBe('zero point zero zero two five inch');
  });

  it('keeps fifteen apart from fifty', () => {
    expect(spokenNumber('15 N·m')).toBe('one five newton metre');
    expect(spokenNumber('50 N·m')).toBe('five zero newton metre');
  });

  it('keeps the trailing zero, which is resolution', () => {
    expect(spokenNumber('4.030 in')).toBe('four point zero three zero inch');
  });

  it('says a part of a turn and degrees', () => {
    expect(spokenNumber('3/4 turn')).toBe('three over four turn');
    expect(spokenNumber('90°')).toBe('nine zero degrees');
  });

  it('does not take the end of a clause for a decimal mark', () => {
    expect(spokenNumber('cylinder 1, turning 360° forward.')).toBe(
      'cylinder one, turning three six zero degrees forward.',
    );
    expect(spokenNumber('gap 0.30 mm.')).toBe('gap zero point three zero millimetre.');
  });

  it('leaves words alone', () => {
    expect(spokenNumber('oil on the thread')).toBe('oil on the thread');
  });
});
