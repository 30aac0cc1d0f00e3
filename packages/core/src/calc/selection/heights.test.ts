import { inch, mm } from '@gudgeon/core/quantity';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { everyChoice, sum } from './every-way.suite.js';
import {
  allStacks,
  commonHeight,
  distinctStacks,
  heightForLoad,
  linerSeals,
  linersKeep,
  loadAtHeight,
  springShims,
} from './index.js';

const um = (n: number) => mm(n / 1000);
const inUm = (length: number) => Math.round(length * 1e6);
const listOf = (from: number, to: number, min: number, max: number) =>
  fc.array(fc.integer({ min: from, max: to }), { minLength: min, maxLength: max });

describe('stacks of shims', () => {
  it('of two sizes and up to two shims are six, of which those of one height are one', () => {
    expect(allStacks([mm(0.4), mm(0.8)], 2).map(({ shims }) => shims)).toEqual([[], [0], [1], [0, 0], [0, 1], [1, 1]]);
    expect(distinctStacks([mm(0.4), mm(0.8)], 2).map(({ shims }) => shims)).toEqual([[], [0], [1], [0, 1], [1, 1]]);
  });
});

describe('shims under valve springs', () => {
  const inputs = fc.record({
    heights: listOf(46_000, 46_800, 1, 3),
    wanted: fc.integer({ min: 45_400, max: 46_200 }),
    sizes: fc.uniqueArray(fc.integer({ min: 100, max: 700 }), { minLength: 1, maxLength: 2 }),
    stock: fc.option(fc.array(fc.nat({ max: 3 }), { minLength: 2, maxLength: 2 }), { nil: undefined }),
    most: fc.integer({ min: 0, max: 2 }),
    window: fc.constantFrom<{ readonly low?: number; readonly high?: number }>({}, { low: -200, high: 200 }),
  });

  it('bring the heights as near as the best of all ways, with the fewest left without', () => {
    fc.assert(
      fc.property(inputs, ({ heights, wanted, sizes, stock, most, window }) => {
        const used = stock?.slice(0, sizes.length);
        const found = springShims({
          heights: heights.map(um),
          wanted: heights.map(() => um(wanted)),
          sizes: sizes.map(um),
          ...(used && { stock: used }),
          most,
          window: Object.fromEntries(Object.entries(window).map(([end, value]) => [end, um(value)])),
        });
        if (!found.ok) throw new Error(found.fault.code);
        const stacks = allStacks(sizes.map(um), most);
        const ways = [...everyChoice(heights.map(() => stacks.length + 1))].flatMap((way) => {
          const chosen = way.map((one) => stacks[one]);
          const taken = sizes.map(
            (_, kind) => chosen.flatMap((one) => one?.shims ?? []).filter((one) => one === kind).length,
          );
          if (used && taken.some((count, kind) => count > used[kind]!)) return [];
          const off = chosen.map((one, at) => (one ? heights[at]! - inUm(one.height) - wanted : undefined));
          const { low = -Infinity, high = Infinity } = window;
          if (off.some((one) => one !== undefined && (one < low || one > high))) return [];
          return [[off.filter((one) => one === undefined).length, sum(off.map((one) => Math.abs(one ?? 0)))]];
        });
        const [best] = ways.toSorted((a, b) => a[0]! - b[0]! || a[1]! - b[1]!);
        const { unserved, total, bound, proven } = found.value;
        expect([unserved, inUm(total)]).toEqual(best);
        expect([proven, inUm(bound)]).toEqual([true, inUm(total)]);
      }),
    );
  });

  it('out of a search that ended early come with a bound', () => {
    const found = springShims(
      {
        heights: [um(46_400), um(46_400)],
        wanted: [um(46_000), um(46_000)],
        sizes: [um(400)],
        stock: [1],
        most: 1,
        window: {},
      },
      0,
    );
    expect(found.ok && [found.value.proven, inUm(found.value.bound), inUm(found.value.total)]).toEqual([false, 0, 400]);
  });

  it('make the heights as equal as the best of all ways', () => {
    fc.assert(
      fc.property(inputs, fc.boolean(), ({ heights, sizes, most }, bounded) => {
        const window = bounded ? { low: um(45_500), high: um(46_100) } : {};
        const found = commonHeight({ heights: heights.map(um), sizes: sizes.map(um), most, window });
        if (!found.ok) throw new Error(found.fault.code);
        const stacks = allStacks(sizes.map(um), most).map(({ height }) => inUm(height));
        const ways = [...everyChoice(heights.map(() => stacks.length))]
          .map((way) => way.map((one, at) => heights[at]! - stacks[one]!))
          .filter((all) => !bounded || all.every((one) => one >= 45_500 && one <= 46_100));
        const best = Math.min(...ways.map((all) => Math.max(...all) - Math.min(...all)));
        expect(found.value ? inUm(found.value.spread) : Infinity).toBe(best);
      }),
    );
  });

  it('are refused when they make too many stacks', () => {
    const sizes = Array.from({ length: 40 }, (_, i) => um(100 + i));
    const input = { heights: [um(46_000)], wanted: [um(45_000)], sizes, most: 4, window: {} };
    expect(springShims(input)).toEqual({ ok: false, fault: { code: 'too-many-stacks', most: 5000 } });
    expect(commonHeight(input).ok).toBe(false);
  });

  it('of 0.015 in add 4.5 lbf to a spring of 300 lbf/in (reference row MO-32)', () => {
    const [lbf, rate] = [4.4482216152605, (300 * 4.4482216152605) / 0.0254];
    const spring = { load: 100 * lbf, testHeight: inch(1.75), rate } as unknown as Parameters<typeof loadAtHeight>[0];
    expect(loadAtHeight(spring, inch(1.735)) / lbf).toBeCloseTo(104.5, 9);
    expect(heightForLoad(spring, loadAtHeight(spring, inch(1.7)))).toBeCloseTo(inch(1.7), 12);
  });
});

describe('wet liners', () => {
  const inputs = fc.record({
    bare: listOf(60, 130, 1, 4),
    seals: fc.array(fc.integer({ min: 80, max: 160 }), { minLength: 1, maxLength: 3 }),
    low: fc.option(fc.constant(170), { nil: undefined }),
    stepLimit: fc.option(fc.integer({ min: 5, max: 40 }), { nil: undefined }),
    oneWay: fc.boolean(),
    choice: fc.constantFrom('same-for-all' as const, 'one-each' as const),
  });
  const HIGH = 230;

  it('stand as high as the best of all ways that keep the rules', () => {
    fc.assert(
      fc.property(inputs, ({ bare, seals, low, stepLimit, oneWay, choice }) => {
        const rules = {
          high: um(HIGH),
          oneWay,
          ...(low !== undefined && { low: um(low) }),
          ...(stepLimit !== undefined && { stepLimit: um(stepLimit) }),
        };
        const found = linerSeals({ bare: bare.map(um), seals: seals.map(um), choice, ...rules });
        const ways = [...everyChoice(bare.map(() => seals.length))]
          .filter((way) => choice === 'one-each' || new Set(way).size === 1)
          .map((way) => way.map((one, at) => bare[at]! + seals[one]!))
          .filter((all) => all.every((one) => one <= HIGH && one >= (low ?? -Infinity)))
          .filter((all) => {
            const steps = all.slice(1).map((one, at) => one - all[at]!);
            const kept = steps.every((one) => Math.abs(one) <= (stepLimit ?? Infinity));
            return kept && (!oneWay || steps.every((one) => one >= 0) || steps.every((one) => one <= 0));
          });
        expect(found.ok).toBe(ways.length > 0);
        if (!found.ok) return;
        const best = Math.min(...ways.map((all) => sum(all.map((one) => HIGH - one))));
        expect(inUm(found.value.total)).toBe(best);
        expect(inUm(found.value.bound)).toBeLessThanOrEqual(best);
        const kept = linersKeep(found.value.protrusions, rules);
        expect([kept.stepKept, kept.runsOneWay || !oneWay]).toEqual([true, true]);
        expect(found.value.protrusions.map(inUm).every((one) => one <= HIGH && one >= (low ?? one))).toBe(true);
      }),
    );
  });

  it('take the seal just below what the higher one leaves: 0.122, to stand at 0.222 and 0.202 (reference row O-39)', () => {
    const found = linerSeals({
      bare: [mm(0.1), mm(0.08)],
      seals: [mm(0.102), mm(0.122), mm(0.147)],
      high: mm(0.23),
      stepLimit: mm(0.04),
      oneWay: true,
      choice: 'same-for-all',
    });
    expect(found.ok && found.value.protrusions.map(inUm)).toEqual([222, 202]);
  });

  it.each([
    [[0.21, 0.19, 0.16], true, true],
    [[0.21, 0.16, 0.19], false, false],
    [[0.16, 0.16, 0.19], true, true],
  ])('at %j keep a step of 0.04: %s, and run one way: %s (reference row O-39)', (all, step, way) => {
    const kept = linersKeep(all.map(mm), { high: mm(0.23), stepLimit: mm(0.04), oneWay: true });
    expect([kept.stepKept, kept.runsOneWay]).toEqual([step, way]);
  });

  it.each([
    [[100, 110, 120], 'rising', true],
    [[120, 110, 110], 'falling', true],
    [[100, 110, 100], 'up and down again', false],
  ])('at %j with one seal to be had are %s: one way is %s', (bare, _, kept) => {
    const found = linerSeals({ bare: bare.map(um), seals: [um(100)], high: um(230), oneWay: true, choice: 'one-each' });
    expect(found.ok).toBe(kept);
  });

  it('name the first liner that no seal brings into the window', () => {
    const rules = { high: um(230), low: um(200), oneWay: false, choice: 'one-each' as const };
    const found = linerSeals({ bare: [um(100), um(10)], seals: [um(120)], ...rules });
    expect(!found.ok && found.fault).toEqual({ code: 'no-seals', liner: 1 });
  });
});
