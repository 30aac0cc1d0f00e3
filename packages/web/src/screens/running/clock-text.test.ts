import { describe, expect, it } from 'vitest';
import { clockText, secondsText } from './clock-text.js';

describe('time on the clock of the run-in', () => {
  it('is minutes and seconds; what runs beyond its time has a plus', () => {
    expect(clockText(964)).toBe('16:04');
    expect(clockText(0)).toBe('0:00');
    expect(clockText(-32)).toBe('+0:32');
    expect(clockText(3900)).toBe('65:00');
  });
  it('never shows a second as over that still runs', () => {
    expect(clockText(0.2)).toBe('0:01');
  });
});
describe('seconds without oil pressure', () => {
  it('are counted whole, from nought', () => {
    expect(secondsText(0)).toBe('0');
    expect(secondsText(7.99)).toBe('7');
    expect(secondsText(-0.3)).toBe('0');
  });
});
