import { describe, expect, it } from 'vitest';
import { localTime } from './local-time.js';

// Form of the text: RFC 3339, section 5.6.
describe('the time of an entry', () => {
  it('is what the clock on the wall showed, with its offset', () => {
    const moment = new Date('2026-03-01T18:04:05.678Z');
    expect(localTime(moment, 60)).toBe('2026-03-01T19:04:05+01:00');
    expect(localTime(moment, -210)).toBe('2026-03-01T14:34:05-03:30');
    expect(localTime(moment, 0)).toBe('2026-03-01T18:04:05+00:00');
  });

  it('names the same moment', () => {
    const moment = new Date('2026-12-31T23:59:59Z');
    expect(new Date(localTime(moment, 345)).getTime()).toBe(moment.getTime());
  });
});
