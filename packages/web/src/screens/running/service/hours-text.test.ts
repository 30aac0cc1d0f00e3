import { describe, expect, it } from 'vitest';
import { hoursTyped } from './hours-text.js';

describe('running hours as they are typed', () => {
  it('are a plain figure, with a point or a comma, with or without its unit', () => {
    expect(hoursTyped('12.5')).toBe(12.5);
    expect(hoursTyped(' 12,5 h')).toBe(12.5);
    expect(hoursTyped('0')).toBe(0);
  });
  it('are never guessed', () => {
    for (const text of ['', '12.5.1', 'ten', '-3', '1,250', '12:30', '1e3'])
      expect(hoursTyped(text), text).toBeUndefined();
  });
});
