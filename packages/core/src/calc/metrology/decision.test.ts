import { describe, expect, it } from 'vitest';
import { accepts, atMost, conformance, nearestLimit, verdictOf, zoneOf } from './decision.js';
import { guardOf } from './judge.js';
import { refusal, result, values } from './run.suite.js';

const window = { low: '9.9', high: '10.1' };
const verdict = (inputs: object) => values('verdict-of-numbers', inputs);

describe('a verdict', () => {
  it('without a reading, or without a limit, is "no data" and never "in"', () => {
    const unmeasured = verdict({ rule: 'simple', ...window });
    expect(unmeasured).toMatchObject({ verdict: 'no data', accepted: 'not known', zone: 'not known', acceptFrom: 9.9 });
    expect(unmeasured.value).toBeUndefined();
    expect(verdict({ rule: 'guarded', readings: ['10'] })).toMatchObject({ verdict: 'no data', value: 10 });
    expect(verdict({ rule: 'guarded', ...window }).verdict).toBe('no data');
  });
  it('names the deciding limit and the distance to it, negative beyond it', () => {
    expect(verdict({ rule: 'simple', readings: ['10.07'], ...window })).toMatchObject({
      verdict: 'in',
      side: 'high',
      limit: 10.1,
      distance: expect.closeTo(0.03, 9),
      zone: 'not known',
    });
    expect(verdict({ rule: 'simple', readings: ['9.85'], ...window })).toMatchObject({
      verdict: 'out',
      side: 'low',
      accepted: 'not accepted',
      distance: expect.closeTo(-0.05, 9),
    });
  });
  it('holds with one limit alone', () => {
    expect(verdict({ rule: 'simple', readings: ['99'], low: '9' })).toMatchObject({ verdict: 'in', side: 'low' });
    expect(verdict({ rule: 'guarded', readings: ['99'], high: '9', expanded: '1' })).toMatchObject({
      verdict: 'out',
      acceptTo: 8,
    });
    expect(verdict({ rule: 'simple', readings: ['99'], high: '9' }).acceptFrom).toBeUndefined();
  });
  it('is the mean of readings that agree, and "check again" where they do not', () => {
    const two = { rule: 'simple', ...window, expanded: '0.02' };
    expect(verdict({ ...two, readings: ['10.00', '10.02'] })).toMatchObject({
      verdict: 'in',
      value: expect.closeTo(10.01, 9),
    });
    expect(verdict({ ...two, readings: ['10.00', '10.03'] })).toMatchObject({
      verdict: 'check again',
      accepted: 'not known',
    });
    expect(verdict({ ...two, readings: ['10.00', '10.03'], agreement: '0.03' }).verdict).toBe('in');
    expect(verdict({ rule: 'simple', ...window, readings: ['9.91', '10.09'] }).verdict).toBe('in');
  });
  it('is near where the simple rule accepts within U of the limit, or within the band asked for', () => {
    expect(verdict({ rule: 'simple', readings: ['10.09'], ...window, expanded: '0.02' }).verdict).toBe('near');
    expect(verdict({ rule: 'simple', readings: ['10.09'], ...window, nearBand: '0.005' }).verdict).toBe('in');
    expect(verdict({ rule: 'simple', readings: ['10.09'], ...window, nearBand: '0.015' }).verdict).toBe('near');
    expect(
      verdict({ rule: 'guarded', readings: ['10.07'], ...window, expanded: '0.02', nearBand: '0.04' }).verdict,
    ).toBe('near');
  });
  it('on the limit itself is in: limits are inclusive', () => {
    expect(verdict({ rule: 'simple', readings: ['10.1'], ...window })).toMatchObject({ verdict: 'in', distance: 0 });
  });
  it('says when the guard bands leave nothing', () => {
    const run = result('verdict-of-numbers', { rule: 'guarded', readings: ['10'], ...window, expanded: '0.2' });
    expect(run.cautions.map((one) => one.code)).toEqual(['nothing-acceptable']);
    expect(run.outputs.verdict?.value).toBe('near');
    expect(run.outputs.guard?.value).toBeCloseTo(0.2, 12);
  });
  it('with a guard band and no uncertainty is refused', () => {
    expect(refusal('verdict', { rule: 'guarded', readings: ['1 mm'], low: '0 mm' })).toMatch(
      /needs the expanded uncertainty/,
    );
  });
});

describe('the rules', () => {
  it.each([
    ['guarded', 0.021, 'in', true],
    ['guarded', 0.02, 'in', true],
    ['guarded', 0.019, 'near', false],
    ['guarded', 0, 'near', false],
    ['guarded', -0.001, 'out', false],
    ['guarded-rejection', 0.021, 'in', true],
    ['guarded-rejection', 0.01, 'near', true],
    ['guarded-rejection', -0.02, 'near', true],
    ['guarded-rejection', -0.021, 'out', false],
    ['simple', 0, 'in', true],
    ['simple', -0.001, 'out', false],
  ] as const)('%s at %s from the limit: %s', (rule, distance, word, accepted) => {
    const band = { rule, guard: 0.02, near: 0 };
    expect(verdictOf(distance, band)).toBe(word);
    expect(accepts(distance, band)).toBe(accepted);
  });
  it('zones by full U, both ends with the limit (ISO 14253-1)', () => {
    expect([0.02, 0.019, -0.02, -0.0201].map((one) => zoneOf(one, 0.02))).toEqual([
      'conformity proven',
      'not proven',
      'not proven',
      'nonconformity proven',
    ]);
  });
  it('no limits, no distance', () => {
    expect(nearestLimit(1, {})).toBeUndefined();
  });
});

describe('probability of conformity', () => {
  it('at a limit is one half', () => {
    expect(conformance(5, 1, { low: 5 }).inside).toBeCloseTo(0.5, 12);
    expect(conformance(5, 1, { high: 5 })).toMatchObject({ below: 0, above: expect.closeTo(0.5, 12) });
  });
  it('without uncertainty on the limit is 1', () => {
    expect(conformance(5, 0, { low: 5, high: 6 }).inside).toBe(1);
    expect(conformance(6.1, 0, { low: 5, high: 6 })).toEqual({ inside: 0, below: 0, above: 1 });
  });
  it('needs a limit, the right way round', () => {
    expect(refusal('conformance', { value: '1 mm', uncertainty: '0.1 mm' })).toMatch(/at least one limit/);
    expect(refusal('conformance', { value: '1 mm', uncertainty: '0.1 mm', low: '2 mm', high: '1 mm' })).toMatch(
      /lower limit is above the upper one; high must be at least 2 mm/,
    );
  });
});

describe('an oil clearance', () => {
  const fit = {
    housing: '68.350 mm',
    journal: '63.440 mm',
    wall: '2.430 mm',
    uHousing: '0.0025 mm',
    uJournal: '0.0015 mm',
    uWall: '0.0010 mm',
  };
  it('counts one reading for both walls double, not in squares', () => {
    expect(values('clearance-uncertainty', { ...fit, walls: 'one-reading' }).uncertainty).toBeCloseTo(
      Math.hypot(2.5, 1.5, 2) / 1000,
      9,
    );
  });
  it('takes the other wall where it differs', () => {
    expect(values('clearance-uncertainty', { ...fit, otherWall: '2.436 mm' }).clearance).toBeCloseTo(0.044, 9);
  });
  it('is proven in, only near, or out, with probability and distance', () => {
    const judged = (low: string, high: string) => values('clearance-uncertainty', { ...fit, low, high });
    expect(judged('0.040 mm', '0.060 mm')).toMatchObject({ verdict: 'in', distance: expect.closeTo(0.01, 9) });
    expect(judged('0.045 mm', '0.060 mm')).toMatchObject({ verdict: 'near', inside: expect.closeTo(93.76, 1) });
    expect(judged('0.055 mm', '0.060 mm')).toMatchObject({ verdict: 'out', distance: expect.closeTo(-0.005, 9) });
    expect(values('clearance-uncertainty', fit).inside).toBeUndefined();
  });
  it('without any doubt has none to share', () => {
    const sure = { ...fit, uHousing: '0 mm', uJournal: '0 mm', uWall: '0 mm' };
    expect(values('clearance-uncertainty', sure)).toMatchObject({ uncertainty: 0, shares: [0, 0, 0] });
  });
  it('refuses a shared scale larger than the whole, and limits upside down', () => {
    expect(refusal('clearance-uncertainty', { ...fit, sharedScale: '0.002 mm' })).toMatch(/more than the whole/);
    expect(refusal('clearance-uncertainty', { ...fit, low: '2 mm', high: '1 mm' })).toMatch(/above the upper/);
  });
  it('a scale that is all of it cancels to nothing', () => {
    const all = { ...fit, uHousing: '0.0015 mm', uWall: '0 mm', sharedScale: '0.0015 mm' };
    expect(values('clearance-uncertainty', all).uncertainty).toBe(0);
  });
});

describe('what was known of like parts before', () => {
  it('pulls the value and narrows the doubt (normal prior, hand arithmetic: halfway for equal deviations)', () => {
    const found = values('conformance-of-numbers', {
      value: '12',
      uncertainty: '2',
      high: '12',
      priorMean: '10',
      priorDeviation: '2',
    });
    expect(found).toMatchObject({
      mean: 11,
      deviation: expect.closeTo(Math.SQRT2, 9),
      inside: expect.closeTo(76.02, 2),
    });
  });
  it('that is very wide changes nothing', () => {
    const plain = { value: '13.6', uncertainty: '1.8', low: '12.5', high: '16.3' };
    const wide = values('conformance-of-numbers', { ...plain, priorMean: '0', priorDeviation: '1000000' });
    expect(wide.inside).toBeCloseTo(values('conformance-of-numbers', plain).inside as number, 4);
  });
  it('is whole, and no part is exactly like another', () => {
    const one = { value: '1 mm', uncertainty: '1 mm', low: '0 mm' };
    expect(refusal('conformance', { ...one, priorMean: '1 mm' })).toMatch(/a mean and a deviation/);
    expect(refusal('conformance', { ...one, priorMean: '1 mm', priorDeviation: '0 mm' })).toMatch(
      /never exactly alike/,
    );
  });
});

describe('acceptance limits', () => {
  it('are not known for a guarded rule without U', () => {
    const found = verdict({ rule: 'guarded', ...window });
    expect([found.acceptFrom, found.acceptTo, found.guard]).toEqual([undefined, undefined, undefined]);
  });
  it('widen by the guard band where nonconformity must be proven', () => {
    const found = verdict({ rule: 'guarded-rejection', ...window, expanded: '0.02' });
    expect(found).toMatchObject({ acceptFrom: expect.closeTo(9.88, 9), acceptTo: expect.closeTo(10.12, 9) });
  });
});

describe('the rounding guard', () => {
  it('takes 0.059999999999997 and 74.06 − 74 for 0.060, and a real difference for one', () => {
    expect(nearestLimit(0.059999999999997, { low: 0.06 })).toMatchObject({ distance: 0 });
    expect(nearestLimit(74.06 - 74, { high: 0.06 })).toMatchObject({ distance: 0 });
    expect(nearestLimit(0.0600001, { high: 0.06 })?.distance).toBeLessThan(0);
    expect([atMost(1000.0000001, 1000), atMost(1000.00001, 1000), atMost(5e-13, 0), atMost(2e-12, 0)]).toEqual([
      true,
      false,
      true,
      false,
    ]);
  });
  it('the simple rule has no guard band, whatever U is', () => {
    expect(guardOf({ rule: 'simple', expanded: 1, guardFactor: 1 })).toBeUndefined();
    expect(guardOf({ rule: 'guarded', expanded: 2, guardFactor: 0.5 })).toBe(1);
  });
});
