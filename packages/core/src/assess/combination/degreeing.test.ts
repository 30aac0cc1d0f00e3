import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { degreeing } from './degreeing.js';
import { camEngine, DEGREE, EXHAUST, every, INTAKE, readingsOfLobe, type Shown } from './degreeing.suite.js';
import { makeupOf } from './makeup.js';
import { answerIn, valueIn } from './rows.suite.js';

const makeup = makeupOf(camEngine());
const STOP = { cylinder: 1, first: -30 * DEGREE, second: 30 * DEGREE };
const ask = (shown: Shown, stops = [STOP]) => degreeing(makeup, readingsOfLobe(shown), stops);
const centreline = (answer: ReturnType<typeof degreeing>, valve = '1-intake-1') =>
  valueIn(answer, 'centreline', { valve })! / DEGREE;
/** A repeatable scatter of a hundredth of a millimetre. */
const scatter = (count: number) => Array.from({ length: count }, (_, at) => 0.01 * Math.sin(7.3 * at * at + at));

describe('degreeing a cam', () => {
  it('finds the middle of a lobe from readings at the lifter, and how much later it stands than the card', () => {
    const answer = ask({ nose: 110, at: every(10) });
    expect(centreline(answer)).toBeCloseTo(110, 3);
    // Card: 2 before, 38 after: 220 degrees at 1 mm, middle 108.
    const later = answerIn(answer, 'later-than-card', { valve: '1-intake-1' })!;
    expect(later.value / DEGREE).toBeCloseTo(2, 3);
    expect(later.verdict).toBe('out');
    expect(later.limit?.from).toMatch(/no source/);
    expect(later.inside).toBeLessThan(0.01);
  });

  it('knows the highest lift no better than the indicator that reads hundredths, however well the curve fits', () => {
    const peak = answerIn(ask({ nose: 110, at: every(10) }), 'peak-lift', { valve: '1-intake-1' })!;
    // Half of the last place either way, taken as rectangular.
    expect(peak.u!).toBeGreaterThanOrEqual(5e-6 / Math.sqrt(3) - 1e-12);
    expect(peak.u!).toBeLessThan(1e-5);
  });

  it('gives the answer of equal lifts while the lobe has but one pair (MO-21: 60.0 and 145.5 make 102.75)', () => {
    const read = (wheel: number) => ({ lobe: INTAKE, wheel: wheel * DEGREE, lift: 0.003, at: 'lifter' }) as const;
    const answer = degreeing(makeup, [read(60), { ...read(145.5) }, { ...read(104), lift: 0.0078 }]);
    expect(answer.lobes[0]!.stage).toBe('equal-lifts');
    expect(centreline(answer)).toBeCloseTo(102.75, 6);
    // The same readings with the stop of that row: the wheel reads -0.75 at the top.
    const moved = degreeing(
      makeup,
      [read(60), read(145.5), { ...read(104), lift: 0.0078 }],
      [{ cylinder: 1, first: -36.75 * DEGREE, second: 35.25 * DEGREE }],
    );
    expect(centreline(moved)).toBeCloseTo(103.5, 6);
    expect(answer.cautions.join(' ')).toMatch(/one pair alone/);
  });

  it('lets a lobe grow: nothing, a flank, a pair, the whole lobe', () => {
    const stage = (at: readonly number[]) => ask({ nose: 108, at }).lobes[0]?.stage;
    expect(stage([])).toBeUndefined();
    expect(stage([-60, -50])).toBe('too-few');
    expect(stage([-60, 0, 60])).toBe('equal-lifts');
    expect(stage([-60, -40, -20, 0, 20, 40, 60])).toBe('whole-lobe');
    const first = ask({ nose: 108, at: [-60, -50] }).lobes[0]!;
    expect(first.next[0]!.flank).toBe('closing');
    expect(first.middle).toBeUndefined();
  });

  it('does not mind the order of the readings', () => {
    const readings = readingsOfLobe({ nose: 106, at: [...every(12), -30, 18], noise: scatter(20) });
    const straight = degreeing(makeup, readings, [STOP]);
    fc.assert(
      fc.property(fc.shuffledSubarray([...readings], { minLength: readings.length }), (shuffled) => {
        expect(degreeing(makeup, shuffled, [STOP])).toEqual(straight);
      }),
      { numRuns: 10 },
    );
  });

  it('shifts the centreline with the wheel and nothing else', () => {
    const noise = scatter(23);
    const fixed = ask({ nose: 108, at: every(10, 110), noise }, []);
    fc.assert(
      fc.property(fc.integer({ min: -1200, max: 1200 }), (tenths) => {
        const turned = tenths / 10;
        const answer = ask({ nose: 108, at: every(10, 110), noise, wheelAtTop: turned }, []);
        expect(centreline(answer) - centreline(fixed)).toBeCloseTo(turned, 6);
        for (const key of ['peak-lift', 'duration-at-1.00mm'])
          expect(valueIn(answer, key)).toBeCloseTo(valueIn(fixed, key)!, 9);
      }),
      { numRuns: 12 },
    );
    // Once the stop is read on the turned wheel, not even the centreline.
    const stop = { cylinder: 1, first: (25 - 30) * DEGREE, second: (25 + 30) * DEGREE };
    const corrected = ask({ nose: 108, at: every(10, 110), noise, wheelAtTop: 25 }, [stop]);
    expect(centreline(corrected)).toBeCloseTo(centreline(fixed), 6);
  });

  it('tells a symmetric lobe symmetrically: read from the other side it has the mirrored middle', () => {
    const at = every(10, 110);
    const noise = scatter(at.length);
    const one = ask({ nose: 108, at, noise });
    const mirrored = ask({ lobe: EXHAUST, nose: -108, at: at.map((angle) => -angle), noise });
    expect(centreline(mirrored, '1-exhaust-1')).toBeCloseTo(centreline(one), 6);
    expect(valueIn(mirrored, 'duration-at-1.00mm')).toBeCloseTo(valueIn(one, 'duration-at-1.00mm')!, 9);
  });

  it('reads durations at the lift of the card and at those of comparison, and the peak', () => {
    const answer = ask({ nose: 108, at: every(5, 120) });
    // Share 1 mm of 8 of the 6-8-10 lobe; solved by hand on 1 − 2.5x² + 5x⁶ − 5x⁸ + 1.5x¹⁰ = 0.125: x = 0.6934.
    expect(valueIn(answer, 'duration-at-1.00mm')! / DEGREE).toBeCloseTo(2 * 135 * 0.6934, 1);
    expect(valueIn(answer, 'peak-lift')).toBeCloseTo(0.008, 6);
    expect(valueIn(answer, 'higher-than-card')).toBeCloseTo(0, 6);
  });

  it('keeps the separation free of the doubt of the dead centre', () => {
    const readings = [
      ...readingsOfLobe({ nose: 108, at: every(10) }),
      ...readingsOfLobe({ lobe: EXHAUST, nose: -112, at: every(10) }),
    ];
    const answer = degreeing(makeup, readings, [STOP]);
    const separation = answerIn(answer, 'separation', { cylinder: 1 })!;
    expect(separation.value / DEGREE).toBeCloseTo(110, 3);
    expect(separation.u!).toBeLessThan(answerIn(answer, 'centreline', { valve: '1-intake-1' })!.u!);
    const turned = degreeing(makeup, readings, [{ ...STOP, first: -33 * DEGREE }]);
    expect(valueIn(turned, 'separation')! / DEGREE).toBeCloseTo(110, 3);
  });

  it('finds lobes of other cylinders by the firing order', () => {
    const lobe = { cylinder: 3, kind: 'intake', index: 1 } as const;
    const answer = degreeing(makeup, readingsOfLobe({ lobe, nose: 107, wheelAtTop: 180, at: every(10) }), [STOP]);
    expect(centreline(answer, '3-intake-1')).toBeCloseTo(107, 3);
  });

  it('takes readings at the valve back to the lobe by ratio and lash', () => {
    const readings = readingsOfLobe({ nose: 108, at: every(8, 80) }).map((one) => ({
      ...one,
      at: 'valve' as const,
      lift: one.lift * 1.5 - 0.0002,
    }));
    const answer = degreeing(makeup, readings, [STOP]);
    expect(centreline(answer)).toBeCloseTo(108, 3);
    expect(valueIn(answer, 'peak-lift')).toBeCloseTo(0.008, 5);
  });

  it('points at the reading that the others do not bear out, and at no other', () => {
    const at = every(10);
    const noise = scatter(at.length);
    expect(ask({ nose: 108, at, noise }).lobes[0]!.suspects).toEqual([]);
    const wrong = noise.map((one, place) => (place === 5 ? one + 0.254 : one));
    const { suspects } = ask({ nose: 108, at, noise: wrong }).lobes[0]!;
    expect(suspects.map(({ reading }) => reading.wheel / DEGREE)).toEqual([expect.closeTo(68, 6)]);
    // Without it the middle comes back.
    const lobe = ask({ nose: 108, at, noise: wrong }).lobes[0]!;
    expect((lobe.middle!.value + suspects[0]!.moves!) / DEGREE).toBeCloseTo(108, 1);
  });

  it('asks next for readings that do lessen the doubt: on the flanks, not at the nose', () => {
    const at = every(15, 75);
    const noise = scatter(at.length);
    const { next, middle } = ask({ nose: 108, at, noise }).lobes[0]!;
    expect(next.length).toBeGreaterThan(0);
    const shares = next.map(({ share }) => share!);
    expect(shares).toEqual([...shares].sort((a, b) => a - b));
    for (const one of next) expect(Math.abs(one.angle - middle!.value) / DEGREE).toBeGreaterThan(20);
  });

  it('claims a doubt that covers the truth about as often as it says', () => {
    const at = every(10);
    let inside = 0;
    for (let run = 0; run < 60; run += 1) {
      const noise = at.map((_, place) => 0.02 * Math.sin(91.7 * (run + 1) * (place + 1) + run));
      const { middle } = ask({ nose: 108, at, noise }, []).lobes[0]!;
      if (Math.abs(middle!.value / DEGREE - 108) <= (2 * middle!.uOfReadings) / DEGREE) inside += 1;
    }
    expect(inside).toBeGreaterThanOrEqual(54);
  });

  it('gives no verdict without stop readings, and says why', () => {
    const answer = ask({ nose: 108, at: every(10) }, []);
    expect(answerIn(answer, 'later-than-card')).toMatchObject({ verdict: 'no data' });
    expect(answer.cautions.join(' ')).toMatch(/no stop readings/);
  });

  it('says that flanks are unlike when the middle goes one way with the lift', () => {
    const readings = readingsOfLobe({ nose: 108, at: every(10) }).map((one, place) =>
      place > 9 ? { ...one, wheel: one.wheel + 0.04 * (place - 9) } : one,
    );
    expect(degreeing(makeup, readings, [STOP]).cautions.join(' ')).toMatch(/flanks are unlike/);
  });
});
