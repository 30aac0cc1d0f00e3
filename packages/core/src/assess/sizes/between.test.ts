import { describe, expect, it } from 'vitest';
import { assess } from '../assess.js';
import { EXACT, EXACT_GAUGE, engineWith, findingIn, readAll, readingsOf } from '../assess.suite.js';

const scale = { ...EXACT_GAUGE, measured: 'mass', unit: 'g', resolution: 1e-4 } as const;
const by = { instrument: 'exact' };
const engine = engineWith(['property: piston-mass.between, quantity: mass, whenNew: "<= 2 g"']);
const masses = (feature: string, grams: readonly number[]) =>
  grams.flatMap((one, at) => readAll(engine, feature, `${at + 1}`, `${one} g`, by));

describe('the places of a feature compared', () => {
  it('gives the spread of the pistons by mass once all are weighed', () => {
    const three = readingsOf(masses('piston-mass', [640.2, 641.1, 639.6]), { instruments: [scale] });
    expect(findingIn(assess(engine, three, EXACT).findings, 'piston-mass.between@all')).toMatchObject({
      verdict: 'no data',
      words: '3 of 4 read',
      missing: ['piston-mass/4/mass'],
    });
    const four = readingsOf(masses('piston-mass', [640.2, 641.1, 639.6, 640.0]), { instruments: [scale] });
    const found = findingIn(assess(engine, four, EXACT).findings, 'piston-mass.between@all');
    // 641.1 − 639.6 g, well inside 2 g; the step of the scale counts in both weighings: 0.1 g/√12 · √2.
    expect(found.size?.value).toBeCloseTo(1.5e-3, 12);
    expect(found.size?.u).toBeCloseTo((1e-4 / Math.sqrt(12)) * Math.SQRT2, 12);
    expect(found.verdict).toBe('in');
  });
  it('adds both ends of a rod before rods are compared', () => {
    const taken = [
      ...masses('rod-big-end-mass', [450, 452, 450, 450]),
      ...masses('rod-small-end-mass', [180, 178, 181, 180]),
    ];
    const { sizes } = assess(engine, readingsOf(taken, { instruments: [scale] }), EXACT);
    // Rods of 630, 630, 631 and 630 g, although big and small ends differ by more.
    expect(sizes.get('rod-mass.between@all')?.value).toBeCloseTo(1e-3, 12);
    expect(sizes.get('rod-big-end-mass.between@all')?.value).toBeCloseTo(2e-3, 12);
  });
});
