import { describe, expect, it } from 'vitest';
import { localTime, seeded, uuidV7 } from './seeded.js';

describe('the chance of the demonstration', () => {
  it('is the same for the same seed and another for another', () => {
    const draw = (seed: number) => Array.from({ length: 5 }, seeded(seed));
    expect(draw(4)).toEqual(draw(4));
    expect(draw(4)).not.toEqual(draw(5));
  });
  it('spreads evenly over its range', () => {
    const chance = seeded(1);
    const tenths = new Array<number>(10).fill(0);
    for (let n = 0; n < 10_000; n += 1) tenths[Math.floor(chance() * 10)]! += 1;
    // 1000 expected in each; five standard deviations of a binomial count are 150.
    for (const count of tenths) expect(Math.abs(count - 1000)).toBeLessThan(150);
  });
});

// Worked example of RFC 9562, appendix A.6: Tuesday, February 22, 2022 2:22:22.00 PM GMT-05:00, unix_ts_ms
// 0x017F22E279B0, UUID 017F22E2-79B0-7CC3-98C4-DC0C0C07398F. From memory.
describe('the ids of the demonstration', () => {
  it('carry the time, the version and the variant where RFC 9562 puts them', () => {
    const id = uuidV7(0x017f22e279b0, seeded(1));
    expect(id).toMatch(/^017f22e2-79b0-7[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/);
  });
  it('tell the time of the place with its offset', () => {
    expect(localTime(0x017f22e279b0, -5)).toBe('2022-02-22T14:22:22-05:00');
  });
});
