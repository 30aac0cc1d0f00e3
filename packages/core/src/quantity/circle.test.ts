import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Angle, apart, wrapped } from './index.js';

const TURN = (2 * Math.PI) as Angle;
const anyDegrees = fc.double({ min: -5000, max: 5000, noNaN: true });

describe('a direction', () => {
  it('is the same after a whole turn, in degrees and in radians', () => {
    expect(wrapped(-90, 360)).toBe(270);
    expect(wrapped(720, 720)).toBe(0);
    expect(wrapped(-720, 720)).toBe(0);
    expect(wrapped(-Math.PI / 2, TURN)).toBeCloseTo((3 * Math.PI) / 2, 12);
  });

  it('just short of a whole turn by rounding is 0: three thirds of a turn', () => {
    expect(wrapped(3 * (TURN / 3) - 1e-15, TURN)).toBe(0);
    expect(wrapped(359.999, 360)).toBeCloseTo(359.999, 9);
  });

  it('lies at most half a turn from any other, whichever is named first', () => {
    fc.assert(
      fc.property(anyDegrees, anyDegrees, (a, b) => {
        expect(apart(a, b, 360)).toBeLessThanOrEqual(180);
        expect(apart(a, b, 360)).toBeCloseTo(apart(b, a, 360), 6);
        expect(apart(a + 360, b, 360)).toBeCloseTo(apart(a, b, 360), 6);
      }),
    );
    expect(apart(350, 20, 360)).toBe(30);
  });

  it('that is no number stays none', () => {
    expect(wrapped(Number.NaN, 360)).toBeNaN();
  });
});
