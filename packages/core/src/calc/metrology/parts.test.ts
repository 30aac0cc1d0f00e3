import { describe, expect, it } from 'vitest';
import { runsOneWay } from './liners.js';
import { mm, refusal, values } from './run.suite.js';

describe('wear', () => {
  it('of a hole grows, of a shaft shrinks, by the size itself', () => {
    const hole = (measured: string) => values('wear-limit', { form: 'absolute', measured, limit: '80.2 mm' });
    expect(hole('80.2 mm')).toMatchObject({ verdict: 'in', left: 0, state: 'worn, usable' });
    expect(hole('80.21 mm')).toMatchObject({ verdict: 'out', state: 'past the limit', left: expect.closeTo(-0.01, 9) });
    const shaft = (measured: string) =>
      values('wear-limit', {
        form: 'absolute',
        part: 'shaft',
        measured,
        limit: '59.9 mm',
        newLow: '59.99 mm',
        newHigh: '60 mm',
      });
    expect(shaft('59.99 mm')).toMatchObject({ state: 'as new', verdict: 'in', used: 0 });
    expect(shaft('59.95 mm')).toMatchObject({ state: 'worn, usable', used: expect.closeTo(44.444, 3) });
    expect(shaft('59.91 mm')).toMatchObject({ verdict: 'near', left: expect.closeTo(0.01, 9) });
    expect(shaft('59.89 mm')).toMatchObject({ verdict: 'out' });
  });
  it('by the change from new counts in the sense of wear', () => {
    const of = (part: string, measured: string) =>
      values('wear-limit', { form: 'change-from-new', part, measured, whenNew: '60 mm', limit: '0.1 mm' });
    expect(of('shaft', '59.95 mm')).toMatchObject({ figure: expect.closeTo(0.05, 9), verdict: 'in' });
    expect(of('hole', '60.11 mm')).toMatchObject({ figure: expect.closeTo(0.11, 9), verdict: 'out' });
    expect(refusal('wear-limit', { form: 'change-from-new', measured: '1 mm', limit: '1 mm' })).toMatch(
      /size when new/,
    );
  });
  it('by the clearance is hole less shaft', () => {
    const found = values('wear-limit', { form: 'clearance', measured: '60.1 mm', mate: '60 mm', limit: '0.08 mm' });
    expect(found).toMatchObject({ figure: expect.closeTo(0.1, 9), verdict: 'out' });
    expect(found.used).toBeUndefined();
  });
  it('that was not measured is no data; a new band must stand upright and leave room for wear', () => {
    expect(values('wear-limit', { form: 'absolute', limit: '1 mm' })).toEqual({ state: 'no data', verdict: 'no data' });
    expect(refusal('wear-limit', { form: 'absolute', limit: '1 mm', newLow: '2 mm', newHigh: '1 mm' })).toMatch(
      /upside down/,
    );
    expect(
      values('wear-limit', { form: 'absolute', measured: '1 mm', limit: '1 mm', newHigh: '1 mm' }).used,
    ).toBeUndefined();
  });
  it('is near from the share asked for', () => {
    const of = (nearShare: string) =>
      values('wear-limit', { form: 'clearance', measured: '0.27 mm', limit: '0.30 mm', newHigh: '0.24 mm', nearShare })
        .verdict;
    expect([of('50 %'), of('51 %')]).toEqual(['near', 'in']);
  });
});

describe('liners', () => {
  const bank = mm([0.1, 0.12, 0.16, 0.14]);
  it('step between means, or between worst points (hand arithmetic)', () => {
    const of = (more: object) => values('liner-protrusion', { protrusions: bank, pointsPerLiner: 2, ...more });
    expect(of({ stepLimit: '0.04 mm' })).toMatchObject({
      means: [expect.closeTo(0.11, 9), expect.closeTo(0.15, 9)],
      spreads: [expect.closeTo(0.02, 9), expect.closeTo(0.02, 9)],
      largestStep: expect.closeTo(0.04, 9),
      stepVerdict: 'in',
      heightVerdict: 'no data',
      orderVerdict: 'no data',
      verdict: 'in',
    });
    expect(of({ stepRule: 'worst-points', stepLimit: '0.05 mm' })).toMatchObject({
      largestStep: expect.closeTo(0.06, 9),
      verdict: 'out',
    });
    expect(of({ spreadLimit: '0.019 mm' }).spreadVerdict).toBe('out');
    expect(of({ spreadLimit: '0.02 mm' }).spreadVerdict).toBe('in');
    expect(of({})).toMatchObject({ verdict: 'no data', stepVerdict: 'no data' });
    expect(
      values('liner-protrusion', { protrusions: [...bank].reverse(), pointsPerLiner: 2, stepRule: 'worst-points' })
        .largestStep,
    ).toBeCloseTo(0.06, 9);
  });
  it('each point must be within the limits', () => {
    const of = (more: object) => values('liner-protrusion', { protrusions: bank, ...more }).heightVerdict;
    expect([of({ low: '0.1 mm' }), of({ low: '0.101 mm' }), of({ high: '0.16 mm' }), of({ high: '0.159 mm' })]).toEqual(
      ['in', 'out', 'in', 'out'],
    );
  });
  it('one alone has no step', () => {
    const found = values('liner-protrusion', { protrusions: mm([0.1]), stepLimit: '0.04 mm' });
    expect(found.steps).toBeUndefined();
    expect(found.stepVerdict).toBe('no data');
  });
  it('readings must make whole liners, and limits stand upright', () => {
    expect(refusal('liner-protrusion', { protrusions: bank, pointsPerLiner: 3 })).toMatch(/whole liners of 3 points/);
    expect(refusal('liner-protrusion', { protrusions: bank, low: '2 mm', high: '1 mm' })).toMatch(/above the upper/);
  });
  it('run one way up, down or level', () => {
    expect(
      [
        [1, 2, 2, 3],
        [3, 2, 2],
        [1, 1],
        [1, 2, 1],
      ].map(runsOneWay),
    ).toEqual([true, true, true, false]);
  });
});

describe('a gasket grade', () => {
  const pistons = { protrusions: mm([0.62, 0.66, 0.64, 0.72]), pointsPerPiston: 2, tops: mm([0.6, 0.7, 0.8]) };
  const of = (more: object) => values('gasket-grade', { ...pistons, basis: 'mean-of-all', ...more });
  it('goes by the mean of all, the highest mean of a piston, or the highest reading', () => {
    expect(of({})).toMatchObject({
      figure: expect.closeTo(0.66, 9),
      grade: 2,
      name: 'grade 2',
      left: expect.closeTo(0.04, 9),
      raised: 'no',
    });
    expect(of({ basis: 'highest-piston-mean' })).toMatchObject({ figure: expect.closeTo(0.68, 9), grade: 2 });
    expect(of({ basis: 'highest-reading' })).toMatchObject({ figure: expect.closeTo(0.72, 9), grade: 3 });
  });
  it('is raised where one reading passes the top by more than is allowed', () => {
    expect(of({ allowance: '0.02 mm' })).toMatchObject({ grade: 2, raised: 'no' });
    expect(of({ allowance: '0.01 mm' })).toMatchObject({ grade: 3, raised: 'yes' });
    expect(of({ allowance: '0.01 mm', tops: mm([0.6, 0.7]) })).toMatchObject({ verdict: 'out', raised: 'yes' });
  });
  it('is near where the doubt reaches another grade, above or below', () => {
    expect(of({ expanded: '0.03 mm' }).verdict).toBe('in');
    expect(of({ expanded: '0.05 mm' }).verdict).toBe('near');
    expect(of({ expanded: '0.01 mm', tops: mm([0.655, 0.9]) }).verdict).toBe('near');
  });
  it('above the last grade there is none; at the top of a grade it is that grade', () => {
    const none = of({ tops: mm([0.6]) });
    expect(none.verdict).toBe('out');
    expect(none.grade).toBeUndefined();
    expect(none.left).toBeUndefined();
    expect(of({ tops: mm([0.66, 0.9]) }).grade).toBe(1);
  });
  it('of known thickness leaves the highest piston its room', () => {
    const gaskets = { tops: mm([0.6, 0.7]), thicknesses: mm([1.15, 1.25]) };
    expect(of(gaskets)).toMatchObject({ thickness: expect.closeTo(1.25, 9), smallestQuench: expect.closeTo(0.53, 9) });
    const none = of({ tops: mm([0.6]), thicknesses: mm([1.15]) });
    expect([none.thickness, none.smallestQuench]).toEqual([undefined, undefined]);
    expect(of({}).smallestQuench).toBeUndefined();
  });
  it.each([
    [{ tops: mm([0.7, 0.6]) }, /the grades must rise/],
    [{ names: ['one'] }, /one name a grade/],
    [{ thicknesses: mm([1.2]) }, /one thickness a grade/],
    [{ pointsPerPiston: 3 }, /whole pistons of 3 points/],
    [{ names: ['', 'b', 'c'] }, /names, value 1/],
  ])('refuses %j', (more, words) => {
    expect(refusal('gasket-grade', { ...pistons, basis: 'mean-of-all', ...more })).toMatch(words);
  });
});

describe('compression', () => {
  const kpa = (all: readonly number[]) => all.map((one) => `${one} kPa`);
  it('is judged by the floor where the share would allow less', () => {
    const low = values('compression-spread', { pressures: kpa([900, 660, 890]), share: '70 %', floor: '690 kPa' });
    expect(low).toMatchObject({
      allowed: expect.closeTo(690, 6),
      low: [2],
      verdict: 'out',
      lowest: expect.closeTo(660, 6),
    });
    expect(low.findings).toBeUndefined();
  });
  it('two low cylinders at the ends of two banks are no neighbours', () => {
    const of = (banks?: readonly number[]) =>
      values('compression-spread', { pressures: kpa([900, 500, 500, 900]), share: '70 %', ...(banks && { banks }) })
        .lowNeighbours;
    expect(of()).toEqual(['2 and 3']);
    expect(of([2, 2])).toEqual([]);
  });
  it('in three banks are counted through', () => {
    const low = kpa([900, 500, 500, 500, 900, 900, 500, 500]);
    expect(values('compression-spread', { pressures: low, share: '70 %', banks: [2, 2, 4] }).lowNeighbours).toEqual([
      '3 and 4',
      '7 and 8',
    ]);
  });
  it('wet: a rise of a tenth is clear, less is a valve', () => {
    const of = (wet: number) =>
      values('compression-spread', { pressures: kpa([1000, 500, 990]), share: '70 %', wet: kpa([1050, wet, 1000]) })
        .findings;
    expect(of(550)).toEqual(['2: rings or bore']);
    expect(of(549)).toEqual(['2: valve or gasket']);
  });
  it('without a rule has no verdict', () => {
    const found = values('compression-spread', { pressures: kpa([900, 500]) });
    expect(found).toMatchObject({
      verdict: 'no data',
      rule: 'no rule given',
      low: [],
      difference: expect.closeTo(400, 6),
    });
    expect(found.allowed).toBeUndefined();
  });
  it.each([
    [{ banks: [2, 2] }, /the banks do not add up/],
    [{ wet: kpa([1]) }, /one wet pressure a cylinder/],
    [{ pressures: kpa([0, 0, 0]) }, /no cylinder makes any pressure/],
  ])('refuses %j', (more, words) => {
    expect(refusal('compression-spread', { pressures: kpa([900, 900, 900]), share: '70 %', ...more })).toMatch(words);
  });
});

describe('leakage', () => {
  const test = { supply: '700 kPa', held: ['630 kPa', '490 kPa'] };
  it('against a limit, an earlier test and by what is heard', () => {
    expect(
      values('leakage', { ...test, limit: '25 %', baseline: ['8 %', '10 %'], heardAt: ['nowhere', 'oil-filler'] }),
    ).toMatchObject({
      leakages: [expect.closeTo(10, 9), expect.closeTo(30, 9)],
      changes: [expect.closeTo(2, 9), expect.closeTo(20, 9)],
      over: [2],
      worstPlace: 2,
      causes: ['no path heard', 'rings, piston or bore'],
      verdict: 'out',
    });
  });
  it('names each path', () => {
    const heardAt = ['intake', 'exhaust', 'coolant', 'neighbour'];
    expect(values('leakage', { supply: '1 bar', held: Array(4).fill('1 bar'), heardAt }).causes).toEqual([
      'intake valve',
      'exhaust valve',
      'head gasket or crack to the coolant',
      'head gasket between the cylinders',
    ]);
  });
  it('without a limit has no verdict', () => {
    const found = values('leakage', test);
    expect(found.verdict).toBe('no data');
    expect(found.over).toBeUndefined();
  });
  it.each([
    [{ held: ['800 kPa'] }, /cannot hold more than the supply/],
    [{ baseline: ['1 %'] }, /one earlier figure a cylinder/],
    [{ heardAt: ['intake'] }, /one place a cylinder/],
  ])('refuses %j', (more, words) => {
    expect(refusal('leakage', { ...test, ...more })).toMatch(words);
  });
});
