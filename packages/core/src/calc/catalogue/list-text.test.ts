import { describe, expect, it } from 'vitest';
import { runCalculation } from '../index.js';

const tops = (firingOrder: unknown) => runCalculation('crank.firing-tops', { firingOrder });
const mean = (values: unknown) => runCalculation('metrology.repeats-length', { readings: values });

describe('a list as people write one', () => {
  it.each([['1-3-4-2'], ['1,3,4,2'], ['1 3 4 2'], [' 1, 3; 4 - 2 ']])('a firing order is read from %s', (text) => {
    expect(tops(text)).toEqual(tops([1, 3, 4, 2]));
  });
  it('one value alone is a list of one', () => {
    expect(tops(1)).toEqual(tops([1]));
    expect(tops('1').ok).toBe(true);
  });
  it('readings part at a comma before a space, or at a semicolon', () => {
    const each = mean(['25.001 mm', '25.003 mm', '25.002 mm']);
    expect(mean('25.001 mm, 25.003 mm, 25.002 mm')).toEqual(each);
    expect(mean('25.001 mm; 25.003 mm; 25.002 mm')).toEqual(each);
  });
  it('a comma inside a number stays with its number, and is asked about', () => {
    expect(mean('25,001 mm; 25,003 mm').ok).toBe(false);
  });
});
