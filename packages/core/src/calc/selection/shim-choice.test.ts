import { mm } from '@gudgeon/core/quantity';
import { describe, expect, it } from 'vitest';
import printed from '../../../../../cases/shims.json' with { type: 'json' };
import { chooseShim, type ShimChoiceInput, type ShimRounding } from './index.js';

const row = (thinnest: number, thickest: number, step: number) => ({
  thinnest: mm(thinnest),
  thickest: mm(thickest),
  step: mm(step),
});
function chosen(input: ShimChoiceInput) {
  const choice = chooseShim(input);
  if (!choice.ok) throw new Error(JSON.stringify(choice.fault));
  return choice.value;
}
const inMm = (metres: number) => Math.round(metres * 1e6) / 1e3;

describe('printed rules (cases/shims.json, each with its address and what of it is printed)', () => {
  it.each(printed.choices)('$case', (one) => {
    const [low, high] = one.window ?? [];
    const choice = chosen({
      measured: mm(one.measured),
      old: mm(one.old),
      wanted: mm(one.wanted),
      sizes: row(one.thinnest, one.thickest, one.step),
      rounding: one.rounding as ShimRounding,
      ...(low !== undefined && high !== undefined ? { window: { low: mm(low), high: mm(high) } } : {}),
    });
    expect(inMm(choice.ideal)).toBe(one.ideal);
    expect(inMm(choice.chosen)).toBe(one.chosen);
    expect(inMm(choice.clearance)).toBe(one.clearance);
    expect(choice.accepted).toBe(one.accepted);
  });

  it.each(printed.afterChange)('$case: clearance after the printed change', (one) => {
    // The one size that was fitted: what is left is the clearance that the manual states.
    const choice = chosen({
      measured: mm(one.measured),
      old: mm(one.old),
      wanted: mm(one.clearance),
      sizes: { sizes: [mm(one.new)] },
      rounding: 'nearest',
    });
    expect(inMm(choice.clearance)).toBe(one.clearance);
    expect(inMm(choice.ideal)).toBe(one.new);
  });

  it.each(printed.choices.filter(({ count }) => count !== undefined))(
    '$case: has as many sizes as the manual says',
    (one) => {
      const fits = (size: number) =>
        chosen({
          measured: mm(0),
          old: mm(size),
          wanted: mm(0),
          sizes: row(one.thinnest, one.thickest, one.step),
          rounding: 'nearest',
        }).deviation === 0;
      const thousandths = Array.from({ length: 4000 }, (_, i) => i / 1000);
      const inRow = thousandths.filter((size) => size >= one.thinnest && size <= one.thickest);
      expect(inRow.filter(fits)).toHaveLength(one.count!);
    },
  );
});

describe('rounding', () => {
  const at = (ideal: number, rounding: ShimRounding) =>
    inMm(chosen({ measured: mm(0.2), old: mm(ideal), wanted: mm(0.2), sizes: row(2.5, 3.3, 0.05), rounding }).chosen);

  it('to the next thinner never leaves less clearance than wanted, to the next thicker never more', () => {
    expect([at(2.74, 'next-thinner'), at(2.71, 'next-thicker')]).toEqual([2.7, 2.75]);
  });

  it('keeps a size that is exactly right under every policy', () => {
    expect((['nearest', 'next-thinner', 'next-thicker'] as const).map((rounding) => at(2.85, rounding))).toEqual([
      2.85, 2.85, 2.85,
    ]);
  });

  it('takes the thinner of two equally near ones, which leaves more clearance', () => {
    expect(at(2.725, 'nearest')).toBe(2.7);
  });
});

describe('a shim that cannot be had', () => {
  const ask = (ideal: number, rounding: ShimRounding) =>
    chooseShim({ measured: mm(0.2), old: mm(ideal), wanted: mm(0.2), sizes: row(2.5, 3.3, 0.05), rounding });

  it.each([
    [2.45, 'next-thinner'],
    [3.31, 'next-thicker'],
    [3.33, 'nearest'],
    [2.47, 'nearest'],
  ] as const)('%d mm to %s is beyond the sizes', (ideal, rounding) => {
    const choice = ask(ideal, rounding);
    expect(!choice.ok && choice.fault.code).toBe('beyond-sizes');
  });

  it('is still near enough up to half a step beyond the ends', () => {
    expect(ask(3.32, 'nearest').ok).toBe(true);
  });
});

describe('bad input', () => {
  const good = {
    measured: mm(0.2),
    old: mm(2.7),
    wanted: mm(0.2),
    sizes: row(2.5, 3.3, 0.05),
    rounding: 'nearest',
  } as const;
  it.each([
    [{ old: mm(0) }, 'length-out-of-range'],
    [{ old: mm(25) }, 'length-out-of-range'],
    [{ measured: mm(Number.NaN) }, 'length-out-of-range'],
    [{ sizes: row(3.3, 2.5, 0.05) }, 'sizes-unusable'],
    [{ sizes: row(2.5, 3.3, 0) }, 'sizes-unusable'],
    [{ sizes: row(2.5, 3.3, 0.00001) }, 'sizes-unusable'],
    [{ sizes: { sizes: [] } }, 'sizes-unusable'],
    [{ window: { low: mm(0.3), high: mm(0.2) } }, 'window-empty'],
  ])('%j is refused with %s', (change, code) => {
    const choice = chooseShim({ ...good, ...change });
    expect(!choice.ok && choice.fault.code).toBe(code);
  });
});
