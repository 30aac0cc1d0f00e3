import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { leastSquares, lowest, type SplineEnds, signChange, splineAt, splineThrough } from './index.js';

const steps = (count: number, from: number, to: number) =>
  Array.from({ length: count + 1 }, (_, at) => from + ((to - from) * at) / count);

describe('a cubic spline', () => {
  const places = [-2, -1.5, 0, 0.25, 1, 3];
  const ends: SplineEnds[] = [{ kind: 'natural' }, { kind: 'clamped', first: 1, last: -2 }, { kind: 'periodic' }];

  it('passes through its points, whatever its ends', () => {
    fc.assert(
      fc.property(fc.array(fc.double({ min: -5, max: 5, noNaN: true }), { minLength: 5, maxLength: 5 }), (some) => {
        const values = [...some, some[0]!];
        for (const end of ends) {
          const spline = splineThrough(places, values, end);
          for (const [at, place] of places.entries()) expect(splineAt(spline, place).value).toBeCloseTo(values[at]!, 9);
        }
      }),
    );
  });

  it('reproduces every cubic when its end slopes are given (closed form)', () => {
    const cubic = (x: number) => 2 - x + 3 * x ** 2 - 0.5 * x ** 3;
    const slope = (x: number) => -1 + 6 * x - 1.5 * x ** 2;
    const spline = splineThrough(places, places.map(cubic), { kind: 'clamped', first: slope(-2), last: slope(3) });
    for (const x of steps(37, -2, 3)) {
      const found = splineAt(spline, x);
      expect(found.value).toBeCloseTo(cubic(x), 11);
      expect(found.slope).toBeCloseTo(slope(x), 11);
      expect(found.bend).toBeCloseTo(6 - 3 * x, 11);
    }
  });

  it('nears a sine with the fourth power of the spacing when it is periodic', () => {
    const error = (count: number) => {
      const x = steps(count, 0, 2 * Math.PI);
      const y = x.map((one, at) => (at === count ? 0 : Math.sin(one)));
      const spline = splineThrough(x, y, { kind: 'periodic' });
      return Math.max(
        ...steps(501, 0, 2 * Math.PI).map((one) => Math.abs(splineAt(spline, one).value - Math.sin(one))),
      );
    };
    expect(error(8) / error(16)).toBeGreaterThan(13);
    expect(error(8) / error(16)).toBeLessThan(20);
    expect(error(16) / error(32)).toBeCloseTo(16, -0.5);
  });

  it('joins its ends with like slope and bend when it is periodic', () => {
    const spline = splineThrough(places, [1, 4, -2, 0, 3, 1], { kind: 'periodic' });
    const [first, last] = [splineAt(spline, -2), splineAt(spline, 3)];
    expect(last.slope).toBeCloseTo(first.slope, 10);
    expect(last.bend).toBeCloseTo(first.bend, 10);
    const three = splineThrough([0, 1, 3], [0, 2, 0], { kind: 'periodic' });
    expect(splineAt(three, 3).slope).toBeCloseTo(splineAt(three, 0).slope, 10);
  });

  it('does not bend at natural ends, and has the slope of finite differences inside', () => {
    const spline = splineThrough(places, [1, 4, -2, 0, 3, 1], { kind: 'natural' });
    expect(splineAt(spline, -2).bend).toBe(0);
    expect(splineAt(spline, 3).bend).toBeCloseTo(0, 12);
    for (const x of [-1.7, -0.3, 0.6, 2.2]) {
      const step = 1e-5;
      const [up, down] = [splineAt(spline, x + step), splineAt(spline, x - step)];
      expect(splineAt(spline, x).slope).toBeCloseTo((up.value - down.value) / (2 * step), 6);
      expect(splineAt(spline, x).bend).toBeCloseTo((up.slope - down.slope) / (2 * step), 6);
    }
  });
});

describe('least squares', () => {
  const x = [0, 1, 2, 3, 4, 5];
  const y = [1.1, 2.9, 5.2, 7.1, 8.8, 11.3];

  it('finds the straight line of the normal equations (second route: closed form)', () => {
    const fit = leastSquares([x.map(() => 1), x], y)!;
    const mean = (list: readonly number[]) => list.reduce((a, b) => a + b, 0) / list.length;
    const spread = x.reduce((sum, one) => sum + (one - mean(x)) ** 2, 0);
    const slope = x.reduce((sum, one, at) => sum + (one - mean(x)) * y[at]!, 0) / spread;
    expect(fit.coefficients[1]).toBeCloseTo(slope, 12);
    expect(fit.coefficients[0]).toBeCloseTo(mean(y) - slope * mean(x), 12);
    expect(fit.cofactor[1]?.[1]).toBeCloseTo(1 / spread, 12);
    expect(fit.cofactor[0]?.[0]).toBeCloseTo(1 / 6 + mean(x) ** 2 / spread, 12);
    expect(fit.cofactor[0]?.[1]).toBeCloseTo(-mean(x) / spread, 12);
    expect(fit.cofactor[1]?.[0]).toBeCloseTo(-mean(x) / spread, 12);
  });

  it('leaves residuals square to every column', () => {
    const columns = [x.map(() => 1), x, x.map((one) => one ** 2)];
    const fit = leastSquares(columns, y)!;
    for (const column of columns) {
      expect(column.reduce((sum, one, at) => sum + one * fit.residuals[at]!, 0)).toBeCloseTo(0, 10);
    }
    expect(fit.sum).toBeCloseTo(
      fit.residuals.reduce((sum, one) => sum + one ** 2, 0),
      12,
    );
  });

  it('says nothing when the readings do not tell the columns apart', () => {
    expect(leastSquares([x.map(() => 1), x.map(() => 2)], y)).toBeUndefined();
    expect(leastSquares([[1], [2]], [3])).toBeUndefined();
    expect(leastSquares([[0, 0]], [3, 4])).toBeUndefined();
  });
});

describe('searches', () => {
  it('find a root to the last digit', () => {
    expect(signChange((one) => one ** 2 - 2, 0, 2)).toBeCloseTo(Math.SQRT2, 15);
    expect(signChange((one) => 2 - one ** 2, 2, 0)).toBeCloseTo(Math.SQRT2, 15);
    // Steps of floating point near 0 are endless in practice: the search stops all the same.
    expect(Math.abs(signChange((one) => (one > 0 ? 1 : -1), -1, 3))).toBeLessThan(1e-50);
  });

  it('find the lowest place between the looks, and say when it lies at the end', () => {
    const found = lowest((one) => (one - 1.3) ** 2, [0, 1, 2, 3]);
    expect(found.at).toBeCloseTo(1.3, 6);
    expect(found.atEnd).toBe(false);
    expect(lowest((one) => one, [0, 1, 2])).toEqual({ at: 0, value: 0, atEnd: true });
    expect(lowest((one) => -one, [0, 1, 2])).toEqual({ at: 2, value: -2, atEnd: true });
    expect(lowest((one) => Math.abs(one - 1), [0, 1, 2])).toEqual({ at: 1, value: 0, atEnd: false });
    expect(lowest((one) => (one - 0.2) ** 2, [0, 1]).atEnd).toBe(false);
  });
});
