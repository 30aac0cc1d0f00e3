import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inch } from '../../quantity/index.js';
import { alternativeOf, assessed, decisionOf, figureOf, four } from './bench.suite.js';
import { filingAim } from './ring-gaps.js';

const sheet = (limits: string, factor = 'machining: { ringGapFactor: { top: 0.0045, second: 0.0050 } }') =>
  four(`crankTrain: { bore: 4.030 in, stroke: 3.5 in }\nlimits:\n${limits}${factor}\n`);
const TOP = `  - { part: ring, what: "gap, top", whenNew: 0.0160..0.0260 in, wear: "<= 0.0350 in" }\n`;
const SECOND = `  - { part: ring, what: "gap, second", whenNew: 0.0120..0.0220 in }\n`;
const BORE = { 'cylinder-bore': '4.030 in' };
const GAPS = {
  'ring-gap-top/1': '0.0130 in',
  'ring-gap-top/2': '0.0230 in',
  'ring-gap-top/3': '0.0390 in',
  'ring-gap-top/4': '0.0130 in',
};

describe('the gap to which a ring is filed', () => {
  it('is the factor times the bore: 4.030 in at 0.0045 asks for 0.0181 in, at 0.0050 for 0.0202 in (printed example)', () => {
    // reference: bibliography ring-gap-worked, 4.030 · 0.0045 = 0.018135, 4.030 · 0.0050 = 0.020150
    const engine = sheet(TOP);
    const top = decisionOf(assessed(engine, BORE), 'ring-gap', 'top', 'in');
    expect(alternativeOf(top, 'factor').orders[0]?.targets?.[0]?.window.low).toBeCloseTo(inch(0.018135), 8);
    const second = decisionOf(assessed(engine, BORE), 'ring-gap', 'second', 'in');
    expect(alternativeOf(second, 'factor').orders[0]?.targets?.[0]?.window.low).toBeCloseTo(inch(0.02015), 8);
  });
  it('is reached by filing the tight rings, and never by putting metal back', () => {
    const decision = decisionOf(assessed(sheet(TOP), { ...BORE, ...GAPS }), 'ring-gap', 'top', 'in');
    expect(figureOf(decision, 'factor', 'cylinder 1')).toMatch(/^file 0\.00\d+ in off, from 0\.0130 in to 0\.0\d+ in$/);
    expect(figureOf(decision, 'factor', 'cylinder 2')).toBe('0.0230 in: wide enough, nothing to file');
    expect(figureOf(decision, 'factor', 'cylinder 3')).toBe(
      '0.0390 in: too wide, it cannot be filed back; another ring',
    );
    const factor = alternativeOf(decision, 'factor');
    expect(factor.verdict).toBe('out');
    expect(factor.buys).toEqual([expect.objectContaining({ count: 1, for: 'cylinder 3' })]);
  });
  it('stops at the least gap that is surely wide enough, and never past the middle of the window', () => {
    expect(filingAim(0.4, 0.6, 0.02)).toBeCloseTo(0.44, 12);
    expect(filingAim(0.4, 0.6, 0.2)).toBeCloseTo(0.5, 12);
    expect(filingAim(0.4, 0.6, undefined)).toBeCloseTo(0.5, 12);
    expect(filingAim(0.4, undefined, 0.02)).toBeCloseTo(0.44, 12);
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 1, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (low, wide, u) => {
          const aim = filingAim(low, low + wide, u);
          return aim >= low && aim <= low + wide;
        },
      ),
    );
  });
  it('shows a factor that the printed gap contradicts, with the printed gap first', () => {
    const printed = `  - { part: ring, what: "gap, top", whenNew: 0.0200..0.0260 in }\n`;
    const decision = decisionOf(assessed(sheet(printed), { ...BORE, ...GAPS }), 'ring-gap', 'top', 'in');
    expect(decision.recommended).toBe('printed');
    const factor = alternativeOf(decision, 'factor');
    expect(factor.possible).toBe(true);
    expect(factor.verdict).toBe('out');
    expect(factor.against[0]).toContain('0.0181 in for cylinder 1 is less than the sheet prints (0.0200..0.0260 in)');
  });
  it('does not hide that factors and printed gaps disagree on whether the second gap is smaller or larger', () => {
    const { cautions } = decisionOf(assessed(sheet(TOP + SECOND), BORE), 'ring-gap', 'second', 'in');
    expect(cautions.join(' ')).toContain(
      'by its factors the second gap is larger than the top one, by its printed gaps smaller',
    );
    // Table of five applications: street 0.0040 and 0.0050, racing 0.0055 and 0.0053 in per in.
    expect(cautions.join(' ')).toContain(
      'street: top 0.0161 in, second 0.0202 in, larger; racing: top 0.0222 in, second 0.0214 in, smaller',
    );
  });
  it('cannot be told without factor and printed gap, and says what is missing', () => {
    const { missing, alternatives } = decisionOf(assessed(sheet(SECOND, ''), BORE), 'ring-gap', 'top');
    expect(missing.join(' ')).toContain('the ring maker');
    expect(alternatives).toEqual([]);
  });
  it('does not call a ring good whose gap nobody measured', () => {
    const decision = decisionOf(assessed(sheet(TOP), BORE), 'ring-gap', 'top', 'in');
    expect(alternativeOf(decision, 'factor').verdict).toBe('no data');
    expect(figureOf(decision, 'factor', 'cylinder 1')).toContain('not measured yet');
  });
  it('goes by the bore that was ordered as long as the block is at the shop', () => {
    const order = {
      id: 'bore/all',
      operation: 'bore',
      part: 'block',
      property: 'cylinder-bore.diameter',
      places: ['1', '2', '3', '4'],
      target: { low: inch(4.0595), high: inch(4.0605) },
      notes: [],
    };
    const choice = {
      decision: 'bore-oversize',
      scope: 'all',
      alternative: 'bore',
      words: '',
      figures: [],
      orders: [order],
      buys: [],
      reason: 'worn',
      entry: 'e',
      at: '2026-03-03T10:00:00+00:00',
      by: 'A',
    };
    const decision = decisionOf(assessed(sheet(TOP), BORE, [choice]), 'ring-gap', 'top', 'in');
    expect(alternativeOf(decision, 'factor').orders[0]?.targets?.[0]?.window.low).toBeCloseTo(inch(4.06 * 0.0045), 8);
    expect(decision.cautions.join(' ')).toContain('not back from the shop');
    // 0.030 in more bore opens every gap by 0.094 in: what was read in the worn bore says nothing.
    const read = decisionOf(assessed(sheet(TOP), { ...BORE, ...GAPS }, [choice]), 'ring-gap', 'top', 'in');
    expect(figureOf(read, 'factor', 'cylinder 1')).toContain('gap in the finished bore not measured yet');
    expect(alternativeOf(read, 'factor').verdict).toBe('no data');
  });
});

describe('which ring goes to which bore', () => {
  /** Two rings and two bores of the catalogue's example, the other two cylinders equal and slack. */
  const engine = sheet(`  - { part: ring, what: "gap, top", whenNew: 0.0180..0.0250 in }\n`, '');
  const sizes = {
    'cylinder-bore': '4.030 in',
    'cylinder-bore/2': '4.032 in',
    'ring-gap-top/1': '0.0170 in',
    'ring-gap-top/2': '0.0200 in',
    'ring-gap-top/3': '0.0200 in',
    'ring-gap-top/4': '0.0200 in',
  };
  it('exchanges rings where that saves filing, and says how much each way', () => {
    // Ring 2 read 0.0200 in a bore 0.002 larger: in 4.030 it is 0.0200 − π·0.002 = 0.0137; ring 1 in 4.032 is 0.0233.
    const decision = decisionOf(assessed(engine, sizes), 'ring-allocation', 'top', 'in');
    const best = alternativeOf(decision, 'least-filing');
    const tagged = alternativeOf(decision, 'as-tagged');
    expect(best.possible && tagged.possible).toBe(true);
    const total = (words: string) => Number(/(\d\.\d+) in to file/.exec(words)?.[1]);
    expect(total(best.words)).toBeLessThanOrEqual(total(tagged.words));
    expect(best.figures.filter(({ name }) => name.startsWith('cylinder'))).toHaveLength(4);
  });
  it('is refused where one ring is too wide in every bore', () => {
    const decision = decisionOf(
      assessed(engine, { ...sizes, 'ring-gap-top/3': '0.0400 in' }),
      'ring-allocation',
      'top',
      'in',
    );
    expect(alternativeOf(decision, 'least-filing')).toMatchObject({ possible: false, verdict: 'out' });
    expect(decision.recommended).toBeUndefined();
  });
  it('waits for the gaps and the bores', () => {
    expect(
      decisionOf(assessed(engine, { 'cylinder-bore': '4.030 in' }), 'ring-allocation', 'top').missing.join(),
    ).toContain('top ring gap');
  });
});
