import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { degrees } from '../../quantity/index.js';
import { camEngine, DEGREE } from './degreeing.suite.js';
import { makeupWith, valueIn } from './rows.suite.js';
import { timingOf } from './timing.js';

const of = (figures: Readonly<Record<string, number>> = {}) => timingOf(makeupWith(camEngine(), figures));

describe('timing diagram', () => {
  it('shows what the sheet prints at its checking lift, negative events unclipped', () => {
    const answer = of();
    const degree = (key: string) => valueIn(answer, `${key}-at-lift`)! / DEGREE;
    expect(degree('intake-opens')).toBeCloseTo(2, 9);
    expect(degree('exhaust-closes')).toBeCloseTo(-1, 9);
    expect(degree('overlap')).toBeCloseTo(1, 9);
    const arc = answer.arcs.find(({ kind, basis }) => kind === 'exhaust' && basis === 'at-lift')!;
    expect([arc.opens, arc.closes]).toEqual([expect.closeTo(180 - 43, 9), expect.closeTo(360 - 1, 9)]);
  });
  it('widens to the seat by the usual allowance where no seat duration is known, and says so', () => {
    const answer = of();
    // 1.00 mm: 25·√(1/1.27) = 22.2, rounded up to 23 degrees at each end.
    expect(valueIn(answer, 'intake-duration')! / DEGREE).toBeCloseTo(220 + 46, 9);
    expect(answer.cautions.join()).toMatch(/usual allowance/);
    expect(of({ 'lobe-duration': degrees(270) }).cautions.join()).not.toMatch(/usual allowance/);
  });
  it('moves every event with the cam and changes no duration, separation or overlap', () => {
    fc.assert(
      fc.property(fc.double({ min: -12, max: 12, noNaN: true }), (advance) => {
        const [now, then] = [of(), of({ 'cam-advance': degrees(advance) })];
        for (const key of ['intake-duration', 'exhaust-duration', 'separation', 'overlap'])
          expect(valueIn(then, key)).toBeCloseTo(valueIn(now, key)!, 9);
        const moved = (key: string) => (valueIn(then, key)! - valueIn(now, key)!) / DEGREE;
        expect(moved('intake-opens')).toBeCloseTo(advance, 7);
        expect(moved('exhaust-closes')).toBeCloseTo(-advance, 7);
      }),
    );
  });
  it('says what is missing of an engine without a card', () => {
    const bare = timingOf(makeupWith({ ...camEngine(), cam: undefined } as never, {}));
    expect(bare.arcs).toEqual([]);
    expect(bare.missing.map(({ key }) => key)).toEqual(expect.arrayContaining(['lobe-duration', 'centreline-wanted']));
  });
});
