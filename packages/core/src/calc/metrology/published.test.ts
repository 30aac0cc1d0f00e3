/** Statistics and fits against independent arithmetic: sums of squares by totals, tables, definitions of the fits. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { longShape, outOfRound, roundShares, taperShares } from './bore-shape.js';
import { leastSquaresCircle, minimumZoneCircle } from './circle.js';
import { gaugeSquares, studyByVariance } from './gauge-anova.js';
import { lineThrough } from './line.js';
import { grubbsCritical, grubbsStatistic, robustScores, suspectOf } from './outliers.js';
import { flatnessOf } from './plane.js';
import { incompleteBeta } from './special-functions.js';

// Three people, two trials, four parts: invented. Mean squares by uncorrected totals, chance by SciPy 1.10.1 `stats.f.sf`, worked out apart.
const alike = [
  [
    [10.1, 12.0, 9.1, 11.2],
    [10.3, 11.9, 9.4, 11.1],
  ],
  [
    [10.4, 12.4, 9.5, 11.3],
    [10.5, 12.1, 9.4, 11.6],
  ],
  [
    [10.0, 11.8, 9.0, 11.0],
    [10.2, 12.1, 9.2, 10.9],
  ],
];
/** The same, but that two people read two parts each differently by about 1. */
const unlike = [
  alike[0]!,
  [
    [10.4, 13.4, 8.5, 11.3],
    [10.5, 13.1, 8.4, 11.6],
  ],
  [
    [10.0, 11.8, 9.0, 12.0],
    [10.2, 12.1, 9.2, 11.9],
  ],
];

describe('the analysis of variance of a gauge study', () => {
  it('of people who read alike pools the interaction with the trials', () => {
    const squares = gaugeSquares(alike);
    expect(squares.parts).toBeCloseTo(8.6248611, 6);
    expect(squares.appraisers).toBeCloseTo(0.29625, 6);
    expect(squares.interaction).toBeCloseTo(0.0056944, 6);
    expect(squares.trials).toBeCloseTo(0.0220833, 6);
    expect(squares.chance).toBeCloseTo(0.94637, 5);
    const study = studyByVariance(alike);
    expect(study.repeatability).toBeCloseTo(0.1289200154, 9);
    expect(study.reproducibility).toBeCloseTo(0.1869590963, 9);
    expect(study.interaction).toBe(0);
    expect(study.parts).toBeCloseTo(1.1977924654, 9);
  });

  it('of people who read some parts differently keeps the interaction by itself', () => {
    expect(gaugeSquares(unlike).chance).toBeCloseTo(3.0816e-6, 9);
    const study = studyByVariance(unlike);
    expect(study.repeatability).toBeCloseTo(0.1486046208, 9);
    expect(study.reproducibility).toBeCloseTo(0.5284936665, 9);
    expect(study.interaction).toBeCloseTo(0.5284936665, 9);
    expect(study.parts).toBeCloseTo(1.4735162028, 9);
  });
});

describe('an outlier', () => {
  // NIST/SEMATECH e-Handbook 1.3.5.17.1 (from memory): G 2.4687, critical 2.032 at 5 %, one-sided.
  const masses = [199.31, 199.53, 200.19, 200.82, 201.92, 201.95, 202.18, 245.57];
  it('of the mass readings of the handbook is the last, 2.4687 standard deviations off', () => {
    expect(suspectOf(masses, 'either')).toBe(7);
    // 2.46876: the handbook cuts it.
    expect(grubbsStatistic(masses, 7)).toBeCloseTo(2.46876, 5);
  });
  // The formula with SciPy 1.10.1 `stats.t.ppf`; 2.032, 2.176 and 2.290 are the usual printed ones (from memory).
  it.each([
    [3, 0.05, 1, 1.15312],
    [8, 0.05, 1, 2.03165],
    [10, 0.05, 1, 2.17607],
    [10, 0.05, 2, 2.28995],
    [20, 0.01, 2, 3.0008],
  ] as const)('of %i readings at a risk of %d, %i-sided, begins at %d', (n, risk, sides, value) => {
    expect(grubbsCritical(n, risk, sides)).toBeCloseTo(value, 4);
  });
  it('by the median: 1, 2, 3, 4, 100 have middle 3 and median distance 1, so 100 scores 0.6745 x 97', () => {
    expect(robustScores([1, 2, 3, 4, 100])![4]).toBeCloseTo(65.4265, 10);
    expect(robustScores([1, 2, 3, 4, 100])![0]).toBeCloseTo(-1.349, 10);
  });
});

describe('the incomplete beta function', () => {
  // I_x(a, 1) = x^a and I_x(1, b) = 1 - (1 - x)^b on either side of where the fraction is turned round.
  it.each([0.01, 0.2, 0.5, 0.8, 0.99])('has its closed forms at %d', (x) => {
    for (const n of [0.5, 1, 3, 40]) {
      expect(incompleteBeta(x, n, 1)).toBeCloseTo(x ** n, 12);
      expect(incompleteBeta(x, 1, n)).toBeCloseTo(1 - (1 - x) ** n, 12);
    }
  });
});

/** Points about an uneven circle, off from the origin: angle steps of unlike size, radii a little apart. */
const uneven = fc
  .record({
    x: fc.integer({ min: -50, max: 50 }),
    y: fc.integer({ min: -50, max: 50 }),
    radius: fc.integer({ min: 20, max: 60 }),
    off: fc.array(fc.integer({ min: -20, max: 20 }), { minLength: 7, maxLength: 16 }),
  })
  .map(({ x, y, radius, off }) => {
    const angles = off.map((one, at) => (2 * Math.PI * (at + one / 80)) / off.length);
    return {
      x: off.map((one, at) => x + (radius + one / 100) * Math.cos(angles[at]!)),
      y: off.map((one, at) => y + (radius + one / 100) * Math.sin(angles[at]!)),
    };
  });

describe('a circle through points', () => {
  const far = ({ x, y }: { x: readonly number[]; y: readonly number[] }, cx: number, cy: number) =>
    x.map((one, at) => Math.hypot(one - cx, y[at]! - cy));

  it('of least squares: radial distances are balanced in both directions (its definition, NIST e-Handbook 2.3.4.4)', () => {
    fc.assert(
      fc.property(uneven, (points) => {
        const circle = leastSquaresCircle(points)!;
        const away = far(points, circle.x, circle.y);
        const pull = (of: readonly number[], centre: number) =>
          away.reduce((sum, one, at) => sum + ((one - circle.radius) * (of[at]! - centre)) / one, 0);
        expect(Math.abs(pull(points.x, circle.x))).toBeLessThan(1e-9);
        expect(Math.abs(pull(points.y, circle.y))).toBeLessThan(1e-9);
        expect(circle.radius).toBeCloseTo(away.reduce((sum, one) => sum + one, 0) / away.length, 9);
      }),
    );
  });

  it('of the narrowest ring: no centre beside it has a narrower one, and its radius is the middle of the ring', () => {
    fc.assert(
      fc.property(uneven, (points) => {
        const circle = minimumZoneCircle(points, leastSquaresCircle(points)!);
        const away = far(points, circle.x, circle.y);
        expect(circle.radius).toBeCloseTo((Math.max(...away) + Math.min(...away)) / 2, 9);
        expect(circle.outOfRound).toBeCloseTo(Math.max(...away) - Math.min(...away), 9);
        for (let turn = 0; turn < 24; turn += 1)
          for (const step of [1e-4, 1e-3, 1e-2, 0.1]) {
            const angle = (turn * Math.PI) / 12;
            const beside = far(points, circle.x + step * Math.cos(angle), circle.y + step * Math.sin(angle));
            expect(Math.max(...beside) - Math.min(...beside)).toBeGreaterThan(circle.outOfRound - 1e-7);
          }
      }),
    );
  });

  it('through one point, or through points on one line, is none', () => {
    expect(leastSquaresCircle({ x: [3, 3, 3], y: [1, 1, 1] })).toBeUndefined();
    expect(leastSquaresCircle({ x: [1, 2, 3], y: [1, 2, 3] })).toBeUndefined();
    // On a line along one axis the other has no spread at all.
    expect(leastSquaresCircle({ x: [1, 2, 3], y: [5, 5, 5] })).toBeUndefined();
  });
});

describe('a line through five points, by hand', () => {
  // x 1 to 5, y 2.1 3.9 6.2 7.8 10.1: slope 19.9/10, intercept 6.02 - 5.97, residual squares 0.107, s = sqrt(0.107/3).
  const line = lineThrough([1, 2, 3, 4, 5], [2.1, 3.9, 6.2, 7.8, 10.1])!;
  it('has slope 1.99, intercept 0.05, and the errors of the textbook', () => {
    expect(line.slope).toBeCloseTo(1.99, 12);
    expect(line.intercept).toBeCloseTo(0.05, 12);
    expect(line.slopeError).toBeCloseTo(Math.sqrt(0.107 / 3 / 10), 12);
    expect(line.interceptError).toBeCloseTo(Math.sqrt((0.107 / 3) * (1 / 5 + 9 / 10)), 12);
    expect(line.explained).toBeCloseTo(1 - 0.107 / (39.601 + 0.107), 12);
  });
});

describe('a face', () => {
  // z = 1 + 0.002 x - 0.003 y, and corners by turns 0.01 above and below: by symmetry the plane stays, and both bands are 0.02 wide.
  it('twisted by 0.01 at its corners keeps its tilt and is 0.02 out of flat by both definitions', () => {
    const [x, y] = [
      [10, 40, 10, 40],
      [5, 5, 15, 15],
    ];
    const z = x.map((one, at) => 1 + 0.002 * one - 0.003 * y[at]! + [0.01, -0.01, -0.01, 0.01][at]!);
    const face = flatnessOf({ x, y, z })!;
    expect(face.intercept).toBeCloseTo(1, 12);
    expect(face.slopeX).toBeCloseTo(0.002, 12);
    expect(face.slopeY).toBeCloseTo(-0.003, 12);
    expect(face.leastSquares).toBeCloseTo(0.02, 12);
    expect(face.minimumZone).toBeCloseTo(0.02, 9);
    expect(face.raw).toBeCloseTo(1.055 - 0.965, 12);
  });
  it('of points over each other, or on one line, is none', () => {
    expect(flatnessOf({ x: [1, 1, 1], y: [2, 2, 2], z: [0, 1, 2] })).toBeUndefined();
    expect(flatnessOf({ x: [1, 2, 3], y: [1, 2, 3], z: [0, 1, 2] })).toBeUndefined();
  });
});

describe('the readings that decide a shape', () => {
  it('are the highest and the lowest of the height that differs most', () => {
    const grid = [
      [4.001, 4.003, 4.0025],
      [4.0, 3.999, 4.001],
    ];
    expect(roundShares(grid, 'same-height')).toEqual([
      { direction: 0, height: 1, share: 1 },
      { direction: 1, height: 1, share: -1 },
    ]);
    expect(roundShares(grid, 'worst-of-all')).toEqual([
      { direction: 0, height: 1, share: 1 },
      { direction: 1, height: 1, share: -1 },
    ]);
    expect(taperShares(grid, 'ends')).toEqual([
      { direction: 0, height: 0, share: -1 },
      { direction: 0, height: 2, share: 1 },
    ]);
  });
  it('of heights all alike are the first of the largest and the last of the smallest', () => {
    expect(
      roundShares(
        [
          [4, 4],
          [4, 4],
        ],
        'same-height',
      ),
    ).toEqual([
      { direction: 0, height: 0, share: 1 },
      { direction: 1, height: 0, share: -1 },
    ]);
  });
  it('across heights are never of one direction: 4.009 and 4.000 stand in the first, 4.004 in the other', () => {
    const grid = [
      [4.009, 4.0],
      [4.004, 4.003],
    ];
    expect(outOfRound(grid, 'across-heights')).toBeCloseTo(0.006, 12);
  });
  it('taper of the larger ends takes top and bottom as they are, whichever is larger', () => {
    const wider = [
      [4.0, 4.005],
      [4.001, 4.004],
    ];
    expect(taperShares(wider, 'top-pair-less-bottom-pair')).toEqual([
      { direction: 1, height: 0, share: -1 },
      { direction: 0, height: 1, share: 1 },
    ]);
  });
});

describe('the shape along a bore', () => {
  const along = (...means: readonly number[]) => longShape([means], 0.002);
  it.each([
    [[4.0, 4.002, 4.0], 'straight'],
    [[4.0, 4.0021, 4.0], 'barrel'],
    [[4.0, 3.998, 4.0], 'straight'],
    [[4.0, 3.9979, 4.0], 'waist'],
    [[4.002, 4.001, 4.0], 'straight'],
    [[4.0021, 4.001, 4.0], 'wider at the first end'],
    [[4.0, 4.001, 4.0021], 'wider at the last end'],
  ] as const)('%j is %s where 0.002 is small', (means, shape) => {
    expect(along(...means)).toBe(shape);
  });
});
