import { describe, expect, it } from 'vitest';
import { degrees } from '../../quantity/index.js';
import { type DiameterGrid, longShape, outOfRound } from './bore-shape.js';
import { normalBelow } from './distributions.js';
import { LARGEST_SAMPLE, meanRange, meanRangeOfOne, rangeLimitFactor } from './gauge-constants.js';
import { solve } from './linear-solve.js';
import { mm, refusal, result, values } from './run.suite.js';
import { smallestZone } from './smallest-zone.js';
import { lobeFactor } from './vee-block.js';

const barrel = { directionX: mm([10, 10.02, 10]), directionY: mm([10.01, 10.03, 10]) };

describe('a bore', () => {
  const of = (rules: object) => values('bore-shape', { ...barrel, ...rules });
  it('has as many shapes as makers have definitions (hand arithmetic)', () => {
    expect(of({ outOfRoundRule: 'same-height' }).outOfRound).toBeCloseTo(0.01, 9);
    expect(of({ outOfRoundRule: 'same-height-radial' }).outOfRound).toBeCloseTo(0.005, 9);
    expect(of({ outOfRoundRule: 'across-heights' }).outOfRound).toBeCloseTo(0.03, 9);
    expect(of({ outOfRoundRule: 'worst-of-all' }).outOfRound).toBeCloseTo(0.03, 9);
    expect(of({ taperRule: 'ends' }).taper).toBeCloseTo(0.01, 9);
    expect(of({ taperRule: 'ends-signed-mean' }).taper).toBeCloseTo(0.005, 9);
    expect(of({ taperRule: 'spread' }).taper).toBeCloseTo(0.03, 9);
    expect(of({ taperRule: 'top-pair-less-bottom-pair' }).taper).toBeCloseTo(0.01, 9);
    expect(of({ taperRule: 'spread-of-means' }).taper).toBeCloseTo(0.025, 9);
    expect(of({ cylindricityRule: 'spread-by-direction' }).cylindricity).toBeCloseTo(0.03, 9);
    expect(of({ cylindricityRule: 'spread-of-all' }).cylindricity).toBeCloseTo(0.03, 9);
    expect(of({ cylindricityRule: 'spread-of-all-radial' }).cylindricity).toBeCloseTo(0.015, 9);
  });
  it('across heights takes two different directions, worst-of-all any two readings', () => {
    const grid: DiameterGrid = [
      [10, 10.05],
      [10.02, 10.03],
    ];
    expect(outOfRound(grid, 'across-heights')).toBeCloseTo(0.03, 9);
    expect(outOfRound(grid, 'worst-of-all')).toBeCloseTo(0.05, 9);
  });
  it('without a limit has no verdict; at the limit it is in', () => {
    expect(of({})).toMatchObject({ outOfRoundVerdict: 'no data', sizeVerdict: 'no data', shape: 'barrel' });
    expect(of({ outOfRoundLimit: '0.01 mm', cylindricityLimit: '0.029 mm' })).toMatchObject({
      outOfRoundVerdict: 'in',
      cylindricityVerdict: 'out',
    });
    expect(of({ taperRule: 'ends-signed-mean', taperLimit: '0.004 mm' }).taperVerdict).toBe('out');
  });
  it('must keep its size everywhere', () => {
    expect(of({ low: '10 mm' }).sizeVerdict).toBe('in');
    expect(of({ high: '10.03 mm' }).sizeVerdict).toBe('in');
    expect(of({ high: '10.029 mm' }).sizeVerdict).toBe('out');
    expect(of({ low: '10.001 mm', high: '11 mm' }).sizeVerdict).toBe('out');
  });
  it('takes three and four directions', () => {
    const more = { directionThree: mm([10.05, 10, 10]), directionFour: mm([9.99, 10, 10]) };
    expect(of(more)).toMatchObject({ largest: expect.closeTo(10.05, 9), outOfRound: expect.closeTo(0.06, 9) });
  });
  it('needs every direction at every height; one height has no taper, never a taper of 0', () => {
    expect(refusal('bore-shape', { ...barrel, directionY: mm([10]) })).toMatch(/a diameter at every height/);
    const one = { directionX: mm([10]), directionY: mm([10.02]), outOfRoundLimit: '0.02 mm', taperLimit: '0.01 mm' };
    const found = values('bore-shape', { ...one, cylindricityLimit: '0.01 mm' });
    expect(found).toMatchObject({ outOfRoundVerdict: 'in', taperVerdict: 'no data', cylindricityVerdict: 'no data' });
    expect([found.taper, found.cylindricity, found.tapers, found.shape]).toEqual(Array(4).fill(undefined));
  });
  it.each([
    [[10, 10, 10], 'straight'],
    [[10.1, 10.05, 10], 'wider at the first end'],
    [[10, 10.05, 10.1], 'wider at the last end'],
    [[10, 10.1, 10], 'barrel'],
    [[10, 9.9, 10], 'waist'],
  ] as const)('with mean diameters %j is %s', (means, shape) => {
    expect(longShape([means, means], 0.001)).toBe(shape);
  });
});

describe('a cone', () => {
  const cone = { first: '20 mm', second: '30 mm', distance: '50 mm' };
  it('widening to the second place has a negative conicity, and any diameter between', () => {
    expect(values('conicity', { ...cone, at: '25 mm' })).toMatchObject({
      conicity: expect.closeTo(-0.2, 9),
      perUnit: expect.closeTo(-20, 9),
      diameter: expect.closeTo(25, 9),
      half: expect.closeTo(-5.7106, 4),
    });
    expect(values('conicity', cone).diameter).toBeUndefined();
  });
  it('ends at its point', () => {
    expect(refusal('conicity', { ...cone, at: '-101 mm' })).toMatch(/come to its point/);
    expect(values('conicity', { ...cone, at: '-100 mm' }).diameter).toBeCloseTo(0, 9);
  });
});

describe('a lobed shaft', () => {
  it('through the block: three lobes in 60° are seen less than from opposite', () => {
    const sixty = degrees(60);
    expect(lobeFactor(3, sixty, 'opposite')).toBeCloseTo(3, 9);
    expect(lobeFactor(3, sixty, 'through-the-block')).toBeCloseTo(3, 9);
    expect(lobeFactor(2, degrees(90), 'through-the-block')).toBeCloseTo(1, 9);
    expect(lobeFactor(3, degrees(90), 'through-the-block')).toBeCloseTo(2, 9);
    expect(lobeFactor(4, degrees(90), 'through-the-block')).toBeCloseTo(1 + Math.SQRT2, 9);
  });
  it('agrees with the contact geometry of a shaft turned in the block', () => {
    const form = (n: number) => (a: number) => 20 + 0.001 * Math.cos(n * a);
    for (const [n, theta] of [
      [2, 90],
      [3, 60],
      [3, 90],
      [4, 90],
      [5, 120],
    ] as const) {
      const half = (theta * Math.PI) / 360;
      const at = Array.from({ length: 720 }, (_, k) => {
        const turn = (k * Math.PI) / 360;
        const r = (angle: number) => form(n)(angle + turn);
        const contact = Math.PI / 2 + half;
        const height = (r(contact) + r(-contact)) / (2 * Math.sin(half));
        return height + r(0);
      });
      const swing = Math.max(...at) - Math.min(...at);
      expect(swing / 0.002).toBeCloseTo(lobeFactor(n, degrees(theta), 'opposite'), 3);
    }
  });
  it('that the set-up cannot see is said, and its size left open', () => {
    const run = result('lobed-shaft', { lobes: 3, angle: '180 deg', swing: '0 mm' });
    expect(run.cautions.map((one) => one.text)).toEqual([expect.stringContaining('cannot see 3 lobes')]);
    expect(run.outputs.outOfRound).toBeUndefined();
    expect(run.outputs.blind?.value).toEqual([3, 5, 7, 9, 11, 13, 15]);
    expect(values('lobed-shaft', { lobes: 3, angle: '90 deg' }).blind).toEqual([7, 9, 15]);
  });
});

describe('circles from points', () => {
  it('need as many y as x, as many angles as readings, and radii above 0', () => {
    expect(refusal('circle-fit', { x: mm([1, 2, 3]), y: mm([1, 2]) })).toMatch(/one x and one y/);
    expect(refusal('circle-fit', { x: mm([1, 2, 3]), y: mm([1, 2, 3]) })).toMatch(/no circle goes/);
    expect(refusal('round-trace', { readings: mm([1, 2, 3]), nominal: '9 mm', angles: ['0 deg'] })).toMatch(
      /one angle a reading/,
    );
    expect(refusal('round-trace', { readings: mm([1, 0, 3]) })).toMatch(/a radius must be above 0/);
    expect(refusal('round-trace', { readings: mm([1, 2]) })).toMatch(/no circle goes/);
  });
  it('may be taken at angles of one’s own', () => {
    const found = values('round-trace', { readings: mm([10, 10, 10]), angles: ['0 deg', '80 deg', '200 deg'] });
    expect(found).toMatchObject({
      radius: expect.closeTo(10, 9),
      eccentricity: expect.closeTo(0, 9),
      diameter: expect.closeTo(20, 9),
    });
  });
});

describe('a line', () => {
  const line = { x: mm([0, 1, 2, 3]), y: mm([1, 3, 5, 8]) };
  it('gives value, standard error of the line and of a new reading (textbook, hand arithmetic)', () => {
    const found = values('line-fit', { ...line, at: mm([1.5, 10]) });
    const s = Math.sqrt(0.15);
    expect(found.values).toEqual([expect.closeTo(4.25, 9), expect.closeTo(23.8, 9)]);
    expect(found.valueErrors).toEqual([
      expect.closeTo(s / 2, 9),
      expect.closeTo(s * Math.sqrt(0.25 + 8.5 ** 2 / 5), 9),
    ]);
    expect(found.pointErrors).toEqual([
      expect.closeTo(s * Math.sqrt(1.25), 9),
      expect.closeTo(s * Math.sqrt(1.25 + 8.5 ** 2 / 5), 9),
    ]);
    expect(found.residuals).toEqual([0.2, -0.1, -0.4, 0.3].map((one) => expect.closeTo(one, 9)));
    expect(values('line-fit', line).values).toBeUndefined();
  });
  it('is straight to the narrowest band: 0.5 here (band through the outer points 1 and 4 and the lowest)', () => {
    // Through (0, 1) and (3, 8) the slope is 7/3; (2, 5) lies 2/3 under it; from (2, 5) down to the line through it: 0.667.
    expect(values('line-fit', line).straightness).toBeCloseTo(2 / 3, 6);
  });
  it('is refused for uneven lists and for points over each other', () => {
    expect(refusal('line-fit', { x: mm([1, 2, 3]), y: mm([1, 2]) })).toMatch(/one x and one y/);
    expect(refusal('line-fit', { x: mm([1, 1, 1]), y: mm([1, 2, 3]) })).toMatch(/not all alike/);
  });
});

describe('a face', () => {
  const twist = { x: mm([0, 100, 0, 100]), y: mm([0, 0, 50, 50]), z: mm([0.02, 0, 0, 0.02]) };
  it('has a verdict only with a limit, inclusive', () => {
    expect(values('flatness', twist).verdict).toBe('no data');
    expect(values('flatness', { ...twist, limit: '0.02 mm' }).verdict).toBe('in');
    expect(values('flatness', { ...twist, limit: '0.019 mm' }).verdict).toBe('out');
  });
  it('needs three coordinates a point, and a full grid', () => {
    expect(refusal('flatness', { ...twist, z: mm([1]) })).toMatch(/one height a point/);
    expect(refusal('flatness', { ...twist, y: mm([1]) })).toMatch(/one height a point/);
    expect(refusal('flatness-of-grid', { columns: mm([0, 1]), rows: mm([0, 1]), heights: mm([0]) })).toMatch(
      /the grid has 4 points/,
    );
  });
  const six = mm([0.03, 0.05, 0.04, 0.03, 0.03, 0.04]);
  it('under a straight edge lies between the feeler that enters and the next', () => {
    const next = mm([0.04, 0.06, 0.05, 0.04, 0.04, 0.05]);
    const of = (limit: string) => values('straightedge', { gaps: six, firstThatFails: next, limit }).verdict;
    expect([of('0.06 mm'), of('0.055 mm'), of('0.049 mm')]).toEqual(['in', 'near', 'out']);
    expect(values('straightedge', { gaps: six, firstThatFails: next }).atMost).toBeCloseTo(0.06, 9);
    expect(values('straightedge', { gaps: six })).toMatchObject({ verdict: 'no data', line: 2 });
  });
  it('on which the edge rocks cannot be judged, and few lines are few', () => {
    const run = result('straightedge', { gaps: mm([0.01]), limit: '0.1 mm', rocks: 'yes' });
    expect(run.outputs.verdict?.value).toBe('no data');
    expect(run.cautions.map((one) => one.code)).toEqual(['rocks', 'few-lines']);
    expect(result('straightedge', { gaps: six, limit: '0.1 mm' }).cautions).toEqual([]);
  });
  it('refuses a next feeler that is thinner, or missing', () => {
    for (const firstThatFails of [mm([0.01]), mm([0.01, 0.01, 0.01, 0.01, 0.01, 0.01])])
      expect(refusal('straightedge', { gaps: six, firstThatFails })).toMatch(/one next feeler/);
  });
});

describe('alignment', () => {
  it('squareness has a sign and is judged by its size', () => {
    const side = { near: '0.05 mm', far: '0 mm', distance: '50 mm', over: '25 mm' };
    expect(values('squareness', side)).toMatchObject({ error: expect.closeTo(-0.025, 9), verdict: 'no data' });
    expect(values('squareness', { ...side, limit: '0.025 mm' }).verdict).toBe('in');
    expect(values('squareness', { ...side, limit: '0.02 mm' }).verdict).toBe('out');
  });
  it('parallelism with the angle of the tilt', () => {
    const found = values('parallelism', { distances: mm([230, 230.3, 230.1]), between: '100 mm' });
    expect(found).toMatchObject({
      parallelism: expect.closeTo(0.3, 9),
      tilt: expect.closeTo(0.1, 9),
      lowest: expect.closeTo(230, 9),
      highest: expect.closeTo(230.3, 9),
      angle: expect.closeTo((Math.atan(0.001) * 180) / Math.PI, 9),
    });
    expect(values('parallelism', { distances: mm([1]) }).angle).toBeUndefined();
  });
  const turned = (at: number) => mm([0, 1, 2, 3, 4, 5, 6, 7].map((k) => 0.02 * Math.cos((k * Math.PI) / 4 - at)));
  it.each([
    [0, 0],
    [Math.PI / 2, 90],
    [Math.PI, 180],
    [-Math.PI / 4, 315],
  ])('runout of a bent shaft turned by %s has its high side at %s°', (at, wanted) => {
    const found = values('runout', { readings: turned(at) });
    expect(found.highSide).toBeCloseTo(wanted, 6);
    expect(found).toMatchObject({
      eccentricity: expect.closeTo(0.02, 9),
      form: expect.closeTo(0, 9),
      share: expect.closeTo(100, 6),
    });
  });
  it('runout of a true shaft is nothing, and two readings are too few', () => {
    expect(values('runout', { readings: mm([1, 1, 1]) })).toMatchObject({ runout: 0, share: 0, highSide: 0 });
    expect(values('runout', { readings: mm([1, -1, 1, -1]) })).toMatchObject({
      runout: 2,
      share: expect.closeTo(0, 9),
      highSide: 0,
      form: expect.closeTo(2, 9),
    });
    expect(refusal('runout', { readings: mm([1, 2]) })).toMatch(/three readings/);
  });
});

describe('constants of ranges', () => {
  /** Mean and mean square of the range of n normal values, by quadrature over its distribution. */
  function momentsOfRange(n: number): readonly [number, number] {
    const xs = Array.from({ length: 321 }, (_, k) => -8 + k / 20);
    const table = Array.from({ length: 681 }, (_, k) => normalBelow(-8 + k / 40));
    const below = (x: number) => (x >= 9 ? 1 : table[Math.round((x + 8) * 40)]!);
    const ws = Array.from({ length: 481 }, (_, k) => k / 40);
    const above = ws.map((w) => {
      const sum = xs.reduce((total, x) => {
        const density = Math.exp((-x * x) / 2) / Math.sqrt(2 * Math.PI);
        return total + density * (below(x + w) - below(x)) ** (n - 1);
      }, 0);
      return 1 - (n * sum) / 20;
    });
    const simpson = (f: (k: number) => number) =>
      ws.reduce((sum, _, k) => sum + f(k) * (k === 0 || k === 480 ? 1 : k % 2 === 1 ? 4 : 2), 0) / 120;
    return [simpson((k) => above[k]!), Math.sqrt(simpson((k) => 2 * ws[k]! * above[k]!))];
  }
  it('agree with integration of the distribution of the range', () => {
    for (let n = 2; n <= LARGEST_SAMPLE; n += 1) {
      const [d2, d2star] = momentsOfRange(n);
      expect(meanRange(n)).toBeCloseTo(d2, 5);
      expect(meanRangeOfOne(n)).toBeCloseTo(d2star, 5);
    }
  });
  it('give the printed factors (read): K1 0.8862 and 0.5908; K2 0.7071 and 0.5231; K3 of 10 parts 0.3146; D4 3.27 and 2.58', () => {
    expect([1 / meanRange(2), 1 / meanRange(3)]).toEqual([expect.closeTo(0.8862, 4), expect.closeTo(0.5908, 4)]);
    expect([1 / meanRangeOfOne(2), 1 / meanRangeOfOne(3)]).toEqual([
      expect.closeTo(Math.SQRT1_2, 4),
      expect.closeTo(0.5231, 4),
    ]);
    expect(1 / meanRangeOfOne(10)).toBeCloseTo(0.3146, 4);
    expect(rangeLimitFactor(2)).toBeCloseTo(3.267, 3);
    expect(Math.abs(rangeLimitFactor(3) - 2.575)).toBeLessThan(0.001);
  });
});

describe('the narrowest band', () => {
  it('about points that leave a coefficient open is none', () => {
    expect(
      smallestZone(
        [
          [1, 1],
          [1, 1],
          [1, 1],
        ],
        [0, 1, 2],
      ),
    ).toBeUndefined();
  });
  it('about three heights is half their spread', () => {
    expect(smallestZone([[1], [1], [1]], [0, 0.4, 1])).toEqual({
      half: expect.closeTo(0.5, 9),
      coefficients: [expect.closeTo(0.5, 9)],
    });
  });
});

describe('small systems of equations', () => {
  it('are solved with exchange of rows', () => {
    expect(
      solve(
        [
          [0, 2],
          [4, 1],
        ],
        [4, 6],
      ),
    ).toEqual([1, 2]);
  });
  it('without a single answer give none', () => {
    expect(
      solve(
        [
          [1, 2],
          [2, 4],
        ],
        [1, 2],
      ),
    ).toBeUndefined();
    expect(solve([[0]], [1])).toBeUndefined();
  });
});
