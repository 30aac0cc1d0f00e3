import { mm } from '@gudgeon/core/quantity';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  bestExtraShim,
  cheapestAssignment,
  describeShimFault,
  planShims,
  provesOptimal,
  type ShimPlace,
  type ShimPool,
  type ShimPoolInput,
  type ShimSizes,
} from './index.js';

const um = (n: number) => mm(n / 1000);
const inUm = (metres: number) => Math.round(metres * 1e6);
function planned(input: ShimPoolInput): ShimPool {
  const pool = planShims(input);
  if (!pool.ok) throw new Error(JSON.stringify(pool.fault));
  return pool.value;
}
/** Lengths in micrometres. */
const place = (id: string, measured: number, old: number, wanted = 200, half = 30): ShimPlace => ({
  id,
  measured: um(measured),
  old: um(old),
  wanted: um(wanted),
  window: { low: um(wanted - half), high: um(wanted + half) },
});
const row = { thinnest: mm(2.5), thickest: mm(3.3), step: mm(0.05) };

describe('shims for a whole engine', () => {
  it('swaps two shims between valves and buys none (removed shims are reused: general rule, engine-cases-shims)', () => {
    // Valve A needs 2.80 and has 2.70; valve B needs 2.70 and has 2.80. Answer by hand.
    const pool = planned({ places: [place('A', 300, 2700), place('B', 100, 2800)], spares: [], buyable: row });
    expect(pool.boughtCount).toBe(0);
    expect(pool.totalDeviation).toBe(0);
    expect(pool.assignments.map(({ id, origin }) => [id, origin])).toEqual([
      ['A', { kind: 'place', place: 'B' }],
      ['B', { kind: 'place', place: 'A' }],
    ]);
  });

  it('chains removed shims so that one bought shim serves three valves', () => {
    // A takes B's, B takes C's, C needs 2.95 and gets the only bought one. Answer by hand.
    const places = [place('A', 250, 2650), place('B', 300, 2700), place('C', 350, 2800)];
    const pool = planned({ places, spares: [], buyable: row });
    expect(pool.buy.map(({ thickness, count }) => [inUm(thickness), count])).toEqual([[2950, 1]]);
    expect(pool.assignments.map(({ thickness }) => inUm(thickness))).toEqual([2700, 2800, 2950]);
  });

  it('takes a spare before it buys, even when the bought one would come nearer', () => {
    const pool = planned({ places: [place('A', 300, 2700)], spares: [um(2780)], buyable: row });
    expect(pool.assignments[0]).toMatchObject({ origin: { kind: 'spare', index: 0 } });
    expect(pool.boughtCount).toBe(0);
    expect(inUm(pool.assignments[0]!.clearance)).toBe(220);
    expect(inUm(pool.assignments[0]!.deviation)).toBe(20);
  });

  it('leaves a valve its own shim among equals', () => {
    const pool = planned({ places: [place('A', 200, 2700), place('B', 200, 2700)], spares: [um(2700)] });
    expect(pool.assignments.map(({ origin }) => origin.kind)).toEqual(['own', 'own']);
  });

  it('counts both ends of the window as accepted', () => {
    const edge = planned({ places: [place('A', 230, 2700), place('B', 170, 2600)], spares: [] });
    expect(edge.unserved).toEqual([]);
    const beyond = planned({ places: [place('A', 231, 2700)], spares: [] });
    expect(beyond.unserved.map(({ id }) => id)).toEqual(['A']);
  });

  it('names the valve that nothing fits, and still serves the others', () => {
    const pool = planned({ places: [place('A', 900, 3200), place('B', 200, 2700)], spares: [], buyable: row });
    expect(pool.unserved).toEqual([{ id: 'A', ideal: mm(3.9) }]);
    expect(pool.assignments.map(({ id }) => id)).toEqual(['B']);
    expect(provesOptimal(pool.proof)).toBe(true);
  });

  it('buys only what the rounding policy allows', () => {
    const places = [place('A', 327, 2700)];
    const bought = (rounding: 'next-thinner' | 'next-thicker') =>
      planned({ places, spares: [], buyable: row, rounding }).buy.map(({ thickness }) => inUm(thickness));
    expect([bought('next-thinner'), bought('next-thicker')]).toEqual([[2800], [2850]]);
  });

  it('has nothing to do for an engine without shims', () => {
    expect(planned({ places: [], spares: [] })).toMatchObject({ assignments: [], boughtCount: 0, unserved: [] });
  });

  it('leaves an open end of a window open', () => {
    const open = { ...place('A', 500, 2700), window: { low: um(150) } };
    expect(planned({ places: [open], spares: [] }).assignments).toHaveLength(1);
  });

  it('refuses every fault at once', () => {
    const pool = planShims({ places: [place('A', 200, 0), place('A', 200, 2700)], spares: [mm(-1)] });
    expect(!pool.ok && pool.fault.map(({ code }) => code)).toEqual([
      'length-out-of-range',
      'length-out-of-range',
      'place-repeated',
    ]);
  });
});

/** Every way to give each valve a shim on hand, a bought one or none, one by one. Shares no code with the planner. */
function bruteForce(places: readonly ShimPlace[], spares: readonly number[], sizes: readonly number[]) {
  const hand = [...places.map(({ old }) => inUm(old)), ...spares];
  let best = [Number.POSITIVE_INFINITY];
  const better = (a: number[], b: number[]) => a.map((x, i) => x - (b[i] ?? 0)).find((d) => d !== 0);
  const walk = (i: number, used: readonly number[], score: number[]) => {
    if (i === places.length) {
      if ((better(score, best) ?? 0) < 0) best = score;
      return;
    }
    const one = places[i]!;
    const clear = (t: number) => inUm(one.measured) + inUm(one.old) - t;
    const ok = (t: number) => clear(t) >= inUm(one.window.low!) && clear(t) <= inUm(one.window.high!);
    const [none = 0, bought = 0, off = 0, moved = 0] = score;
    const dev = (t: number) => off + Math.abs(clear(t) - inUm(one.wanted));
    hand.forEach((t, k) => {
      if (!used.includes(k) && ok(t)) walk(i + 1, [...used, k], [none, bought, dev(t), moved + (k === i ? 0 : 1)]);
    });
    for (const t of sizes.filter(ok)) walk(i + 1, used, [none, bought + 1, dev(t), moved + 1]);
    walk(i + 1, used, [none + 1, bought, off, moved]);
  };
  walk(0, [], [0, 0, 0, 0]);
  return best;
}
const scoreOf = (pool: ShimPool) => [
  pool.unserved.length,
  pool.boughtCount,
  inUm(pool.totalDeviation),
  pool.assignments.filter(({ origin }) => origin.kind !== 'own').length,
];

const anyPlace = fc
  .record({
    measured: fc.integer({ min: 50, max: 400 }),
    old: fc.integer({ min: 2500, max: 2750 }),
    half: fc.integer({ min: 0, max: 60 }),
  })
  .map(({ measured, old, half }) => ({ measured, old, half }));
const anyPool = (most: number) =>
  fc.record({
    places: fc.array(anyPlace, { minLength: 1, maxLength: most }),
    spares: fc.array(fc.integer({ min: 2500, max: 2900 }), { maxLength: 3 }),
    sizes: fc.uniqueArray(fc.integer({ min: 2500, max: 2950 }), { maxLength: 5 }),
  });
const poolInput = (raw: {
  places: { measured: number; old: number; half: number }[];
  spares: number[];
  sizes: number[];
}): ShimPoolInput => ({
  places: raw.places.map(({ measured, old, half }, i) => place(`V${i + 1}`, measured, old, 200, half)),
  spares: raw.spares.map(um),
  ...(raw.sizes.length > 0 ? { buyable: { sizes: raw.sizes.map(um) } } : {}),
});

describe('any set of valves, spares and sizes', () => {
  it('is served as well as trying every way serves it: unserved, bought, deviation, moved', () => {
    fc.assert(
      fc.property(anyPool(4), (raw) => {
        const input = poolInput(raw);
        const pool = planned(input);
        expect(scoreOf(pool)).toEqual(bruteForce(input.places, raw.spares, raw.sizes));
      }),
      { numRuns: 300 },
    );
  });

  it('carries a proof that holds, uses no shim twice and keeps every clearance inside its window', () => {
    fc.assert(
      fc.property(anyPool(24), (raw) => {
        const input = poolInput(raw);
        const pool = planned(input);
        expect(provesOptimal(pool.proof)).toBe(true);
        const onHand = pool.assignments.flatMap(({ id, origin }) => {
          if (origin.kind === 'bought') return [];
          return origin.kind === 'own'
            ? [`place ${id}`]
            : [origin.kind === 'place' ? `place ${origin.place}` : `spare ${origin.index}`];
        });
        expect(new Set(onHand).size).toBe(onHand.length);
        for (const { id, clearance } of pool.assignments) {
          const { low, high } = input.places.find((one) => one.id === id)!.window;
          expect(inUm(clearance)).toBeGreaterThanOrEqual(inUm(low!));
          expect(inUm(clearance)).toBeLessThanOrEqual(inUm(high!));
        }
        expect(pool.buy.reduce((sum, { count }) => sum + count, 0)).toBe(pool.boughtCount);
        expect(pool.assignments.length + pool.unserved.length).toBe(input.places.length);
      }),
      { numRuns: 100 },
    );
  });
});

describe('a proof of optimality', () => {
  it('does not hold for an assignment that could be cheaper', () => {
    const costs = [
      [1, 5],
      [5, 1],
    ];
    expect(provesOptimal({ costs, columnOf: [0, 1], rowPrices: [1, 1], columnPrices: [0, 0] })).toBe(true);
    expect(provesOptimal({ costs, columnOf: [1, 0], rowPrices: [1, 1], columnPrices: [0, 0] })).toBe(false);
    expect(provesOptimal({ costs, columnOf: [0, 0], rowPrices: [1, 5], columnPrices: [0, 0] })).toBe(false);
    expect(provesOptimal({ costs, columnOf: [1, 0], rowPrices: [5, 5], columnPrices: [0, 0] })).toBe(false);
    expect(provesOptimal({ costs, columnOf: [0, 7], rowPrices: [1, 1], columnPrices: [0, 0] })).toBe(false);
  });

  it('cannot be had with fewer shims than valves: a mistake of the caller', () => {
    expect(() => cheapestAssignment([[1], [2]])).toThrow('a column for each row');
    expect(cheapestAssignment([])).toMatchObject({ cost: 0, columnOf: [] });
  });
});

describe('the one extra shim that would help most', () => {
  it('is the one that saves a purchase', () => {
    const input = {
      places: [place('A', 250, 2650), place('B', 300, 2700), place('C', 350, 2800)],
      spares: [],
      buyable: row,
    };
    const extra = bestExtraShim(input, row);
    if (!extra.ok || !extra.value) throw new Error('a purchase can be saved');
    expect(inUm(extra.value.thickness)).toBe(2950);
    expect(extra.value).toMatchObject({ fewerUnserved: 0, fewerBought: 1, lessDeviation: 0 });
  });

  it('is the one that serves a valve that could not be served, before all else', () => {
    const input = { places: [place('A', 900, 3200), place('B', 215, 2700)], spares: [] };
    const extra = bestExtraShim(input, { sizes: [um(2715), um(3890)] });
    if (!extra.ok || !extra.value) throw new Error('a valve can be served');
    expect(inUm(extra.value.thickness)).toBe(3890);
    expect(extra.value.fewerUnserved).toBe(1);
  });

  it('is absent when nothing is left to improve', () => {
    const extra = bestExtraShim({ places: [place('A', 200, 2700)], spares: [] }, row);
    expect(extra).toEqual({ ok: true, value: undefined });
  });

  it('is refused for a plan or a row of sizes that is refused', () => {
    const input = { places: [place('A', 200, 2700)], spares: [] };
    const wrong = bestExtraShim({ ...input, spares: [um(-1)] }, row);
    expect(!wrong.ok && wrong.fault.map(describeShimFault)).toEqual(['spare 1: -0.001 mm; 0 to 20 mm is valid']);
    const sizes = bestExtraShim(input, { sizes: [] });
    expect(!sizes.ok && sizes.fault.map(describeShimFault)).toEqual(['there are no sizes to choose from']);
  });
});

describe('sizes that can be bought', () => {
  const refusedSizes = (buyable: ShimSizes) => {
    const pool = planShims({ places: [place('A', 200, 2700), place('A', 200, 2700)], spares: [], buyable });
    return pool.ok ? [] : pool.fault.map(describeShimFault);
  };

  it('are refused together with what is wrong with the valves', () => {
    expect(refusedSizes({ ...row, step: mm(0) })).toEqual(['A is named twice', 'the step must be above 0']);
    expect(refusedSizes({ ...row, thickest: mm(21) })[1]).toBe('shim size: 21 mm; 0 to 20 mm is valid');
    const many = Array.from({ length: 1001 }, (_, i) => um(2000 + i));
    expect(refusedSizes({ sizes: many })[1]).toBe('that makes more than 1000 sizes');
  });
});
