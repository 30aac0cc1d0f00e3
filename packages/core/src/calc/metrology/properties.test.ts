import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { leastSquaresCircle, minimumZoneCircle } from './circle.js';
import { lineThrough, straightness } from './line.js';
import { flatnessOf } from './plane.js';
import { deviation, mean } from './repeats.js';
import { refusal, values } from './run.suite.js';

const micron = (low: number, high: number) => fc.integer({ min: low, max: high }).map((n) => n / 1000);
const readings = fc.array(micron(-500, 500), { minLength: 3, maxLength: 12 });
const num = (value: unknown): number => value as number;
const plain = (all: readonly number[]) => all.map((one) => one.toFixed(6));

describe('repeated readings', () => {
  it('all shifted alike shift the mean and not the scatter', () => {
    fc.assert(
      fc.property(readings, micron(-90_000, 90_000), (x, shift) => {
        const moved = x.map((one) => one + shift);
        expect(mean(moved)).toBeCloseTo(mean(x) + shift, 9);
        expect(deviation(moved)).toBeCloseTo(deviation(x), 9);
      }),
    );
  });
  it('scaled readings scale both', () => {
    fc.assert(
      fc.property(readings, (x) => {
        const inch = x.map((one) => one / 25.4);
        expect(mean(inch)).toBeCloseTo(mean(x) / 25.4, 12);
        expect(deviation(inch)).toBeCloseTo(deviation(x) / 25.4, 12);
      }),
    );
  });
  it('in any order give the same', () => {
    fc.assert(
      fc.property(readings, (x) => {
        const back = [...x].reverse();
        expect(deviation(back)).toBeCloseTo(deviation(x), 12);
      }),
    );
  });
  it('keep every digit behind many that are constant (NIST StRD NumAcc3, recalled: s 0.1)', () => {
    const x = [1_000_000.2, ...Array.from({ length: 1000 }, (_, at) => (at % 2 === 0 ? 1_000_000.1 : 1_000_000.3))];
    expect(mean(x)).toBeCloseTo(1_000_000.2, 9);
    expect(deviation(x)).toBeCloseTo(0.1, 9);
  });
});

const bumps = fc.array(micron(-20, 20), { minLength: 6, maxLength: 24 });
function ring(form: readonly number[], turn: number, cx = 0, cy = 0) {
  const angles = form.map((_, at) => (2 * Math.PI * at) / form.length + turn);
  return {
    x: angles.map((a, at) => cx + (25 + form[at]!) * Math.cos(a)),
    y: angles.map((a, at) => cy + (25 + form[at]!) * Math.sin(a)),
  };
}
/** Zone about every centre of a fine grid: the slow way to the same answer. */
function zoneByGrid(
  points: { x: readonly number[]; y: readonly number[] },
  cx: number,
  cy: number,
  step: number,
): number {
  let best = Number.POSITIVE_INFINITY;
  for (let i = -40; i <= 40; i += 1)
    for (let j = -40; j <= 40; j += 1) {
      const far = points.x.map((one, at) => Math.hypot(one - cx - i * step, points.y[at]! - cy - j * step));
      best = Math.min(best, Math.max(...far) - Math.min(...far));
    }
  return best;
}

describe('circles', () => {
  it('turned and shifted with the part keep radius and out-of-round', () => {
    fc.assert(
      fc.property(bumps, micron(0, 6283), micron(-3000, 3000), (form, turn, shift) => {
        const still = leastSquaresCircle(ring(form, 0))!;
        const moved = leastSquaresCircle(ring(form, turn, shift, -shift))!;
        expect(moved.radius).toBeCloseTo(still.radius, 9);
        expect(moved.outOfRound).toBeCloseTo(still.outOfRound, 9);
        const zone = minimumZoneCircle(ring(form, 0), still).outOfRound;
        expect(minimumZoneCircle(ring(form, turn, shift, -shift), moved).outOfRound).toBeCloseTo(zone, 7);
      }),
      { numRuns: 60 },
    );
  });
  it('need no wider zone by the minimum zone than by least squares, and no grid of centres finds a narrower one', () => {
    fc.assert(
      fc.property(bumps, (form) => {
        const points = ring(form, 0.1);
        const circle = leastSquaresCircle(points)!;
        const zone = minimumZoneCircle(points, circle);
        expect(zone.outOfRound).toBeLessThanOrEqual(circle.outOfRound);
        for (const step of [1e-3, 1e-4])
          expect(zone.outOfRound).toBeLessThanOrEqual(zoneByGrid(points, zone.x, zone.y, step) + 1e-9);
      }),
      { numRuns: 25 },
    );
  });
  it('through exact points find centre and radius', () => {
    const circle = leastSquaresCircle(ring([0, 0, 0, 0, 0], 0.3, 4, -7))!;
    expect([circle.x, circle.y, circle.radius]).toEqual([
      expect.closeTo(4, 9),
      expect.closeTo(-7, 9),
      expect.closeTo(25, 9),
    ]);
    expect(minimumZoneCircle(ring([0, 0, 0, 0, 0], 0.3, 4, -7), circle).outOfRound).toBeLessThan(1e-12);
  });
  it('may have a point in the middle', () => {
    const star = { x: [1, -1, 0, 0, 0], y: [0, 0, 1, -1, 0] };
    const circle = leastSquaresCircle(star)!;
    expect(circle).toMatchObject({
      x: expect.closeTo(0, 9),
      radius: expect.closeTo(0.8, 9),
      outOfRound: expect.closeTo(1, 9),
    });
    expect(minimumZoneCircle(star, circle).outOfRound).toBeLessThanOrEqual(1);
  });
  it('through points that are all but straight keep what they began with', () => {
    for (const bow of [1e-2, 1e-4, 1e-5, 1e-6]) {
      const arc = { x: [0, 1, 2, 3], y: [0, bow, 0.9 * bow, 0] };
      const circle = leastSquaresCircle(arc);
      if (!circle) continue;
      expect(Number.isFinite(circle.radius)).toBe(true);
      expect(minimumZoneCircle(arc, circle).outOfRound).toBeLessThanOrEqual(circle.outOfRound);
    }
  });
  it('do not go through points on one line, or through one point', () => {
    expect(leastSquaresCircle({ x: [0, 1, 2, 3], y: [0, 1, 2, 3] })).toBeUndefined();
    expect(leastSquaresCircle({ x: [2, 2, 2], y: [5, 5, 5] })).toBeUndefined();
  });
});

const heights = fc.array(micron(-40, 40), { minLength: 12, maxLength: 12 });
const grid = {
  x: Array.from({ length: 12 }, (_, at) => (at % 4) * 100),
  y: Array.from({ length: 12 }, (_, at) => Math.floor(at / 4) * 60),
};

describe('flat faces', () => {
  it('tilted and lifted keep their flatness', () => {
    fc.assert(
      fc.property(heights, micron(-2, 2), micron(-2, 2), micron(-900, 900), (z, a, b, lift) => {
        const flat = flatnessOf({ ...grid, z })!;
        const tilted = flatnessOf({ ...grid, z: z.map((one, at) => one + lift + a * grid.x[at]! + b * grid.y[at]!) })!;
        expect(tilted.leastSquares).toBeCloseTo(flat.leastSquares, 9);
        expect(tilted.minimumZone).toBeCloseTo(flat.minimumZone, 8);
        expect(tilted.slopeX).toBeCloseTo(flat.slopeX + a, 10);
      }),
    );
  });
  it('minimum zone is at most least squares, and holds every point', () => {
    fc.assert(
      fc.property(heights, (z) => {
        const found = flatnessOf({ ...grid, z })!;
        expect(found.minimumZone).toBeLessThanOrEqual(found.leastSquares);
        expect(found.leastSquares).toBeLessThanOrEqual(2 * found.minimumZone + 1e-9);
      }),
    );
  });
  it('minimum zone agrees with a search over tilts', () => {
    fc.assert(
      fc.property(heights, (z) => {
        const found = flatnessOf({ ...grid, z })!;
        let best = Number.POSITIVE_INFINITY;
        for (let i = -60; i <= 60; i += 1)
          for (let j = -60; j <= 60; j += 1) {
            const off = z.map((one, at) => one - i * 1.2e-5 * grid.x[at]! - j * 1.2e-5 * grid.y[at]!);
            best = Math.min(best, Math.max(...off) - Math.min(...off));
          }
        expect(found.minimumZone).toBeLessThanOrEqual(best + 1e-9);
        expect(best - found.minimumZone).toBeLessThan(1.2e-5 * (300 + 120));
      }),
      { numRuns: 10 },
    );
  });
  it('without error have none', () => {
    const flat = flatnessOf({ ...grid, z: grid.x.map((one) => 3 + 0.01 * one) })!;
    expect(flat.minimumZone).toBeLessThan(1e-12);
    expect(flatnessOf({ ...grid, z: grid.x.map(() => 0) })).toMatchObject({ minimumZone: 0, leastSquares: 0 });
  });
  it('need three points that are not on one line', () => {
    expect(flatnessOf({ x: [0, 0, 0], y: [1, 1, 1], z: [0, 1, 2] })).toBeUndefined();
    expect(flatnessOf({ x: [0, 1, 2], y: [0, 1, 2], z: [0, 1, 2] })).toBeUndefined();
  });
});

describe('straight lines', () => {
  const x = [0, 10, 20, 30, 40, 50];
  const y = fc.array(micron(-50, 50), { minLength: 6, maxLength: 6 });
  it('leave residuals that add to nothing and lean nowhere', () => {
    fc.assert(
      fc.property(y, (heightsAlong) => {
        const { residuals } = lineThrough(x, heightsAlong)!;
        expect(residuals.reduce((sum, one) => sum + one, 0)).toBeCloseTo(0, 10);
        expect(residuals.reduce((sum, one, at) => sum + one * x[at]!, 0)).toBeCloseTo(0, 8);
      }),
    );
  });
  it('need a band no wider by the minimum zone', () => {
    fc.assert(
      fc.property(y, (heightsAlong) => {
        const line = lineThrough(x, heightsAlong)!;
        const band = Math.max(...line.residuals) - Math.min(...line.residuals);
        expect(straightness(x, line)).toBeLessThanOrEqual(band + 1e-12);
      }),
    );
  });
  it('need three points whose x are not all alike', () => {
    expect(lineThrough([1, 2], [3, 4])).toBeUndefined();
    expect(lineThrough([1, 1, 1], [3, 4, 5])).toBeUndefined();
  });
  it('explain everything where the points lie on them, level or not', () => {
    expect(lineThrough([0, 1, 2], [5, 5, 5])).toMatchObject({ explained: 1, slope: 0, scatter: 0 });
    const exact = lineThrough([0, 1, 2], [1, 3, 5])!;
    expect(exact).toMatchObject({ explained: 1, slope: 2, intercept: 1 });
    expect(straightness([0, 1, 2], exact)).toBe(0);
  });
});

describe('decisions', () => {
  const window = { low: '-0.100', high: '0.100' };
  it('with a guard band of 0 are those of simple acceptance', () => {
    fc.assert(
      fc.property(micron(-200, 200), micron(0, 50), (x, u) => {
        const given = { readings: plain([x]), ...window, expanded: u.toFixed(6) };
        const simple = values('verdict-of-numbers', { ...given, rule: 'simple' });
        for (const rule of ['guarded', 'guarded-rejection'])
          expect(values('verdict-of-numbers', { ...given, rule, guardFactor: 0 }).accepted).toBe(simple.accepted);
      }),
    );
  });
  it('without uncertainty are sharp: in or out, conformity or nonconformity, probability 0 or 1', () => {
    fc.assert(
      fc.property(micron(-200, 200), (x) => {
        const inside = Math.abs(x) <= 0.1;
        const found = values('verdict-of-numbers', { rule: 'guarded', readings: plain([x]), ...window, expanded: '0' });
        expect(found.verdict).toBe(inside ? 'in' : 'out');
        expect(found.zone).toBe(inside ? 'conformity proven' : 'nonconformity proven');
        const p = values('conformance-of-numbers', { value: plain([x])[0], uncertainty: '0', ...window });
        expect(p.inside).toBe(inside ? 100 : 0);
      }),
    );
  });
  it('a wider guard band never accepts more', () => {
    fc.assert(
      fc.property(micron(-200, 200), micron(0, 60), micron(0, 1000), (x, u, r) => {
        const of = (guardFactor: number) =>
          values('verdict-of-numbers', {
            rule: 'guarded',
            readings: plain([x]),
            ...window,
            expanded: u.toFixed(6),
            guardFactor,
          });
        if (of(r + 0.1).accepted === 'accepted') expect(of(r).accepted).toBe('accepted');
      }),
    );
  });
  it('probabilities inside, below and above make 1', () => {
    fc.assert(
      fc.property(micron(-300, 300), micron(1, 100), (x, u) => {
        const p = values('conformance-of-numbers', { value: plain([x])[0], uncertainty: u.toFixed(6), ...window });
        expect(num(p.inside) + num(p.below) + num(p.above)).toBeCloseTo(100, 9);
      }),
    );
  });
});

describe('temperature', () => {
  it('correction there and back gives the reading again', () => {
    fc.assert(
      fc.property(
        micron(1000, 200_000),
        micron(-20_000, 90_000),
        micron(0, 40_000),
        micron(0, 30_000),
        (d, part, gauge, alpha) => {
          const warm = {
            partTemperature: { value: part, unit: '°C' },
            gaugeTemperature: { value: gauge, unit: '°C' },
            partExpansion: { value: alpha, unit: 'ppm/K' },
          };
          const there = values('size-at-reference', { reading: { value: d, unit: 'mm' }, ...warm });
          const back = values('reading-at-temperature', { size: { value: num(there.size), unit: 'mm' }, ...warm });
          expect(num(back.reading)).toBeCloseTo(d, 9);
        },
      ),
    );
  });
  it('of a steel part on a steel gauge at one temperature needs no correction', () => {
    const found = values('size-at-reference', {
      reading: '80 mm',
      partTemperature: '31 °C',
      gaugeTemperature: '31 °C',
      partMaterial: 'steel',
    });
    expect(found.correction).toBeCloseTo(0, 12);
  });
});

describe('uncertainty', () => {
  it('of nothing is nothing, and scaled inputs scale the result', () => {
    expect(values('budget', { standards: ['0 mm', '0 mm'] })).toMatchObject({
      combined: 0,
      expanded: 0,
      shares: [0, 0],
    });
    fc.assert(
      fc.property(fc.array(micron(1, 50), { minLength: 1, maxLength: 6 }), (u) => {
        const one = values('budget', { standards: mmOf(u) });
        const ten = values('budget', { standards: mmOf(u.map((each) => 10 * each)) });
        expect(num(ten.combined)).toBeCloseTo(10 * num(one.combined), 9);
        expect((one.shares as number[]).reduce((sum, each) => sum + each, 0)).toBeCloseTo(100, 9);
      }),
    );
  });
  it('of two inputs: fully correlated add, fully opposed cancel', () => {
    const of = (r: string) => values('budget', { standards: ['0.003 mm', '0.003 mm'], correlations: [r] }).combined;
    expect(of('1-2: 1')).toBeCloseTo(0.006, 12);
    expect(of('1-2: -1')).toBeCloseTo(0, 9);
    expect(of('1-2: 0')).toBeCloseTo(0.003 * Math.SQRT2, 12);
  });
  it('that no inputs can have is refused', () => {
    const three = { standards: ['1 mm', '1 mm', '1 mm'], correlations: ['1-2: -1', '2-3: -1', '1,3: -1'] };
    expect(refusal('budget', three)).toMatch(/variance would be negative/);
  });
});
const mmOf = (all: readonly number[]) => all.map((value) => ({ value, unit: 'mm' }));
