import { describe, expect, it } from 'vitest';
import { engineOf, read } from '../../engine/load/try-sheets.suite.js';
import { mm, newtons } from '../../quantity/index.js';
import { alternativeOf, assessed, decisionOf, figureOf } from './bench.suite.js';

const V8 = engineOf(read('sheets/quernside-51-v8.yaml'));
const GOOD = {
  'valve-guide': '8.008 mm',
  'valve-stem': '7.965 mm',
  'seat-width': '1.5 mm',
  'seat-runout': '0.01 mm',
  'valve-margin': '1.7 mm',
};
const worst = { 'valve-guide/3-intake-1': '8.070 mm', 'valve-stem/3-intake-1': '7.940 mm' };

describe('valve guides', () => {
  it('are left while every stem clearance is within its limit', () => {
    const decision = decisionOf(assessed(V8, GOOD), 'valve-guides', 'intake');
    expect(decision.recommended).toBe('leave');
    expect(decision.proof).toContain('Every stem clearance');
  });
  it('are reamed to the valve that will run in them: 7.940 with 0.025 to 0.060 asks for 7.965 to 8.000 mm', () => {
    const decision = decisionOf(assessed(V8, { ...GOOD, ...worst }), 'valve-guides', 'intake');
    expect(decision.recommended).toBe('new-guides');
    const [line] = alternativeOf(decision, 'new-guides').orders;
    expect(line?.places).toEqual(['3-intake-1']);
    expect(line?.targets?.[0]?.window.low).toBeCloseTo(mm(7.965), 8);
    expect(line?.targets?.[0]?.window.high).toBeCloseTo(mm(8.0), 8);
    expect(line?.targets?.[0]?.fittedTo).toContain('7.940 mm');
  });
  it('that are worn through are not saved by a new valve: 8.070 less 7.955 to 7.975 is 0.095 to 0.115 mm', () => {
    const decision = decisionOf(assessed(V8, { ...GOOD, ...worst }), 'valve-guides', 'intake');
    const valve = alternativeOf(decision, 'new-valves');
    expect(valve.figures[0]?.text).toBe('clearance 0.095..0.115 mm');
    expect(valve.verdict).toBe('out');
  });
  it('wait for guides and stems', () => {
    const { missing } = decisionOf(assessed(V8, { 'valve-guide': '8.008 mm' }), 'valve-guides', 'exhaust');
    expect(missing.join()).toContain('valve stem');
  });
});

describe('valve seats', () => {
  it('that run out are cut to their own valve, guides first', () => {
    const decision = decisionOf(
      assessed(V8, { ...GOOD, 'seat-width': '1.4 mm', 'seat-runout/5-intake-1': '0.09 mm' }),
      'valve-seats',
      'intake',
    );
    expect(decision.recommended).toBe('cut');
    const lines = alternativeOf(decision, 'cut').orders;
    expect(lines.map(({ places }) => places)).toEqual([['5-intake-1'], ['5-intake-1']]);
    expect(lines[0]?.with).toContain('guides finished first');
  });
  it('are left while nothing is past its limit', () => {
    expect(decisionOf(assessed(V8, { ...GOOD, 'seat-width': '1.4 mm' }), 'valve-seats', 'intake').recommended).toBe(
      'leave',
    );
  });
  it('cannot be cut where the valve lies too deep already', () => {
    const diesel = engineOf(read('sheets/tollbarrow-6w-diesel-six.yaml'));
    const sizes = {
      'seat-width': '2.0 mm',
      'seat-runout': '0.01 mm',
      'valve-recess': '0.85 mm',
      'valve-margin': '2.0 mm',
      'valve-recess/2-intake-1': '1.75 mm',
    };
    const decision = decisionOf(assessed(diesel, sizes), 'valve-seats', 'intake');
    expect(alternativeOf(decision, 'cut')).toMatchObject({ possible: false });
    expect(decision.recommended).toBe('insert');
  });
});

describe('shims under the valve springs', () => {
  const at = (height: string, more: Record<string, string | number> = {}) => ({ 'installed-height': height, ...more });
  const LOADS = {
    'spring-load-closed': newtons(380),
    'spring-load-open': newtons(870),
    'spring-bind-height': '27.2 mm',
  };
  it('are not needed where every height is as printed', () => {
    expect(decisionOf(assessed(V8, at('42.0 mm')), 'spring-shims', 'intake').recommended).toBe('as-is');
  });
  it('bring a sunk valve back: 42.8 mm with one of 0.80 mm is 42.0 mm', () => {
    const decision = decisionOf(assessed(V8, at('42.8 mm', LOADS)), 'spring-shims', 'intake');
    expect(decision.recommended).toBe('printed-height');
    expect(figureOf(decision, 'printed-height', 'heights apart')).toBe('0.000 mm');
    // Sixteen of 0.80 mm lie on the bench: they are used, and none is bought.
    const shimmed = alternativeOf(decision, 'printed-height').figures.filter(({ text }) =>
      text.startsWith('0.800 mm:'),
    );
    expect(shimmed).toHaveLength(8);
    expect(alternativeOf(decision, 'printed-height').buys).toEqual([]);
  });
  it('leave room to coil bind: 42.0 less 7.35 · 1.55 less 27.2 is 3.4 mm', () => {
    const decision = decisionOf(assessed(V8, at('42.8 mm', LOADS)), 'spring-shims', 'intake');
    // 42.000 − 11.3925 − 27.200 = 3.4075
    expect(figureOf(decision, 'printed-height', 'least room to coil bind')).toMatch(/^3\.40[78] mm$/);
  });
  it('equal the loads where springs differ: 41.5 N/mm, a spring 20 N weaker sits 0.48 mm lower', () => {
    const weak = {
      ...LOADS,
      'spring-load-closed/1-intake-1': newtons(360),
      'spring-load-open/1-intake-1': newtons(850),
    };
    const decision = decisionOf(assessed(V8, at('42.8 mm', weak)), 'spring-shims', 'intake');
    // rate = (870 − 380)/(42.0 − 30.2) = 41.5 N/mm: 0.40 mm more of shim is 16.6 of the 20 N.
    expect(figureOf(decision, 'equal-load', 'seat loads apart')).toBe('3 N');
  });
  it('do not claim a load that nobody measured', () => {
    const decision = decisionOf(assessed(V8, at('42.8 mm')), 'spring-shims', 'exhaust');
    expect(figureOf(decision, 'printed-height', 'seat loads apart')).toContain('not known');
    expect(figureOf(decision, 'printed-height', 'least room to coil bind')).toContain('not known');
  });
});
