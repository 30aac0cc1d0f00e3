import { describe, expect, it } from 'vitest';
import { budgetOf, wholeDegrees } from './budget.js';
import { rectanglePairCoverage } from './coverage.js';
import { modelDoubt } from './model-doubt.js';
import { refusal, result, values } from './run.suite.js';
import { typeB } from './type-b.js';

describe('an uncertainty budget', () => {
  it('with correlated inputs: ten resistors from one standard add like one (JCGM 100, 5.2.2 example, recalled)', () => {
    const pairs = Array.from({ length: 10 }, (_, i) => i + 1).flatMap((i) =>
      Array.from({ length: 10 - i }, (_, k) => `${i}-${i + k + 1}: 1`),
    );
    const found = values('budget-of-numbers', { standards: Array(10).fill('0.1'), correlations: pairs });
    expect(found.combined).toBeCloseTo(1, 10);
    expect(found.effectiveDegrees).toBeUndefined();
    expect(found.wholeDegrees).toBeUndefined();
  });
  it('gives effective degrees by Welch and Satterthwaite, cut down, and Student’s factor (JCGM 100, G.4)', () => {
    const found = values('budget-of-numbers', { standards: ['3', '4'], degrees: ['4', '9'] });
    expect(found.combined).toBeCloseTo(5, 12);
    expect(found.effectiveDegrees).toBeCloseTo(625 / (81 / 4 + 256 / 9), 9);
    expect(found.wholeDegrees).toBe(12);
    expect(found.coverage).toBeCloseTo(2.179, 3);
    expect(found.shares).toEqual([expect.closeTo(36, 9), expect.closeTo(64, 9)]);
    expect(found.contributions).toEqual([3, 4]);
  });
  it('of a result without any doubt has infinite degrees and no shares', () => {
    expect(budgetOf([{ standard: 0, sensitivity: 1, degrees: 3 }])).toEqual({
      contributions: [0],
      combined: 0,
      shares: [0],
      effectiveDegrees: Number.POSITIVE_INFINITY,
    });
  });
  it('that no inputs can have is none; one that only rounding makes negative is 0', () => {
    const line = { standard: 1, sensitivity: 1, degrees: 5 };
    const opposed = (coefficient: number) => budgetOf([line, line], [{ one: 0, other: 1, coefficient }]);
    expect(opposed(-1.001)).toBeUndefined();
    expect(opposed(-1 - 1e-14)?.combined).toBe(0);
  });
  it('a whole number of degrees stays whole through rounding', () => {
    expect([wholeDegrees(15.999999999999998), wholeDegrees(15.99), wholeDegrees(0.2)]).toEqual([16, 15, 1]);
  });
  it('takes less than one degree as one', () => {
    expect(values('budget-of-numbers', { standards: ['1'], degrees: ['0.5'] }).wholeDegrees).toBe(1);
  });
  it('says that degrees are an estimate where inputs are correlated and not all are known exactly', () => {
    const inputs = { standards: ['1', '2'], degrees: [5, 'inf'], correlations: ['1-2: -0.5'] };
    const found = result('budget-of-numbers', inputs);
    expect(found.cautions.map((one) => one.code)).toContain('degrees-estimated');
    expect(found.outputs.combined?.value).toBeCloseTo(Math.sqrt(1 + 4 - 2), 12);
    expect(result('budget-of-numbers', { ...inputs, degrees: ['inf', '∞'] }).cautions).toEqual([]);
  });
  it('keeps the signs of its contributions', () => {
    expect(values('budget', { standards: ['1 mm', '2 mm'], sensitivities: ['-1', '2'] }).contributions).toEqual([
      -1, 4,
    ]);
  });
  it.each([
    [{ standards: ['1', '2'], sensitivities: ['1'] }, /one value each is needed/],
    [{ standards: ['1', '2'], degrees: ['1'] }, /one value each is needed/],
    [{ standards: ['1', '2'], correlations: ['1-3: 0.5'] }, /there are only 2 inputs/],
    [{ standards: ['1', '2'], correlations: ['1-1: 0.5'] }, /correlations, value 1/],
    [{ standards: ['1', '2'], correlations: ['0-1: 0.5'] }, /correlations, value 1/],
    [{ standards: ['1', '2'], correlations: ['1-2: 1.5'] }, /correlations, value 1/],
    [{ standards: ['1', '2'], correlations: ['much'] }, /correlations, value 1/],
    [{ standards: ['1'], degrees: ['none'] }, /degrees, value 1/],
    [{ standards: ['1'], degrees: [' '] }, /degrees, value 1/],
    [{ standards: ['1'], degrees: ['2e9'] }, /degrees, value 1/],
  ])('refuses %j', (inputs, words) => {
    expect(refusal('budget-of-numbers', inputs)).toMatch(words);
  });
});

describe('bounds', () => {
  const bounds = { bound: 6, edgeRatio: 0.5, coverage: 3, level: 0.95 };
  it('become standard uncertainties by their shape (JCGM 100, 4.3)', () => {
    expect(typeB('rectangular', bounds)).toBeCloseTo(6 / Math.sqrt(3), 12);
    expect(typeB('triangular', bounds)).toBeCloseTo(6 / Math.sqrt(6), 12);
    expect(typeB('u-shaped', bounds)).toBeCloseTo(6 / Math.SQRT2, 12);
    expect(typeB('step', bounds)).toBeCloseTo(6 / Math.sqrt(12), 12);
    expect(typeB('trapezoidal', bounds)).toBeCloseTo(6 * Math.sqrt(1.25 / 6), 12);
    expect(typeB('expanded', bounds)).toBe(2);
    expect(typeB('normal-limits', bounds)).toBeCloseTo(6 / 1.959964, 6);
  });
  it('a trapezoid lies between triangle and rectangle', () => {
    expect(typeB('trapezoidal', { ...bounds, edgeRatio: 0 })).toBeCloseTo(typeB('triangular', bounds), 12);
    expect(typeB('trapezoidal', { ...bounds, edgeRatio: 1 })).toBeCloseTo(typeB('rectangular', bounds), 12);
  });
});

describe('two rectangles that rule', () => {
  it('of equal width make a triangle: k(95 %) = 1.90', () => {
    const found = rectanglePairCoverage(1, 1, 0.95);
    expect(found.edgeRatio).toBe(0);
    expect(found.coverage).toBeCloseTo((1 - Math.sqrt(0.05)) * Math.sqrt(6), 12);
  });
  it('one alone makes a rectangle: k(95 %) = 1.65', () => {
    expect(rectanglePairCoverage(3, 0, 0.95).coverage).toBeCloseTo(0.95 * Math.sqrt(3), 12);
  });
  it('meet where the slope begins', () => {
    const level = (2 * 0.5) / 1.5;
    const [below, above] = [rectanglePairCoverage(3, 1, level - 1e-9), rectanglePairCoverage(3, 1, level + 1e-9)];
    expect(below.coverage).toBeCloseTo(above.coverage, 6);
  });
  it('agree with a count over an even grid of both', () => {
    const n = 400;
    const sums = Array.from({ length: n * n }, (_, k) => {
      const [i, j] = [Math.floor(k / n), k % n];
      return Math.abs(50 * ((2 * i + 1) / n - 1) + 25 * ((2 * j + 1) / n - 1));
    }).sort((a, b) => a - b);
    const u = Math.hypot(50, 25) / Math.sqrt(3);
    expect(sums[Math.round(0.95 * n * n)]! / u).toBeCloseTo(rectanglePairCoverage(50, 25, 0.95).coverage, 2);
  });
  it.each([[['1 mm']], [['0 mm', '0 mm']], [['1 mm', '1 mm', '1 mm']]])('are refused as %j', (halfWidths) => {
    expect(refusal('rectangle-coverage', { halfWidths })).toMatch(/two half widths are needed/);
  });
  it('without others combine in squares', () => {
    expect(values('rectangle-coverage', { halfWidths: ['3 mm', '4 mm'] }).combined).toBeCloseTo(5 / Math.sqrt(3), 9);
  });
});

describe('the error of an instrument against a block', () => {
  it('is nothing that can be stated without a contribution', () => {
    expect(refusal('calibration-error', { indication: '1 mm', standard: '1 mm', resolution: '0 mm' })).toMatch(
      /no contribution/,
    );
  });
  it('has its sign: a caliper that reads low', () => {
    expect(
      values('calibration-error', { indication: '24.98 mm', standard: '25 mm', resolution: '0.02 mm' }),
    ).toMatchObject({
      error: expect.closeTo(-0.02, 9),
      edgeRatio: 1,
      coverage: expect.closeTo(0.95 * Math.sqrt(3), 9),
    });
  });
});

describe('the doubt of any formula', () => {
  it('of a product whose factors are 0: only the second order sees it (JCGM 100, 5.1.2 note)', () => {
    const found = modelDoubt(
      ([x, y]) => x! * y!,
      [
        { value: 0, standard: 2 },
        { value: 0, standard: 3 },
      ],
    );
    expect(found.first).toBe(0);
    expect(found.second).toBeCloseTo(6, 12);
  });
  it('of a square at 0: variance of x² is 2u⁴ for a normal x', () => {
    expect(modelDoubt(([x]) => x! ** 2, [{ value: 0, standard: 3 }]).second).toBeCloseTo(Math.SQRT2 * 9, 9);
  });
  it('of a cube: with the third derivative, 9u² + 36u⁴ (its full variance has 15u⁶ more)', () => {
    const found = modelDoubt(([x]) => x! ** 3, [{ value: 1, standard: 0.01 }]);
    expect(found.second ** 2).toBeCloseTo(9e-4 + 36e-8, 8);
  });
  it('of a sum is that of a budget', () => {
    const found = modelDoubt(
      ([x, y]) => x! - 2 * y!,
      [
        { value: 7, standard: 3 },
        { value: 1, standard: 2 },
      ],
    );
    expect(found).toMatchObject({
      effects: [expect.closeTo(3, 9), expect.closeTo(-4, 9)],
      first: expect.closeTo(5, 9),
      second: expect.closeTo(5, 9),
    });
  });
});

describe('a part compared with a standard', () => {
  const still = {
    standard: '50 mm',
    uStandard: '0.001 mm',
    difference: '0.01 mm',
    uDifference: '0 mm',
    expansion: '11.5 ppm/K',
  };
  it('all at 20 °C is the standard and the difference, with infinite degrees', () => {
    const found = values('comparison-with-standard', still);
    expect(found).toMatchObject({ length: expect.closeTo(50.01, 9), combined: expect.closeTo(0.001, 9) });
    expect(found.effectiveDegrees).toBeUndefined();
    expect(found.wholeDegrees).toBeUndefined();
    expect(found.coverage).toBeCloseTo(2.5758, 4);
  });
  it('a standard 1 K warmer than the part is longer than its certificate: the part is longer too', () => {
    const found = values('comparison-with-standard', { ...still, temperatureDifference: '1 K' });
    expect(found.length).toBeCloseTo(50.01 + 50 * 11.5e-6, 9);
  });
  it('a part that expands more, measured warm, is shorter at 20 °C', () => {
    const found = values('comparison-with-standard', { ...still, temperature: '2 K', expansionDifference: '8 ppm/K' });
    expect(found.length).toBeCloseTo(50.01 - 50 * 8e-6 * 2 - 0.01 * 11.5e-6 * 2, 6);
  });
});

describe('repeats and coverage', () => {
  it('even count: the middle is the mean of the two middle ones', () => {
    expect(values('repeats-of-numbers', { readings: ['4', '1', '3', '2'] })).toMatchObject({
      median: 2.5,
      medianDistance: 1,
      range: 3,
      lowest: 1,
      highest: 4,
      degrees: 3,
    });
  });
  it('two readings need a factor of 12.7 for 95 %', () => {
    const found = values('repeats-of-numbers', { readings: ['1', '2'] });
    expect(found.coverage).toBeCloseTo(12.706, 3);
    expect(found.expanded).toBeCloseTo(12.706 / 2, 2);
  });
  it('left out, degrees are infinite: 1.96 for 95 %', () => {
    expect(values('coverage-factor', { level: '95 %' }).coverage).toBeCloseTo(1.95996, 5);
  });
});

describe('critical values', () => {
  it.each([
    [
      { distribution: 'normal', share: '0.975' },
      { value: 1.959964, above: 0.025 },
    ],
    [{ distribution: 'normal', value: '1.959964' }, { below: 0.975 }],
    [{ distribution: 'normal', share: '0.5' }, { value: 0 }],
    [{ distribution: 'student', value: '2.228', degrees: '10' }, { below: 0.975 }],
    [{ distribution: 'chi-square', share: '0.95', degrees: '10' }, { value: 18.307 }],
    [{ distribution: 'chi-square', value: '18.307', degrees: '10' }, { below: 0.95 }],
    [{ distribution: 'chi-square', value: '-1', degrees: '10' }, { below: 0 }],
    [{ distribution: 'f', share: '0.95', degrees: '5', degreesBelow: '10' }, { value: 3.32583 }],
    [{ distribution: 'f', value: '3.32583', degrees: '5', degreesBelow: '10' }, { below: 0.95 }],
  ])('%j (printed tables, recalled)', (inputs, wanted) => {
    const found = values('critical-value', inputs);
    for (const [name, value] of Object.entries(wanted)) expect(found[name]).toBeCloseTo(value, 4);
  });
  it.each([
    [{ distribution: 'normal' }, /either a share or a value/],
    [{ distribution: 'normal', share: '0.5', value: '0' }, /either a share or a value/],
    [{ distribution: 'student', share: '0.5' }, /needs its degrees/],
    [{ distribution: 'f', share: '0.5', degrees: '3' }, /two degrees of freedom/],
  ])('%j are refused', (inputs, words) => {
    expect(refusal('critical-value', inputs)).toMatch(words);
  });
});

describe('doubt through the mechanism', () => {
  it('of a size at 20 °C comes from reading, temperature and expansion, and a Monte Carlo run agrees', () => {
    const run = result(
      'size-at-reference',
      { reading: '101.640 ±0.002 mm', partTemperature: '28 ±1 °C', partExpansion: '11 ±1 ppm/K' },
      { uncertainty: { trials: 4000, seed: 3 } },
    );
    const doubt = run.outputs.size?.uncertainty;
    const one = Array.isArray(doubt) ? undefined : doubt;
    const hand = Math.hypot(0.002, 101.64 * 11e-6, 101.64 * 8e-6);
    expect(one).toMatchObject({ standard: expect.closeTo(hand, 5), monteCarlo: { standard: expect.closeTo(hand, 4) } });
  });
});
