import { describe, expect, it } from 'vitest';
import { interruption } from './use-away.js';

// Ten minutes, a reload and another person: the project's bench ergonomics section 7 (common practice, no source).
describe('coming back to the bench', () => {
  const minutes = (n: number) => n * 60_000;

  it('asks after a page was opened anew, however short the time', () => {
    expect(interruption(undefined, 'Ada', 0)).toBe('opened-again');
  });

  it('asks after more than ten minutes without a hand on the device', () => {
    expect(interruption({ at: 0, person: 'Ada' }, 'Ada', minutes(10))).toBeUndefined();
    expect(interruption({ at: 0, person: 'Ada' }, 'Ada', minutes(10) + 1)).toBe('paused');
  });

  it('asks when another person takes over, at once', () => {
    expect(interruption({ at: 0, person: 'Ada' }, 'Ben', 1)).toBe('other-person');
  });
});
