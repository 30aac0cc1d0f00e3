import { describe, expect, it } from 'vitest';
import { describeCalcFault, runDeclared } from '../../catalogue/index.js';
import { shimChoice } from './shim-choice.js';
import { shimPool } from './shim-pool.js';

const one = {
  measured: '0.25 mm',
  old: '2.425 mm',
  wanted: '0.15 mm',
  thinnest: '2.40 mm',
  thickest: '2.60 mm',
  step: '0.05 mm',
  rounding: 'next-thinner',
};

describe('shim choice', () => {
  it('chooses 2.50 for 2.525 and leaves 0.175 (worked example, engine-cases-shims, diesel overhead cam)', () => {
    const found = runDeclared(shimChoice, one);
    if (!found.ok) throw new Error(JSON.stringify(found.fault));
    const { ideal, chosen, clearance, verdict } = found.value.outputs;
    expect([ideal?.text, chosen?.text, clearance?.text]).toEqual(['2.525 mm', '2.500 mm', '0.175 mm']);
    expect(verdict?.text).toBe('no data');
  });

  it.each([
    ['0.20 mm', 'in'],
    ['0.17 mm', 'out'],
  ])('judges against a window that ends at %s: %s', (highest, verdict) => {
    const found = runDeclared(shimChoice, { ...one, lowest: '0.10 mm', highest });
    expect(found.ok && found.value.outputs.verdict?.text).toBe(verdict);
  });

  it.each([
    [{ thinnest: '2.70 mm' }, /the thinnest must not be thicker than the thickest/],
    [{ step: '0.0001 mm' }, /more than 1000 sizes/],
    [{ lowest: '0.3 mm', highest: '0.2 mm' }, /lower end is above its upper end/],
  ])('refuses %j and says why', (change, words) => {
    const found = runDeclared(shimChoice, { ...one, ...change });
    expect(!found.ok && found.fault.map(describeCalcFault).join()).toMatch(words);
  });

  it('says which size would be needed when none is to be had', () => {
    const found = runDeclared(shimChoice, { ...one, measured: '0.95 mm', rounding: 'nearest' });
    expect(!found.ok && found.fault.map(describeCalcFault).join()).toMatch(
      /3\.225 mm would be needed.*2\.4 to 2\.6 mm/,
    );
  });
});

describe('shim pool', () => {
  const all = {
    measured: ['0.30 mm', '0.10 mm'],
    old: ['2.70 mm', '2.80 mm'],
    wanted: ['0.20 mm'],
    lowest: ['0.17 mm'],
    highest: ['0.23 mm'],
  };

  it('swaps two shims and buys none (reuse of removed shims, engine-cases-shims, general rule)', () => {
    const found = runDeclared(shimPool, all);
    if (!found.ok) throw new Error(JSON.stringify(found.fault));
    expect(found.value.outputs.boughtCount?.value).toBe(0);
    expect(found.value.outputs.assignments?.value).toEqual([
      'valve 1: 2.800 mm (out of valve 2) leaves 0.200 mm',
      'valve 2: 2.700 mm (out of valve 1) leaves 0.200 mm',
    ]);
  });

  it('names a valve that nothing fits', () => {
    const found = runDeclared(shimPool, { ...all, measured: ['0.30 mm', '0.60 mm'] });
    expect(found.ok && found.value.outputs.unserved?.value).toEqual(['valve 2: 3.200 mm would be needed']);
  });

  it('refuses lists of different lengths, and half a row of sizes', () => {
    const texts = [{ old: ['2.70 mm'] }, { thinnest: '2.5 mm' }].map((change) => {
      const found = runDeclared(shimPool, { ...all, ...change });
      return found.ok ? '' : found.fault.map(describeCalcFault).join();
    });
    expect(texts[0]).toMatch(/one value a valve/);
    expect(texts[1]).toMatch(/all three/);
  });
});
