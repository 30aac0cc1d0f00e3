import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { describeFault, parseQuantity, parseWindow, QUANTITY_KINDS, type QuantityKind } from './index.js';

const kinds = fc.constantFrom(...QUANTITY_KINDS);
const VALID = [
  '4.030 in',
  '0.0015 in',
  '38.25 mm',
  '84 N·m',
  '1/2 turn',
  '1 1/2 turns',
  '3/8 in',
  '15 thou',
  '0.0010..0.0025 in',
  '<= 0.12 mm',
  '3.7500 ±0.0005 in',
  '37-43 N·m',
  '50 +10/-5 lb-ft',
  'max 0.12 mm',
  '20 °C',
  '10.5:1',
  '50 %',
  '1,250 mm',
];
const NOISE = [
  ...'0123456789.,-+/±<>=°%:·" \u2212\u2013\u00bd\u2044\u202e\u0000\ud800eE',
  '..',
  ' to ',
  'mm',
  'min',
  'lb',
];

/** A valid text with some characters left out, doubled, replaced, or swapped with a neighbour: the slips of a person. */
const slipped = fc
  .tuple(
    fc.constantFrom(...VALID),
    fc.array(fc.tuple(fc.nat(40), fc.nat(3), fc.constantFrom(...NOISE)), { maxLength: 4 }),
  )
  .map(([text, slips]) =>
    slips.reduce((now, [where, what, noise]) => {
      const at = where % (now.length + 1);
      const [head, one, tail] = [now.slice(0, at), now.slice(at, at + 1), now.slice(at + 1)];
      return [head + tail, head + one + one + tail, head + noise + tail, head + tail.slice(0, 1) + one + tail.slice(1)][
        what
      ]!;
    }, text),
  );

function check(kind: QuantityKind, text: string): void {
  const value = parseQuantity(kind, text);
  const window = parseWindow(kind, text);
  for (const read of [value, window]) {
    if (read.ok) continue;
    const line = describeFault(read.fault);
    expect(line).not.toMatch(/[\p{Cc}\p{Zl}\p{Zp}]/u);
    expect(line.length).toBeGreaterThan(10);
    expect(line.length).toBeLessThanOrEqual(200);
  }
  if (value.ok) {
    expect(Number.isFinite(value.value.value)).toBe(true);
    expect(value.value.plusMinus ?? 0).toBeGreaterThanOrEqual(0);
    expect(window.ok, 'a value is also a window').toBe(true);
  }
  if (window.ok) {
    const { low, high } = window.value;
    expect(Number.isFinite(low ?? high)).toBe(true);
    expect(Number.isFinite(high ?? low)).toBe(true);
    expect(low ?? Number.NEGATIVE_INFINITY).toBeLessThanOrEqual(high ?? Number.POSITIVE_INFINITY);
  }
}

describe('any text at all', () => {
  it('gives a finite value or one line that says why not: arbitrary text', () => {
    fc.assert(fc.property(kinds, fc.string({ unit: 'binary', maxLength: 80 }), check), { numRuns: 3000 });
  });

  it('gives a finite value or one line that says why not: typed values with slips', () => {
    fc.assert(fc.property(kinds, slipped, check), { numRuns: 6000 });
  });

  it('gives a finite value or one line that says why not: bursts of the keys that numbers are made of', () => {
    const burst = fc.array(fc.constantFrom(...NOISE), { maxLength: 40 }).map((keys) => keys.join(''));
    fc.assert(fc.property(kinds, burst, check), { numRuns: 4000 });
  });

  it('is read in time that does not run away with its length', () => {
    for (const piece of ['1-', '-', '+', ' ', '1 ', '1/', '.', '..', 'max ', '± ', 'in-', '1..', '1 to ']) {
      for (const kind of QUANTITY_KINDS) check(kind, piece.repeat(64).slice(0, 64));
    }
  });
});
