/** A torque wrench against a target. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { degrees, inch, mm, newtonMetres, poundFeet, toUnit } from '../../quantity/index.js';
import { aimOf, judgeWrench } from './index.js';

const half = { range: { low: newtonMetres(40), high: newtonMetres(200) } };

describe('a torque wrench', () => {
  it('of 40 to 200 N·m is too large for 20 N·m', () => {
    expect(judgeWrench(newtonMetres(20), half).verdict).toBe('below');
  });
  it('is not trusted below a fifth of its top, even where its scale begins lower (common practice, no source)', () => {
    const low = { range: { low: newtonMetres(20), high: newtonMetres(200) } };
    expect(judgeWrench(newtonMetres(39), low).verdict).toBe('low-end');
    expect(judgeWrench(newtonMetres(40), low).verdict).toBe('fits');
  });
  it.each([
    [40, 'fits'],
    [200, 'fits'],
    [201, 'above'],
  ] as const)('of 40 to 200 N·m, at %s N·m: %s', (target, verdict) => {
    expect(judgeWrench(newtonMetres(target), half).verdict).toBe(verdict);
  });
  it('whose top nobody noted is unknown, not good', () => {
    expect(judgeWrench(newtonMetres(95), {}).verdict).toBe('range-unknown');
  });

  // reference/fasteners-open.md O-25 (torque wrench manual p. 7; torqwrench.com) and O-26 (TM 9-254).
  it.each([
    [50, 16, 2, 44.44],
    [30, 12, 6, 20],
  ])('%s lbf·ft wanted, wrench %s in, adapter %s in straight ahead: set to %s lbf·ft', (wanted, grip, reach, set) => {
    const adapter = { wrench: inch(grip), reach: inch(reach), angle: degrees(0) };
    expect(toUnit('torque', judgeWrench(poundFeet(wanted), { adapter }).setting!, 'lbf·ft')).toBeCloseTo(set, 2);
  });
  it.each([
    [0, 78.26],
    [45, 81.37],
    [90, 90],
    [135, 100.68],
    [180, 105.88],
  ])('90 N·m, 400 mm, adapter of 60 mm at %s degrees: set to %s N·m', (angle, set) => {
    const adapter = { wrench: mm(400), reach: mm(60), angle: degrees(angle) };
    expect(judgeWrench(newtonMetres(90), { ...half, adapter }).setting).toBeCloseTo(set, 2);
  });
  it('is judged at what is set on it: 42 N·m with an adapter straight ahead falls below its range', () => {
    const adapter = { wrench: mm(400), reach: mm(60), angle: degrees(0) };
    expect(judgeWrench(newtonMetres(42), { ...half, adapter }).verdict).toBe('below');
  });
  it('with an adapter folded back past the hand turns the other way', () => {
    const adapter = { wrench: mm(200), reach: mm(250), angle: degrees(180) };
    expect(judgeWrench(newtonMetres(90), { ...half, adapter })).toEqual({ verdict: 'adapter-turns-back', aim: 90 });
  });
  it('that reads 4 % high is set 4 % higher', () => {
    expect(judgeWrench(newtonMetres(100), { ...half, readsTimes: 1.04 }).setting).toBeCloseTo(104, 9);
  });
  it('is aimed at the middle of a window, or at its one end', () => {
    expect(aimOf({ low: newtonMetres(80), high: newtonMetres(90) })).toBe(85);
    expect(aimOf({ low: newtonMetres(80) })).toBe(80);
    expect(aimOf({})).toBeUndefined();
  });
  it('never fits outside its range or below a fifth of its top', () => {
    const number = fc.double({ min: 1, max: 400, noNaN: true });
    fc.assert(
      fc.property(number, number, number, (aim, one, other) => {
        const [low, high] = [Math.min(one, other), Math.max(one, other)];
        const range = { low: newtonMetres(low), high: newtonMetres(high) };
        const fits = judgeWrench(newtonMetres(aim), { range }).verdict === 'fits';
        if (fits) expect(aim >= low - 1e-6 && aim <= high + 1e-6 && aim >= high / 5 - 1e-6).toBe(true);
        else expect(aim < low || aim > high || aim < high / 5).toBe(true);
      }),
    );
  });
});
