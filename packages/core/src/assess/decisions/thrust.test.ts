import { describe, expect, it } from 'vitest';
import { type Length, mm } from '../../quantity/index.js';
import { alternativeOf, assessed, decisionOf, figureOf, four } from './bench.suite.js';
import { floatWith, washerPairs } from './thrust.js';

/** Printed figures of a V6 (bibliography end-float): new 0.04 to 0.24 mm, discard above 0.30 mm. */
const engine = (stock = '2.455, 2.485, 2.515') =>
  four(`crankTrain: { bore: 86 mm, stroke: 86 mm }
limits:
  - { part: crankshaft, what: end play, whenNew: 0.04..0.24 mm, wear: <= 0.30 mm }
stock:
  thrustWashers:
${stock
  .split(', ')
  .map((size) => `    - { id: w${size.replace('.', '')}, name: thrust washer, thickness: ${size} mm }\n`)
  .join('')}`);

describe('thrust washers', () => {
  it('turn a float of 0.26 mm with 2.455 mm washers into 0.20 mm with two of 2.485 mm (printed selection)', () => {
    expect(floatWith(mm(0.26), [mm(2.455), mm(2.455)], [mm(2.485), mm(2.485)])).toBeCloseTo(mm(0.2), 9);
    const decision = decisionOf(
      assessed(engine(), { 'crank-end-float': '0.26 mm', 'thrust-washer': '2.455 mm' }),
      'thrust-washers',
    );
    expect(figureOf(decision, 'washers-w2485-w2485', 'end float')).toMatch(/^0\.200/);
  });
  it('stand side by side in all combinations, those nearest to the middle of the new range first', () => {
    const decision = decisionOf(
      assessed(engine(), { 'crank-end-float': '0.32 mm', 'thrust-washer': '2.455 mm' }),
      'thrust-washers',
    );
    // Three sizes, two sides: 3 · 4 / 2 = 6 combinations, and leaving them.
    expect(decision.alternatives).toHaveLength(7);
    // 0.32 − 2 · 0.06 = 0.20; 0.32 − 0.09 = 0.23; the middle of 0.04..0.24 is 0.14.
    expect(decision.recommended).toBe('washers-w2515-w2515');
    expect(alternativeOf(decision, 'as-is').verdict).toBe('out');
    expect(alternativeOf(decision, 'washers-w2515-w2515').buys).toEqual([
      expect.objectContaining({ size: '2.515 mm', count: 2 }),
    ]);
  });
  it('are never chosen so that the crankshaft binds', () => {
    const decision = decisionOf(
      assessed(engine('2.455, 2.655'), { 'crank-end-float': '0.32 mm', 'thrust-washer': '2.455 mm' }),
      'thrust-washers',
    );
    expect(alternativeOf(decision, 'washers-w2655-w2655')).toMatchObject({ possible: false, orders: [], buys: [] });
  });
  it('are left alone while the float is surely within what a used engine may have', () => {
    const decision = decisionOf(
      assessed(engine(), { 'crank-end-float': '0.14 mm', 'thrust-washer': '2.455 mm' }),
      'thrust-washers',
    );
    expect(decision.recommended).toBe('as-is');
  });
  it('cannot be compared before those that were in are measured', () => {
    const decision = decisionOf(assessed(engine(), { 'crank-end-float': '0.32 mm' }), 'thrust-washers');
    expect(decision.alternatives.map(({ id }) => id)).toEqual(['as-is']);
    expect(decision.cautions.join(' ')).toContain('not measured');
  });
  it('wait for the float', () => {
    expect(decisionOf(assessed(engine(), {}), 'thrust-washers').missing).toEqual([
      'end float of the crankshaft: measure it',
    ]);
    expect(washerPairs([])).toEqual([]);
    expect(floatWith(0 as Length, [], [])).toBe(0);
  });
});
