import { type Length, mm } from '@gudgeon/core/quantity';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { everyAssignment, everyChoice, sum } from './every-way.suite.js';
import { extraPart, type Goal, type PartsInput, partsToPlaces, partsWithShop, type ShopInput } from './index.js';

const um = (n: number) => mm(n / 1000);
const inUm = (length: number) => Math.round(length * 1e6);
const GOALS = ['least-total', 'smallest-worst', 'least-spread'] as const;
const lengths = (from: number, to: number, min: number, max: number) =>
  fc.array(fc.integer({ min: from, max: to }), { minLength: min, maxLength: max }).map((list) => list.map(um));

/** Goal of a plan from the fits in whole micrometres. */
function goalOf(goal: Goal, fits: readonly number[], target: number): number {
  const deviations = fits.map((fit) => Math.abs(fit - target));
  if (goal === 'least-spread') return Math.max(...fits) - Math.min(...fits);
  return goal === 'least-total' ? sum(deviations) : Math.max(...deviations);
}
function bestOf(input: PartsInput): number {
  const { low = -Infinity, high = Infinity } = input.window;
  const ways = [...everyAssignment(input.places.length, input.parts.length)]
    .map((parts) => parts.map((part, place) => inUm(input.places[place]! - input.parts[part]!)))
    .filter((fits) => fits.every((fit) => inUm(low) <= fit && fit <= inUm(high)));
  return Math.min(...ways.map((fits) => goalOf(input.goal, fits, inUm(input.target))));
}

const inputs = fc.record({
  places: lengths(80_000, 80_030, 1, 4),
  parts: lengths(79_960, 79_990, 1, 5),
  target: fc.integer({ min: 20, max: 50 }).map(um),
  window: fc.oneof(fc.constant({}), fc.constant({ low: um(25), high: um(45) })),
  goal: fc.constantFrom(...GOALS),
});

describe('pistons and bores', () => {
  it('are brought together as well as the best of all ways, for each goal', () => {
    fc.assert(
      fc.property(inputs, (input) => {
        const found = partsToPlaces(input);
        const best = bestOf(input);
        expect(found.ok).toBe(Number.isFinite(best));
        if (!found.ok) return;
        const fits = found.value.fits.map(inUm);
        expect(goalOf(input.goal, fits, inUm(input.target))).toBe(best);
        expect(new Set(found.value.partOf).size).toBe(input.places.length);
        expect(fits).toEqual(found.value.partOf.map((part, at) => inUm(input.places[at]! - input.parts[part]!)));
        const deviations = fits.map((fit) => Math.abs(fit - inUm(input.target)));
        const { total, worst, spread } = found.value;
        expect([total, worst, spread].map(inUm)).toEqual([
          sum(deviations),
          Math.max(...deviations),
          Math.max(...fits) - Math.min(...fits),
        ]);
      }),
    );
  });

  it('are the same plan when all sizes grow alike, so that the unit does not matter', () => {
    fc.assert(
      fc.property(inputs, (input) => {
        const larger = (list: readonly Length[]) => list.map((one) => (one + 0.001) as Length);
        const moved = { ...input, places: larger(input.places), parts: larger(input.parts) };
        expect(partsToPlaces(moved).ok).toBe(partsToPlaces(input).ok);
        const [a, b] = [partsToPlaces(input), partsToPlaces(moved)];
        if (a.ok && b.ok) expect(b.value.partOf).toEqual(a.value.partOf);
      }),
    );
  });

  it('keep to the window of each place where the rear pair runs looser, and find the best of all ways', () => {
    const own = fc.constantFrom({ low: um(25), high: um(35) }, { low: um(30), high: um(45) }, {});
    fc.assert(
      fc.property(inputs, fc.array(own, { minLength: 4, maxLength: 4 }), (input, all) => {
        const windows = all.slice(0, input.places.length);
        const found = partsToPlaces({ ...input, windows });
        const fitsOf = (parts: readonly number[]) =>
          parts.map((part, place) => inUm(input.places[place]! - input.parts[part]!));
        const accepted = [...everyAssignment(input.places.length, input.parts.length)].map(fitsOf).filter((fits) =>
          fits.every((fit, at) => {
            const { low = -1, high = 1 } = windows[at] as { low?: number; high?: number };
            return inUm(low) <= fit && fit <= inUm(high);
          }),
        );
        const best = Math.min(...accepted.map((fits) => goalOf(input.goal, fits, inUm(input.target))));
        expect(found.ok).toBe(Number.isFinite(best));
        if (found.ok) expect(goalOf(input.goal, found.value.fits.map(inUm), inUm(input.target))).toBe(best);
      }),
    );
  });

  it('name the places that would be short of parts for a smaller worst deviation', () => {
    const found = partsToPlaces({
      places: [um(80_010), um(80_010), um(80_020)],
      parts: [um(79_970), um(79_965), um(79_980)],
      target: um(40),
      window: {},
      goal: 'smallest-worst',
    });
    expect(found.ok && found.value.short).toEqual({ places: [0, 1], parts: [0] });
  });

  it('are refused with the places that may take too few parts', () => {
    const found = partsToPlaces({
      places: [um(80_010), um(80_011)],
      parts: [um(79_970), um(79_900)],
      target: um(40),
      window: { low: um(35), high: um(45) },
      goal: 'least-total',
    });
    expect(!found.ok && found.fault).toEqual({ code: 'no-parts-plan', places: [0, 1], parts: [0] });
  });
});

describe('one more part', () => {
  it('is the one with which the best of all plans is best', () => {
    fc.assert(
      fc.property(inputs, lengths(79_960, 79_990, 1, 4), (input, sizes) => {
        const found = extraPart(input, sizes);
        const now = bestOf(input);
        const withEach = sizes.map((size) => bestOf({ ...input, parts: [...input.parts, size] }));
        const best = Math.min(now, ...withEach);
        expect(found.ok).toBe(Number.isFinite(best));
        if (!found.ok) return;
        const { plan, size, gain } = found.value;
        expect(goalOf(input.goal, plan.fits.map(inUm), inUm(input.target))).toBe(best);
        expect(size).toBe(best < now ? sizes[withEach.indexOf(best)] : undefined);
        expect(gain === undefined ? Infinity : inUm(gain)).toBe(now - best);
      }),
    );
  });
});

describe('parts on hand and bought ones', () => {
  const shops = fc.record({
    places: lengths(80_000, 80_030, 1, 4),
    stock: lengths(79_960, 79_990, 0, 3),
    shop: fc.array(
      fc.record({ size: fc.integer({ min: 79_960, max: 79_990 }).map(um), price: fc.integer({ min: 0, max: 4 }) }),
      { maxLength: 3 },
    ),
    budget: fc.oneof(fc.constant(undefined), fc.integer({ min: 0, max: 9 })),
  });

  /** Wishes of every way: places without, money, deviation. */
  function bestWishes(input: ShopInput): readonly number[] {
    const { places, stock, shop } = input;
    const ways = [...everyChoice(places.map(() => stock.length + shop.length + 1))].flatMap((way) => {
      const used = way.filter((one) => one < stock.length);
      if (new Set(used).size < used.length) return [];
      const sizes = way.map((one) => stock[one] ?? shop[one - stock.length]?.size);
      const fits = sizes.map((size, at) => (size === undefined ? undefined : inUm(places[at]! - size)));
      const ends = (at: number) => input.windows?.[at] ?? input.window;
      if (fits.some((fit, at) => fit !== undefined && (fit < inUm(ends(at).low) || fit > inUm(ends(at).high))))
        return [];
      const spent = sum(way.map((one) => shop[one - stock.length]?.price ?? 0));
      if (spent > (input.budget ?? Infinity)) return [];
      return [
        [
          fits.filter((fit) => fit === undefined).length,
          spent,
          sum(fits.map((fit) => (fit === undefined ? 0 : Math.abs(fit - 40)))),
        ],
      ];
    });
    return ways.toSorted((a, b) => a[0]! - b[0]! || a[1]! - b[1]! || a[2]! - b[2]!)[0]!;
  }

  it('serve the most places within the budget, for the least money, with the least deviation', () => {
    fc.assert(
      fc.property(shops, ({ budget, ...rest }) => {
        const input: ShopInput = {
          ...rest,
          ...(budget !== undefined && { budget }),
          target: um(40),
          window: { low: um(30), high: um(50) },
        };
        const found = partsWithShop(input);
        if (!found.ok) throw new Error(found.fault.code);
        const { unserved, spent, total, nextSpent, sources, bought } = found.value;
        expect([unserved, spent, inUm(total)]).toEqual(bestWishes(input));
        expect(bought).toBe(sources.filter(({ kind }) => kind === 'shop').length);
        expect(found.value.fits.filter((fit) => fit === undefined).length).toBe(unserved);
        if (nextSpent === undefined) return;
        // One more place is served by exactly that much money.
        expect(bestWishes({ ...input, budget: nextSpent })).toEqual([unserved - 1, nextSpent, expect.any(Number)]);
        expect(nextSpent).toBeGreaterThan(budget!);
      }),
    );
  });

  it('keep to the window of each place where these differ', () => {
    const own = fc.constantFrom({ low: um(30), high: um(40) }, { low: um(38), high: um(60) });
    fc.assert(
      fc.property(shops, fc.array(own, { minLength: 4, maxLength: 4 }), ({ budget: _, ...rest }, all) => {
        const windows = all.slice(0, rest.places.length);
        const input: ShopInput = { ...rest, windows, target: um(40), window: { low: um(30), high: um(50) } };
        const found = partsWithShop(input);
        if (!found.ok) throw new Error(found.fault.code);
        const { unserved, spent, total } = found.value;
        expect([unserved, spent, inUm(total)]).toEqual(bestWishes(input));
      }),
    );
  });

  it('are refused when prices and window are too large for exact sums', () => {
    const found = partsWithShop({
      places: [mm(80)],
      stock: [],
      shop: [{ size: mm(79), price: 1e9 }],
      target: mm(0),
      window: { low: mm(-1000), high: mm(1000) },
    });
    expect(found).toEqual({ ok: false, fault: { code: 'too-fine' } });
  });
});
