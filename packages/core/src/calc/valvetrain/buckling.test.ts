import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inch, type Length, mm, type Pressure, psi, ratio } from '../../quantity/index.js';
import { buckling, type Column } from './index.js';

const tube: Column = {
  length: inch(7.8),
  outside: inch(0.3125),
  inside: inch(0.1525),
  modulus: psi(30e6),
  yieldStrength: psi(70e3),
  endConstant: ratio(1),
};

describe('a column under end load', () => {
  it('has both formulas meet at the transition, at half of the yield load (O-41)', () => {
    const at = buckling(tube);
    const length = (at.transition * at.radiusOfGyration) as Length;
    const met = buckling({ ...tube, length });
    expect(met.euler / met.johnson).toBeCloseTo(1, 10);
    expect(met.johnson / ((tube.yieldStrength * met.area) / 2)).toBeCloseTo(1, 10);
  });

  it('carries less the longer it is, without a jump, and never more than yield or Euler', () => {
    const length = fc.double({ min: 0.5, max: 40, noNaN: true });
    fc.assert(
      fc.property(length, length, (a, b) => {
        const [short, long] = [Math.min(a, b), Math.max(a, b)].map((one) => buckling({ ...tube, length: inch(one) }));
        expect(short!.critical).toBeGreaterThanOrEqual(long!.critical);
        expect(short!.critical).toBeLessThanOrEqual(tube.yieldStrength * short!.area);
        expect(short!.critical).toBeLessThanOrEqual(short!.euler * (1 + 1e-12));
      }),
    );
  });

  it('carries four times as much fixed at both ends as pinned, and a quarter free, when slender (O-40)', () => {
    const slender = { ...tube, length: inch(60) };
    const at = (endConstant: number) => buckling({ ...slender, endConstant: ratio(endConstant) }).critical;
    expect(at(4) / at(1)).toBeCloseTo(4, 12);
    expect(at(0.25) / at(1)).toBeCloseTo(0.25, 12);
  });

  it('of a solid bar has a radius of gyration of a quarter of its diameter', () => {
    const bar = buckling({ ...tube, inside: mm(0), yieldStrength: 5e8 as Pressure, length: inch(7) });
    expect(bar.radiusOfGyration / inch(0.3125)).toBeCloseTo(0.25, 12);
    expect(bar.formula).toBe('Johnson');
  });
});
