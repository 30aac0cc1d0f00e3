import { mm } from '@gudgeon/core/quantity';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { everyChoice, sum } from './every-way.suite.js';
import { type OptionSearch, type ShellsInput, searchOptions, shellsToJournals } from './index.js';

const um = (n: number) => mm(n / 1000);
const inUm = (length: number) => Math.round(length * 1e6);

const searches = fc.record({
  places: fc.array(
    fc
      .array(fc.record({ cost: fc.nat({ max: 20 }), uses: fc.array(fc.nat({ max: 2 }), { maxLength: 2 }) }), {
        minLength: 1,
        maxLength: 3,
      })
      .map((options) => [...options, { cost: 100, uses: [] }]),
    { minLength: 1, maxLength: 4 },
  ),
  stock: fc.array(fc.nat({ max: 3 }), { minLength: 3, maxLength: 3 }),
  beyond: fc.oneof(
    fc.constantFrom<number | readonly number[]>(7, Infinity),
    fc.array(fc.constantFrom(3, 7, Infinity), { minLength: 3, maxLength: 3 }),
  ),
});

function costOf({ places, stock, beyond }: OptionSearch, way: readonly number[]): number {
  const priceOf = (kind: number): number => (typeof beyond === 'number' ? beyond : beyond[kind]!);
  const options = way.map((one, place) => places[place]![one]!);
  const missing = stock.map((count, kind) =>
    Math.max(0, options.flatMap(({ uses }) => uses).filter((one) => one === kind).length - count),
  );
  return (
    sum(options.map(({ cost }) => cost)) + sum(missing.map((count, kind) => (count === 0 ? 0 : count * priceOf(kind))))
  );
}
const leastOf = (input: OptionSearch) =>
  Math.min(...[...everyChoice(input.places.map((options) => options.length))].map((way) => costOf(input, way)));

describe('a choice for each place out of one stock', () => {
  it('costs as little as the cheapest of all ways', () => {
    fc.assert(
      fc.property(searches, (input) => {
        const found = searchOptions(input);
        expect([found.cost, found.bound]).toEqual([leastOf(input), leastOf(input)]);
        expect(costOf(input, found.chosen)).toBe(found.cost);
      }),
    );
  });

  it('that ends early has a plan, and a bound that no plan goes below', () => {
    fc.assert(
      fc.property(searches, fc.nat({ max: 3 }), (input, steps) => {
        const found = searchOptions(input, steps);
        const least = leastOf(input);
        expect(found.steps).toBeLessThanOrEqual(steps);
        expect(found.bound).toBeLessThanOrEqual(least);
        expect(found.cost).toBeGreaterThanOrEqual(least);
        expect(costOf(input, found.chosen)).toBe(found.cost);
      }),
    );
  });
});

describe('bearing halves out of one stock', () => {
  const inputs = fc.record({
    positions: fc.array(
      fc.record({
        housing: fc.integer({ min: 64_000, max: 64_012 }).map(um),
        journal: fc.integer({ min: 59_958, max: 59_970 }).map(um),
      }),
      { minLength: 1, maxLength: 3 },
    ),
    classes: fc.array(
      fc
        .record({ wall: fc.integer({ min: 2_006, max: 2_016 }).map(um) }, {})
        .chain(({ wall }) =>
          fc
            .record({ stock: fc.option(fc.nat({ max: 3 }), { nil: undefined }), forSale: fc.boolean() })
            .map(({ stock, forSale }) => ({ wall, ...(stock !== undefined && { stock }), forSale })),
        ),
      { minLength: 1, maxLength: 3 },
    ),
    target: fc.constant(um(20)),
    window: fc.constant({ low: um(14), high: um(28) }),
    widestMix: fc.constantFrom(um(0), um(3), um(10)),
    thicker: fc.constantFrom('either' as const, 'upper' as const, 'lower' as const),
    mayBuy: fc.boolean(),
  });

  function wishes(input: ShellsInput): readonly number[] {
    const { positions, classes } = input;
    const pairs = classes.flatMap((_, upper) => classes.map((_x, lower) => [upper, lower] as const));
    const ways = [...everyChoice(positions.map(() => pairs.length + 1))].flatMap((way) => {
      const halves = way.map((one) => pairs[one]);
      const fits = halves.map((pair, at) => {
        if (!pair) return undefined;
        const [upper, lower] = pair.map((one) => inUm(classes[one]!.wall)) as [number, number];
        const { housing, journal } = positions[at]!;
        const mixed = Math.abs(upper - lower) <= inUm(input.widestMix);
        const placed = input.thicker === 'either' || (input.thicker === 'upper' ? upper >= lower : lower >= upper);
        const fit = inUm(housing) - upper - lower - inUm(journal);
        return mixed && placed && fit >= 14 && fit <= 28 ? Math.abs(fit - 20) : Number.NaN;
      });
      if (fits.some((one) => Number.isNaN(one))) return [];
      const bought = classes.map(({ stock }, kind) =>
        stock === undefined ? 0 : Math.max(0, halves.flat().filter((one) => one === kind).length - stock),
      );
      if (bought.some((count, kind) => count > 0 && !(input.mayBuy && classes[kind]!.forSale !== false))) return [];
      return [[fits.filter((one) => one === undefined).length, sum(bought), sum(fits.map((one) => one ?? 0))]];
    });
    return ways.toSorted((a, b) => a[0]! - b[0]! || a[1]! - b[1]! || a[2]! - b[2]!)[0]!;
  }

  it('leave the fewest positions without, then buy fewest, then deviate least, of all ways', () => {
    fc.assert(
      fc.property(inputs, (input) => {
        const found = shellsToJournals(input);
        const { unserved, buy, total, proven, bound } = found;
        expect([unserved, sum(buy), inUm(total)]).toEqual(wishes(input));
        expect(proven).toBe(true);
        expect([bound.unserved, bound.bought, inUm(bound.total)]).toEqual([unserved, sum(buy), inUm(total)]);
      }),
    );
  });

  it('leave 0.021, 0.018 and 0.015 mm with both thin, mixed and both thick (reference row O-13)', () => {
    const walls = [2.0105, 2.0135].map(mm);
    const clearanceFor = (target: number) => {
      const found = shellsToJournals({
        positions: [{ housing: mm(64.006), journal: mm(59.964) }],
        classes: walls.map((wall) => ({ wall })),
        target: mm(target),
        window: { low: mm(0.01), high: mm(0.03) },
        widestMix: mm(0.003),
        thicker: 'upper',
        mayBuy: false,
      });
      return inUm(found.pairs[0]!.clearance);
    };
    expect([0.021, 0.018, 0.015].map(clearanceFor)).toEqual([21, 18, 15]);
  });

  it('out of a search that ended early come with the bound that was reached', () => {
    const position = { housing: um(64_006), journal: um(59_964) };
    const found = shellsToJournals(
      {
        positions: [position, position],
        classes: [
          { wall: um(2_011), stock: 2 },
          { wall: um(2_013), stock: 1 },
        ],
        target: um(18),
        window: { low: um(10), high: um(30) },
        widestMix: um(2),
        thicker: 'either',
        mayBuy: false,
      },
      0,
    );
    expect(found.proven).toBe(false);
    expect(found.bound).toEqual({ unserved: 0, bought: 0, total: 0 });
  });
});
