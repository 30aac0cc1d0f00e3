import { describe, expect, it } from 'vitest';
import { tighteningActs } from '../plan/index.js';
import { numberAndUnit } from './act-words.js';
import { advisoryOf } from './advisory.js';
import { engineOf, SHEETS } from './bench.suite.js';

const joint = engineOf(SHEETS.v8).joints[0]!;
const acts = tighteningActs(joint).acts;

describe('the computed preload beside the sheet’s torque', () => {
  it('is shown for an oiled bolt as a band, and never asks to leave the sheet', () => {
    const advisory = advisoryOf(acts.at(-1)!);
    expect(advisory?.words).toMatch(/about .* kN to .* kN/);
    expect(advisory?.words).toContain('tighten to the sheet’s figure');
  });

  it('brackets the short form with nut factors of oiled steel, 0.13 to 0.20 (common practice, no source)', () => {
    const act = acts.find((one) => one.hole === '1' && one.stage === joint.stages.length - 1)!;
    const [, low, high] = /about ([\d.]+) kN to ([\d.]+) kN/.exec(advisoryOf(act)?.words ?? '') ?? [];
    const torque = act.target.low!;
    const short = (factor: number) => torque / (factor * 0.011) / 1000;
    expect(Number(low)).toBeLessThan(short(0.2) * 1.1);
    expect(Number(high)).toBeGreaterThan(short(0.13) * 0.9);
    expect(Number(high)).toBeLessThan(short(0.1));
  });

  it('says nothing where the dressing has no known friction', () => {
    expect(advisoryOf({ ...acts[0]!, onThread: 'not-stated' })).toBeUndefined();
    expect(advisoryOf({ ...acts[0]!, kind: 'angle' })).toBeUndefined();
  });
});

describe('the very large number', () => {
  it.each([
    ['95 N·m', '95', 'N·m'],
    ['37..43 N·m', '37 to 43', 'N·m'],
    ['90 deg', '90', 'deg'],
    ['1/2 turn', '1/2', 'turn'],
    ['0.0135..0.0185 in', '0.0135 to 0.0185', 'in'],
    ['47 N·m (35 lb-ft)', '47', 'N·m'],
  ])('%s is laid out as %s and %s', (text, number, unit) => {
    expect(numberAndUnit(text)).toEqual({ number, unit });
  });
});
