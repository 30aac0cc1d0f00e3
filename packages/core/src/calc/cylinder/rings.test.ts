import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Length, mm } from '../../quantity/index.js';
import { allocateRings } from './ring-allocation.js';
import { gapFactors } from './ring-gap-table.js';
import { cautionsOf, numberOf, outputOf, refusalOf, run } from './run.suite.js';

describe('ring gap', () => {
  it('has no second gap when there is no second factor', () => {
    expect(outputOf('cylinder.ring-gap', { bore: '4 in', topFactor: '0.004' }, 'second')).toBeUndefined();
  });

  it('reads a table only by its own applications', () => {
    expect(
      refusalOf('cylinder.ring-gap-table', { bore: '4 in', table: 'five applications', application: 'race boost' }),
    ).toMatch(/this table has no such application/);
    expect(gapFactors('four applications', 'constructor')).toBeUndefined();
    // The table whose racing rows have the smaller second ring.
    const racing = gapFactors('five applications', 'racing');
    expect(racing && racing.second < racing.top).toBe(true);
  });

  it('follows the bore there and back', () => {
    const id = 'cylinder.ring-gap-bore-change';
    const change = (gap: number, boreChange: number) =>
      numberOf(id, { gap: { value: gap, unit: 'mm' }, boreChange: { value: boreChange, unit: 'mm' } }, 'newGap');
    fc.assert(
      fc.property(
        fc.double({ min: 0.2, max: 1, noNaN: true }),
        fc.double({ min: 0, max: 0.5, noNaN: true }),
        (gap, more) => {
          expect(change(change(gap, more), -more)).toBeCloseTo(gap, 9);
        },
      ),
    );
    expect(refusalOf(id, { gap: '0.1 mm', boreChange: '-0.1 mm' })).toMatch(/ends would meet/);
  });

  it('is smallest in the narrowest part of a tapered bore', () => {
    const id = 'cylinder.ring-gap-tapered';
    const bore = { gap: '0.40 mm', measuredIn: '100.10 mm', bores: ['100.10 mm', '100.00 mm'] };
    expect(outputOf(id, bore, 'toFile')).toBeUndefined();
    expect(outputOf(id, bore, 'verdict')).toBe('no limit given');
    expect(cautionsOf(id, bore)).toEqual([]);
    expect(numberOf(id, { ...bore, least: '0.05 mm' }, 'toFile')).toBe(0);
    expect(outputOf(id, { ...bore, least: '0.05 mm' }, 'verdict')).toBe('within');
    expect(cautionsOf(id, { ...bore, gap: '0.30 mm' })).toEqual(['ends-meet']);
  });

  it('closes with heat, and says whether the ends meet', () => {
    const id = 'cylinder.ring-gap-hot';
    const heat = { bore: '100 mm', ringRise: '150 K', boreRise: '80 K' };
    expect(outputOf(id, heat, 'verdict')).toBe('no gap given');
    expect(outputOf(id, heat, 'leftColdBore')).toBeUndefined();
    expect(outputOf(id, { ...heat, gap: '0.6 mm' }, 'verdict')).toBe('stay apart in either case');
    expect(outputOf(id, { ...heat, gap: '0.1 mm' }, 'verdict')).toBe('meet in either case');
    expect(outputOf(id, { ...heat, gap: '0.4 mm' }, 'verdict')).toMatch(/^may meet/);
    // An aluminium cylinder that grows more than the ring: worst case is then the cold bore still.
    expect(numberOf(id, { ...heat, boreExpansion: '23 ppm/K', boreRise: '150 K' }, 'closingFreeBore')).toBeLessThan(0);
    const same = run(id, { ...heat, ringRise: '80 K' }).outputs;
    expect(Number(same.closingFreeBore?.value)).toBeCloseTo(0, 12);
  });

  it('is filed to the target, counting a honing still to come', () => {
    const id = 'cylinder.ring-filing';
    const rings = { gaps: ['0.30 mm', '0.50 mm'], target: '0.45 mm' };
    expect((outputOf(id, rings, 'toFile') as number[]).map((one) => one.toFixed(3))).toEqual(['0.150', '0.000']);
    expect(outputOf(id, rings, 'tooLarge')).toEqual([]);
    expect((outputOf(id, { ...rings, boreChange: '0.02 mm' }, 'toFile') as number[])[0]).toBeCloseTo(
      0.15 - Math.PI * 0.02,
      9,
    );
    expect(outputOf(id, { ...rings, most: '0.49 mm' }, 'tooLarge')).toEqual([2]);
    expect(outputOf(id, { ...rings, most: '0.50 mm' }, 'tooLarge')).toEqual([]);
    expect(refusalOf(id, { ...rings, most: '0.40 mm' })).toMatch(/most must be at least 0.45 mm/);
  });
});

describe('ring in its groove', () => {
  it('judges side clearance, and keeps a ring that does not go in as negative', () => {
    const id = 'cylinder.ring-side-clearance';
    expect(outputOf(id, { groove: '1.20 mm', ring: '1.25 mm' }, 'verdict')).toBe('no limit given');
    expect(numberOf(id, { groove: '1.20 mm', ring: '1.25 mm' }, 'clearance')).toBeCloseTo(-0.05, 9);
    expect(outputOf(id, { groove: '1.30 mm', ring: '1.20 mm', most: '0.09 mm' }, 'verdict')).toBe('too large');
  });

  it('judges back clearance, with and without a land', () => {
    const id = 'cylinder.ring-back-clearance';
    const ring = { bore: '100 mm', grooveRoot: '91.2 mm', ringWidth: '4.1 mm' };
    expect(outputOf(id, ring, 'belowLand')).toBeUndefined();
    expect(outputOf(id, { ...ring, least: '0.4 mm' }, 'verdict')).toBe('too small');
    expect(outputOf(id, { ...ring, least: '0.2 mm', most: '0.3 mm' }, 'verdict')).toBe('within');
    expect(refusalOf(id, { ...ring, grooveRoot: '100 mm' })).toMatch(/grooveRoot must be below 100 mm/);
  });
});

describe('allocation of rings', () => {
  const id = 'cylinder.ring-allocation';
  const typed = (list: readonly number[]) => list.map((value) => ({ value, unit: 'mm' }));

  /** Every way to give the cylinders different rings, tried one by one. */
  function leastFiling(gaps: readonly number[], bores: readonly number[], target: number, most: number): number {
    if (bores.length === 0) return 0;
    const [bore, ...rest] = bores as [number, ...number[]];
    return Math.min(
      Number.POSITIVE_INFINITY,
      ...gaps.map((gap, at) => {
        const shown = gap + Math.PI * (bore - 100);
        if (shown > most + 1e-9) return Number.POSITIVE_INFINITY;
        return Math.max(0, target - shown) + leastFiling(gaps.toSpliced(at, 1), rest, target, most);
      }),
    );
  }

  it('files no more than the best of all allocations, tried one by one', () => {
    const gaps = fc.array(fc.double({ min: 0.2, max: 0.6, noNaN: true }), { minLength: 3, maxLength: 5 });
    const bores = fc.array(fc.double({ min: 99.98, max: 100.06, noNaN: true }), { minLength: 3, maxLength: 3 });
    fc.assert(
      fc.property(gaps, bores, fc.double({ min: 0.45, max: 0.7, noNaN: true }), (list, cylinders, most) => {
        const best = leastFiling(list, cylinders, 0.45, most);
        const plan = allocateRings(list.map(mm), mm(100), cylinders.map(mm), mm(0.45), mm(most));
        expect(plan.ok).toBe(Number.isFinite(best));
        if (!plan.ok) return;
        expect(plan.value.total * 1000).toBeCloseTo(best, 9);
        expect(new Set(plan.value.rings).size).toBe(3);
        for (const gap of plan.value.gaps) expect(gap).toBeLessThanOrEqual((mm(most) as Length) + 1e-12);
      }),
    );
  });

  it('leaves out the rings that cost most, and keeps the order of the cylinders', () => {
    const inputs = {
      gaps: typed([0.2, 0.44, 0.43]),
      measuredIn: '100 mm',
      bores: typed([100, 100.01]),
      target: '0.45 mm',
      most: '0.6 mm',
    };
    const { rings, total } = run(id, inputs).outputs;
    expect(rings?.value).toEqual([2, 3]);
    expect(Number(total?.value)).toBeCloseTo(0.01, 9);
  });

  it('refuses too few rings, gaps that are all too large, and limits that run backwards', () => {
    const inputs = { gaps: ['0.4 mm'], measuredIn: '100 mm', bores: ['100 mm'], target: '0.45 mm', most: '0.6 mm' };
    expect(refusalOf(id, { ...inputs, bores: ['100 mm', '100 mm'] })).toMatch(/fewer rings than cylinders/);
    expect(refusalOf(id, { ...inputs, gaps: ['0.7 mm'] })).toMatch(/in every allocation/);
    expect(refusalOf(id, { ...inputs, most: '0.4 mm' })).toMatch(/most must be at least 0.45 mm/);
  });
});
