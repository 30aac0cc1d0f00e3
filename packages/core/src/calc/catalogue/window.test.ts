import { describe, expect, it } from 'vitest';
import { reversedEnds, verdictOf } from './window.js';

describe('a value in its window', () => {
  it.each([
    [0.0002, 0.0001, 0.0003, 'in'],
    [0.0001, 0.0001, 0.0003, 'in'],
    [0.0003, 0.0001, 0.0003, 'in'],
    [0.00009, 0.0001, 0.0003, 'below'],
    [0.00031, 0.0001, 0.0003, 'above'],
    [0.00031, 0.0001, undefined, 'in'],
    [0.00009, undefined, 0.0003, 'in'],
    [0.00031, undefined, 0.0003, 'above'],
    [0.00009, 0.0001, undefined, 'below'],
  ])('%s in %s to %s is %s', (value, low, high, verdict) => {
    expect(verdictOf(value, low, high)).toBe(verdict);
  });

  it('is no data where no limit is known, which is not in', () => {
    expect(verdictOf(0.001, undefined, undefined)).toBe('no data');
  });

  it('counts a limit as met that rounding alone misses (0.060 computed as 0.0599999)', () => {
    expect(verdictOf(0.074038 - 0.068994 - 2 * 0.002492, undefined, 0.00006)).toBe('in');
    expect(verdictOf(0.06 - 1e-12, 0.06, undefined)).toBe('in');
    expect(verdictOf(0.06 - 2e-10, 0.06, undefined)).toBe('below');
    expect(verdictOf(0.06 + 2e-10, undefined, 0.06)).toBe('above');
  });
});

describe('ends of a window', () => {
  const pair = [['low', 'high']] as const;

  it('stand together when the low end is not above the high end, or one is missing', () => {
    expect(reversedEnds({ low: 1, high: 2 }, ...pair)).toBeUndefined();
    expect(reversedEnds({ low: 2, high: 2 }, ...pair)).toBeUndefined();
    expect(reversedEnds({ low: 3 }, ...pair)).toBeUndefined();
    expect(reversedEnds({ high: 3 }, ...pair)).toBeUndefined();
  });

  it('are refused when reversed, naming both and what the high end must keep', () => {
    expect(reversedEnds({ a: 1, b: 1, low: 3, high: 2 }, ['a', 'b'], ...pair)).toEqual({
      ok: false,
      fault: {
        code: 'conflict',
        inputs: ['low', 'high'],
        because: 'the low end is above the high end',
        must: { input: 'high', from: 3 },
      },
    });
  });
});
