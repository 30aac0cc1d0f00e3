import { describe, expect, it } from 'vitest';
import { refusal, values } from './run.suite.js';

const journals = ['57.39 mm', '57.40 mm', '57.39 mm', '57.38 mm'];
const slip = (reading: string, sisters: readonly string[] = journals, more: object = {}) =>
  values('sister-readings', { reading, sisters, ...more });

describe('a reading beside its sisters (invented figures)', () => {
  it('that is like them raises no question', () => {
    expect(slip('57.41 mm')).toMatchObject({
      verdict: 'alike',
      suspicions: [],
      candidates: [],
      middle: '57.39 mm',
      apart: '0.02 mm',
      allowed: '0.085 mm',
    });
    expect(slip('57.47 mm').verdict).toBe('alike');
    expect(slip('57.48 mm').verdict).toBe('check again');
  });
  it.each([
    ['573.9 mm', ['the decimal point may be off'], ['57.39 mm']],
    ['5.739 mm', ['the decimal point may be off'], ['57.39 mm']],
    ['5739 mm', ['the decimal point may be off'], ['57.39 mm']],
    ['0.5739 mm', ['the decimal point may be off'], ['57.39 mm']],
    ['75.39 mm', ['two digits may be swapped'], ['57.39 mm']],
    ['7.39 mm', ['a digit may be missing'], ['57.39 mm']],
    ['57.2 mm', ['a digit may be missing'], ['57.42 mm']],
    ['577.39 mm', ['a digit may be too many'], ['57.39 mm']],
  ])('%s: %j', (reading, suspicions, candidates) => {
    const found = slip(reading);
    expect(found.verdict).toBe('check again');
    expect(found.suspicions).toEqual(expect.arrayContaining(suspicions));
    expect((found.candidates as string[]).map((one) => Number.parseFloat(one).toFixed(2))).toEqual(
      expect.arrayContaining(candidates.map((one) => Number.parseFloat(one).toFixed(2))),
    );
  });
  it('typed in millimetres and meant in inches, or the other way round', () => {
    const inches = ['2.2595 in', '2.2598 in', '2.2594 in'];
    expect(slip('2.2596 mm', inches).suspicions).toContain('the number fits in another unit: in');
    expect(slip('57.39 in').suspicions).toEqual(['the number fits in another unit: mm']);
    expect(slip('57.39 in').candidates).toEqual(['2.26 in']);
  });
  it('that no slip explains is still to be checked', () => {
    expect(slip('57.90 mm')).toMatchObject({ verdict: 'check again', suspicions: [], apart: '0.51 mm' });
  });
  it('of other kinds: torque, pressure, temperature, protrusion below the deck', () => {
    expect(slip('60 N·m', ['81 N·m', '82 N·m']).verdict).toBe('check again');
    expect(slip('60 N·m', ['81 N·m', '82 N·m']).suspicions).toContain('the number fits in another unit: lbf·ft');
    expect(slip('18.4 psi', ['184 psi', '180 psi']).suspicions).toContain('the decimal point may be off');
    expect(slip('68 °C', ['20 °C', '19 °C', '21 °C'])).toMatchObject({
      suspicions: ['the number fits in another unit: °F'],
      apart: '48 K',
    });
    expect(slip('-0.52 mm', ['-0.25 mm', '-0.26 mm']).candidates).toEqual(['-0.25 mm']);
    expect(slip('-0.52 mm', ['-0.25 mm', '-0.26 mm']).suspicions).toEqual(['two digits may be swapped']);
    expect(slip('+0.52 mm', ['0.25 mm', '0.26 mm']).candidates).toEqual(['0.25 mm']);
    expect(slip('−0.52 mm', ['-0.25 mm', '-0.26 mm']).candidates).toEqual(['-0.25 mm']);
  });
  it('typed as a fraction is only tried for its unit', () => {
    expect(slip('3/8 in', ['57.1 mm', '57.3 mm'])).toMatchObject({ verdict: 'check again', suspicions: [] });
  });
  it('is held against an allowance of one’s own', () => {
    expect(slip('57.60 mm', journals, { allowance: '0.3 mm' }).verdict).toBe('alike');
    expect(slip('24 °C', ['20 °C', '20 °C'], { allowance: '5 °C' })).toMatchObject({
      verdict: 'alike',
      allowed: '5.0 K',
    });
  });
  it('needs two sisters of its own kind, and readable texts', () => {
    expect(refusal('sister-readings', { reading: '1 mm', sisters: ['1 mm'] })).toMatch(/two sisters/);
    expect(refusal('sister-readings', { reading: '1 mm', sisters: ['1 psi', '2 psi'] })).toMatch(/not of one kind/);
    expect(refusal('sister-readings', { reading: 'about one', sisters: journals })).toMatch(/reading/);
    expect(refusal('sister-readings', { reading: `${'1'.repeat(80)} mm`, sisters: journals })).toMatch(/reading/);
  });
});

describe('figures printed in two units', () => {
  const pair = (first: readonly string[], second: readonly string[], more: object = {}) =>
    values('printed-pair', { first, second, ...more });
  it('that disagree are named, and a band that falls', () => {
    expect(pair(['0.15 mm'], ['0.014 in']).findings).toEqual(['0.15 mm is not 0.014 in']);
    expect(pair(['2 mm', '1 mm'], ['2 mm', '1 mm']).findings).toEqual([
      '2 mm stands before 1 mm',
      '2 mm stands before 1 mm',
    ]);
    expect(pair(['2 mm', '1 mm'], ['2 mm', '1 mm'], { rising: 'no' }).verdict).toBe('agree');
  });
  it('show difference and what rounding explains', () => {
    const found = pair(['0.10 mm'], ['0.004 in']);
    expect(found).toMatchObject({
      verdict: 'agree',
      differences: [expect.closeTo(0.0016, 9)],
      allowed: [expect.closeTo(0.6 * 0.0254, 9)],
    });
  });
  it('must be as many, and lengths', () => {
    expect(refusal('printed-pair', { first: ['1 mm'], second: ['1 mm', '2 mm'] })).toMatch(/same number of figures/);
    expect(refusal('printed-pair', { first: ['1'], second: ['1 mm'] })).toMatch(/first, value 1/);
  });
});
