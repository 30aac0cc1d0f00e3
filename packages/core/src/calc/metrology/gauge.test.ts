import { describe, expect, it } from 'vitest';
import { gaugeSquares } from './gauge-anova.js';
import { studyByRanges } from './gauge-study.js';
import { dixonStatistic, robustScores, suspectOf } from './outliers.js';
import { refusal, values } from './run.suite.js';

const small = { appraisers: 2, trials: 2, parts: 2 };
const study = (readings: readonly number[], more: object = {}) =>
  values('gauge-study-of-numbers', { readings, ...small, ...more });

describe('a gauge study', () => {
  it('needs people times trials times parts readings', () => {
    expect(refusal('gauge-study-of-numbers', { readings: [1, 2, 3], ...small })).toMatch(/make 8 readings/);
  });
  it('of readings that are all alike says that the gauge is too coarse', () => {
    expect(refusal('gauge-study-of-numbers', { readings: Array(8).fill(3), ...small })).toMatch(/too coarse/);
  });
  it('of a perfect gauge finds only parts', () => {
    const found = study([1, 5, 1, 5, 1, 5, 1, 5]);
    expect(found).toMatchObject({
      repeatability: 0,
      reproducibility: 0,
      gauge: 0,
      classes: 1000,
      grade: 'good',
      percentGauge: 0,
    });
    expect(study([1, 5, 1, 5, 1, 5, 1, 5], { method: 'analysis-of-variance' })).toMatchObject({
      repeatability: 0,
      gauge: 0,
    });
  });
  it('of one part measured twice over cannot tell classes: 1, not acceptable', () => {
    expect(study([1, 1, 2, 2, 3, 3, 4, 4])).toMatchObject({ classes: 1, grade: 'not acceptable' });
  });
  it('takes 6 standard deviations of the gauge of the tolerance, or as many as asked', () => {
    const readings = [2, 4, 3, 4, 3, 5, 3, 6];
    const gauge = study(readings).gauge as number;
    expect(study(readings, { tolerance: '20' }).percentTolerance).toBeCloseTo((600 * gauge) / 20, 6);
    expect(study(readings, { tolerance: '20', spread: '5.15' }).percentTolerance).toBeCloseTo((515 * gauge) / 20, 6);
    expect(study(readings).percentTolerance).toBeUndefined();
  });
  it('a range above D4 times the mean range points to a slip (two trials: 3.267, printed 3.27)', () => {
    expect(study([2, 4, 3, 4, 3, 5, 3, 6]).rangeLimit).toBeCloseTo(0.5 * 3.267, 3);
  });
  it('takes people who scatter no more than the gauge as alike', () => {
    expect(
      studyByRanges([
        [
          [0, 0],
          [2, 2],
        ],
        [
          [2, 2],
          [0, 0],
        ],
      ]).reproducibility,
    ).toBe(0);
  });
  it('finds people who read some parts differently (hand arithmetic: 2 people, 2 parts crossed)', () => {
    // Person 1 reads part 1 high and part 2 low, person 2 the other way round: all of it is interaction.
    const readings = [
      [
        [4.1, 2.1],
        [3.9, 1.9],
      ],
      [
        [2.1, 4.1],
        [1.9, 3.9],
      ],
    ];
    const squares = gaugeSquares(readings);
    expect(squares).toMatchObject({ parts: expect.closeTo(0, 9), appraisers: expect.closeTo(0, 9) });
    expect(squares.interaction).toBeCloseTo(8, 9);
    expect(squares.trials).toBeCloseTo(0.02, 9);
    const found = study(readings.flat(2), { method: 'analysis-of-variance' });
    expect(found.interaction).toBeCloseTo(Math.sqrt((8 - 0.02) / 2), 9);
    expect(found.partVariation).toBe(0);
    expect(found.grade).toBe('not acceptable');
  });
});

describe('groups', () => {
  it('need two, and one with two readings that scatter', () => {
    const of = (readings: readonly number[], groupSizes: readonly number[]) =>
      refusal('between-groups-of-numbers', { readings, groupSizes });
    expect(of([1, 2, 3], [2])).toMatch(/the groups take 2 readings, 3 are given/);
    expect(of([1, 2], [2])).toMatch(/two groups/);
    expect(of([1, 2], [1, 1])).toMatch(/two groups/);
    expect(of([1, 1, 2, 2], [2, 2])).toMatch(/no group has any scatter/);
  });
  it('of lengths give squares in mm² whatever was typed', () => {
    const found = values('between-groups', {
      readings: ['1 mm', '0.2 cm', '3 mm', '2 mm', '3 mm', '4 mm'],
      groupSizes: [3, 3],
    });
    expect(found).toMatchObject({
      betweenSquares: expect.closeTo(1.5, 9),
      withinSquares: expect.closeTo(4, 9),
      f: expect.closeTo(1.5, 9),
    });
    expect(found.groupMeans).toEqual([expect.closeTo(2, 9), expect.closeTo(3, 9)]);
    expect(found.betweenDeviation).toBeCloseTo(Math.sqrt(1.5), 9);
    expect(found.chance).toBeCloseTo(28.786, 2);
  });
});

describe('outliers', () => {
  it('a suspect is the end asked for, or the farther one', () => {
    expect(suspectOf([1, 2, 9], 'lowest')).toBe(0);
    expect(suspectOf([1, 2, 9], 'either')).toBe(2);
    expect(suspectOf([1, 8, 9], 'either')).toBe(0);
    expect(suspectOf([1, 5, 9], 'either')).toBe(2);
  });
  it.each(['grubbs', 'dixon', 'robust'])('%s needs three readings', (test) => {
    expect(refusal(`outlier-${test}-of-numbers`, { readings: [1, 2] })).toMatch(/3 readings or more/);
  });
  it('readings that are all alike hold no outlier', () => {
    expect(values('outlier-grubbs-of-numbers', { readings: [2, 2, 2] })).toMatchObject({
      statistic: 0,
      verdict: 'keep',
    });
    expect(values('outlier-dixon-of-numbers', { readings: [2, 2, 2] })).toMatchObject({
      statistic: 0,
      verdict: 'keep',
    });
    expect(robustScores([2, 2, 2, 9])).toBeUndefined();
    expect(refusal('outlier-robust', { readings: ['1 mm', '1 mm', '1 mm', '2 mm'] })).toMatch(
      /more than half of the readings are alike/,
    );
  });
  it('Dixon looks at the end asked for', () => {
    expect(dixonStatistic([1, 2, 9], 'highest')).toBeCloseTo(7 / 8, 12);
    expect(dixonStatistic([1, 2, 9], 'lowest')).toBeCloseTo(1 / 8, 12);
    expect(values('outlier-dixon-of-numbers', { readings: [1, 2, 9], end: 'lowest' })).toMatchObject({
      statistic: expect.closeTo(0.125, 9),
      place: 1,
    });
    expect(values('outlier-dixon-of-numbers', { readings: [9, 2, 1] }).place).toBe(1);
  });
  it('Dixon’s table ends at 30 readings (95 %: 0.298)', () => {
    const readings = Array.from({ length: 30 }, (_, at) => at);
    expect(values('outlier-dixon-of-numbers', { readings }).critical).toBeCloseTo(0.298, 9);
    expect(refusal('outlier-dixon-of-numbers', { readings: [...readings, 30] })).toMatch(/table ends at 30/);
  });
  it('Dixon’s table falls with every reading more, and rises with the level', () => {
    const rows = Array.from({ length: 28 }, (_, k) => {
      const readings = Array.from({ length: k + 3 }, (_unused, at) => at);
      return values('outlier-dixon-of-numbers', { readings }).criticals as readonly number[];
    });
    for (const [at, row] of rows.entries()) {
      expect(row[0]! < row[1]! && row[1]! < row[2]!).toBe(true);
      const before = rows[at - 1];
      if (before) for (const k of [0, 1, 2]) expect(row[k]!).toBeLessThan(before[k]!);
    }
  });
  it('the median finds two at once', () => {
    const found = values('outlier-robust-of-numbers', { readings: [10, 11, 12, 11, 10, 30, -9] });
    expect(found).toMatchObject({ outliers: [6, 7], verdict: 'outlier: measure again', median: 11, medianDistance: 1 });
    expect(found.robustDeviation).toBeCloseTo(1 / 0.6745, 6);
    expect(values('outlier-robust-of-numbers', { readings: [1, 2, 3] }).verdict).toBe('keep');
  });
});
