import { createRequire } from 'node:module';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  chiSquareBelow,
  chiSquareQuantile,
  fisherAbove,
  fisherBelow,
  fisherQuantile,
  normalBelow,
  normalQuantile,
  studentBelow,
  studentQuantile,
} from './distributions.js';
import { incompleteBeta, logGamma, upperGamma } from './special-functions.js';

/** An independent library of statistics (jstat 1.9.6). */
interface Statistics {
  readonly normal: { cdf(x: number, mean: number, s: number): number; inv(p: number, mean: number, s: number): number };
  readonly studentt: { cdf(x: number, nu: number): number; inv(p: number, nu: number): number };
  readonly chisquare: { cdf(x: number, nu: number): number; inv(p: number, nu: number): number };
  readonly centralF: { cdf(x: number, a: number, b: number): number; inv(p: number, a: number, b: number): number };
}
const { jStat } = createRequire(import.meta.url)('jstat') as { readonly jStat: Statistics };

const shares = [0.005, 0.025, 0.05, 0.25, 0.5, 0.6, 0.9, 0.975, 0.99, 0.999];
const degrees = [1, 2, 3, 5, 10, 16, 30, 120];

describe('distributions against an independent library (jstat)', () => {
  it('normal: share below and quantile', () => {
    for (const z of [-6, -3, -1, -0.1, 0, 0.5, 1, 1.96, 3, 5])
      expect(normalBelow(z)).toBeCloseTo(jStat.normal.cdf(z, 0, 1), 7);
    for (const p of shares) expect(normalQuantile(p)).toBeCloseTo(jStat.normal.inv(p, 0, 1), 6);
  });
  it('Student (the library is 2e-8 off at t = 0, where the share is a half)', () => {
    for (const nu of degrees) {
      for (const t of [-4, -1, 0, 0.3, 1, 2, 6]) expect(studentBelow(t, nu)).toBeCloseTo(jStat.studentt.cdf(t, nu), 7);
      for (const p of shares) {
        const wanted = jStat.studentt.inv(p, nu);
        expect(Math.abs(studentQuantile(p, nu) - wanted)).toBeLessThan(1e-6 * (1 + Math.abs(wanted)));
      }
    }
  });
  it('chi-square', () => {
    for (const nu of degrees) {
      for (const x of [0.01, 0.5, 1, 4, 20, 100])
        expect(chiSquareBelow(x, nu)).toBeCloseTo(jStat.chisquare.cdf(x, nu), 8);
      for (const p of shares) {
        const wanted = jStat.chisquare.inv(p, nu);
        expect(Math.abs(chiSquareQuantile(p, nu) - wanted)).toBeLessThan(1e-6 * (1 + wanted));
      }
    }
  });
  it('F', () => {
    for (const a of [1, 2, 5, 12])
      for (const b of [2, 5, 20]) {
        for (const f of [0.2, 1, 3, 9]) expect(fisherBelow(f, a, b)).toBeCloseTo(jStat.centralF.cdf(f, a, b), 7);
        for (const p of [0.05, 0.5, 0.95]) expect(fisherQuantile(p, a, b)).toBeCloseTo(jStat.centralF.inv(p, a, b), 5);
      }
  });
});

describe('distributions against printed tables (recalled)', () => {
  it.each([
    [0.975, 1, 12.706],
    [0.975, 4, 2.776],
    [0.95, 10, 1.812],
    [0.995, 16, 2.921],
    [0.975, Number.POSITIVE_INFINITY, 1.96],
  ])('t at %s with %s degrees is %s', (p, nu, t) => {
    expect(studentQuantile(p, nu)).toBeCloseTo(t, 3);
  });
  it('chi-square 95 % with 10 degrees is 18.307, F 95 % with 5 and 10 is 3.326', () => {
    expect(chiSquareQuantile(0.95, 10)).toBeCloseTo(18.307, 3);
    expect(fisherQuantile(0.95, 5, 10)).toBeCloseTo(3.3258, 4);
  });
});

describe('distributions as such', () => {
  it('are even about 0, and a quantile goes back to its share', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.001, max: 0.999, noNaN: true }), fc.integer({ min: 1, max: 200 }), (p, nu) => {
        expect(studentQuantile(p, nu)).toBeCloseTo(-studentQuantile(1 - p, nu), 6);
        expect(studentBelow(studentQuantile(p, nu), nu)).toBeCloseTo(p, 9);
        expect(normalBelow(normalQuantile(p))).toBeCloseTo(p, 9);
        expect(chiSquareBelow(chiSquareQuantile(p, nu), nu)).toBeCloseTo(p, 9);
        expect(fisherBelow(fisherQuantile(p, nu, 7), nu, 7)).toBeCloseTo(p, 8);
      }),
      { numRuns: 100 },
    );
  });
  it('F with one degree is t squared', () => {
    expect(fisherQuantile(0.95, 1, 9)).toBeCloseTo(studentQuantile(0.975, 9) ** 2, 8);
  });
  it('below and above make 1', () => {
    for (const f of [0, 0.3, 2, 8]) expect(fisherAbove(f, 3, 11) + fisherBelow(f, 3, 11)).toBeCloseTo(1, 12);
  });
  it('many degrees come to the normal', () => {
    expect(studentBelow(1.5, 1e7)).toBeCloseTo(normalBelow(1.5), 7);
  });
});

describe('special functions', () => {
  it('gamma: factorials and the root of pi', () => {
    expect(Math.exp(logGamma(6))).toBeCloseTo(120, 9);
    expect(Math.exp(logGamma(0.5))).toBeCloseTo(Math.sqrt(Math.PI), 12);
    expect(logGamma(171)).toBeCloseTo(706.5730622457874, 9);
  });
  it('incomplete beta: closed forms and its ends', () => {
    expect(incompleteBeta(0.3, 1, 1)).toBeCloseTo(0.3, 14);
    expect(incompleteBeta(0.3, 2, 1)).toBeCloseTo(0.09, 14);
    expect(incompleteBeta(0.3, 1, 3)).toBeCloseTo(1 - 0.7 ** 3, 14);
    expect(incompleteBeta(0.9, 5, 2)).toBeCloseTo(6 * 0.9 ** 5 - 5 * 0.9 ** 6, 12);
    expect([incompleteBeta(0, 2, 3), incompleteBeta(-1, 2, 3)]).toEqual([0, 0]);
    expect([incompleteBeta(1, 2, 3), incompleteBeta(2, 2, 3)]).toEqual([1, 1]);
  });
  it('upper gamma: closed forms and its end', () => {
    expect(upperGamma(1, 2)).toBeCloseTo(Math.exp(-2), 14);
    expect(upperGamma(1, 0.5)).toBeCloseTo(Math.exp(-0.5), 14);
    expect(upperGamma(2, 5)).toBeCloseTo(6 * Math.exp(-5), 14);
    expect(upperGamma(3, 0)).toBe(1);
  });
});
