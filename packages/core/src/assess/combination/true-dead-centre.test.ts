import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { makeupOf } from './makeup.js';
import { bareEngine } from './rows.suite.js';
import { trueDeadCentre, WHEEL_DOUBT, wheelAtTopOf } from './true-dead-centre.js';

const DEGREE = Math.PI / 180;
const stop = (first: number, second: number, cylinder = 1) => ({
  cylinder,
  first: first * DEGREE,
  second: second * DEGREE,
});
const topOf = (...stops: ReturnType<typeof stop>[]) => trueDeadCentre(stops)!.top / DEGREE;

describe('true top dead centre by a positive stop', () => {
  it('lies midway between the stop readings, those before the top carried as negative (MO-21)', () => {
    const found = trueDeadCentre([stop(-36.75, 35.25)])!;
    expect(found.top / DEGREE).toBeCloseTo(-0.75, 9);
    expect(found.correction / DEGREE).toBeCloseTo(0.75, 9);
    expect(found.eachSide[0]! / DEGREE).toBeCloseTo(36, 9);
    expect(found.slipped).toBe(false);
  });

  it('does not mind whether the wheel counts to 360, where its zero lies, or which side was read first', () => {
    expect(topOf(stop(323.25, 35.25))).toBeCloseTo(-0.75, 9);
    expect(topOf(stop(35.25, -36.75))).toBeCloseTo(-0.75, 9);
    // Zero of the wheel at the bottom: 150 and 210 degrees are 30 either side of 180.
    expect(Math.abs(topOf(stop(150, 210)))).toBeCloseTo(180, 9);
    expect(topOf(stop(150, -150))).toBeCloseTo(topOf(stop(150, 210)), 9);
  });

  it('moves with the wheel and with nothing else', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -90, max: 90, noNaN: true }),
        fc.double({ min: 15, max: 60, noNaN: true }),
        (turned, each) => {
          const found = trueDeadCentre([stop(turned - each, turned + each)])!;
          expect(found.top / DEGREE).toBeCloseTo(turned, 7);
          expect(found.eachSide[0]! / DEGREE).toBeCloseTo(each, 7);
        },
      ),
    );
  });

  it('has half the doubt of the wheel from two pairs of one reading each side (root of 4)', () => {
    expect(trueDeadCentre([stop(-36, 36)])!.u).toBeCloseTo(WHEEL_DOUBT / Math.SQRT2, 12);
    expect(trueDeadCentre([stop(-36, 36), stop(-36, 36)])!.u).toBeCloseTo(WHEEL_DOUBT / 2, 12);
  });

  it('says that the wheel slipped when a repeated pair has another middle', () => {
    const steady = trueDeadCentre([stop(-36, 36), stop(-36.25, 36)])!;
    expect(steady.slipped).toBe(false);
    const slipped = trueDeadCentre([stop(-36, 36), stop(-34, 38)])!;
    expect(slipped.slipped).toBe(true);
    expect(slipped.cautions.join(' ')).toMatch(/do not agree/);
    expect(slipped.u).toBeCloseTo(1 * DEGREE, 9);
  });

  it('warns of a stop so near the top that the piston hardly moves', () => {
    expect(trueDeadCentre([stop(-5, 6)])!.cautions.join(' ')).toMatch(/within ten degrees/);
  });

  it('answers nothing without readings', () => {
    expect(trueDeadCentre([])).toBeUndefined();
  });

  it('finds the top of another cylinder by the firing order: 1-3-4-2, half a turn apart', () => {
    const makeup = makeupOf(bareEngine());
    const at = (cylinder: number) => wheelAtTopOf(makeup, { top: 0, cylinder: 1 }, cylinder)! / DEGREE;
    expect([1, 3, 4, 2].map(at)).toEqual([0, 180, 360, 540].map((angle) => expect.closeTo(angle, 9)));
  });
});
