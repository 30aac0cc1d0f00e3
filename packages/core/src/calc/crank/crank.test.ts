import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Angle, type AngularSpeed, degrees, type Length, mm, rpm, toUnit } from '../../quantity/index.js';
import {
  deadCentres,
  fireIntervals,
  firingOrderAgainstThrows,
  firingTops,
  meanPistonSpeed,
  peakSpeedAngle,
  pinHeight,
  pistonAcceleration,
  pistonDrop,
  pistonMotion,
  pistonSpeed,
  rimAngle,
  rimDistance,
  type SliderCrank,
  topFromStop,
} from './index.js';

const value = <T>(outcome: { ok: true; value: T } | { ok: false; fault: unknown }): T => {
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.fault));
  return outcome.value;
};
const crank = (crankRadius: number, rodLength: number, pinOffset = 0): SliderCrank => ({
  crankRadius: mm(crankRadius),
  rodLength: mm(rodLength),
  pinOffset: mm(pinOffset),
});
/** Cranks that can turn: rod 1.3 to 20 throws, offset up to a fifth of the throw. */
const anyCrank = fc
  .record({
    r: fc.double({ min: 5, max: 200, noNaN: true }),
    n: fc.double({ min: 1.3, max: 20, noNaN: true }),
    e: fc.double({ min: -0.2, max: 0.2, noNaN: true }),
  })
  .map(({ r, n, e }) => crank(r, r * n, r * e));
const anyAngle = fc.double({ min: -2 * Math.PI, max: 4 * Math.PI, noNaN: true }).map((angle) => angle as Angle);
const speed = rpm(6500);

describe('piston motion', () => {
  it('has the worked height of the docstring: r 45, l 150, 90 degrees', () => {
    // Hand arithmetic: √(150² − 45²) = 143.0909.
    expect(toUnit('length', value(pinHeight(crank(45, 150), degrees(90))), 'mm')).toBeCloseTo(143.0909, 4);
  });

  it('moves at the rate at which the height changes: derivative against finite difference', () => {
    fc.assert(
      fc.property(anyCrank, anyAngle, (g, angle) => {
        const h = 1e-5;
        const at = (a: number) => value(pinHeight(g, a as Angle));
        const slope = (at(angle - h) - at(angle + h)) / (2 * h);
        expect(value(pistonSpeed(g, angle, 1 as AngularSpeed))).toBeCloseTo(slope, 6);
      }),
    );
  });

  it('is accelerated at the rate at which its speed changes', () => {
    fc.assert(
      fc.property(anyCrank, anyAngle, (g, angle) => {
        const h = 1e-5;
        const at = (a: number) => value(pistonSpeed(g, a as Angle, speed));
        const slope = ((at(angle + h) - at(angle - h)) / (2 * h)) * speed;
        const exact = value(pistonAcceleration(g, angle, speed));
        expect(Math.abs(exact - slope)).toBeLessThan(1e-5 * g.crankRadius * speed ** 2);
      }),
    );
  });

  it('becomes simple harmonic motion as the rod grows without end', () => {
    fc.assert(
      fc.property(anyAngle, (angle) => {
        const g = crank(45, 4.5e8);
        const drop = value(pistonDrop(g, angle));
        expect(drop).toBeCloseTo(g.crankRadius * (1 - Math.cos(angle)), 7);
        expect(value(pistonSpeed(g, angle, speed))).toBeCloseTo(g.crankRadius * speed * Math.sin(angle), 4);
        expect(value(pistonAcceleration(g, angle, speed))).toBeCloseTo(g.crankRadius * speed ** 2 * Math.cos(angle), 2);
      }),
    );
  });

  it('stays between its dead centres and reaches both', () => {
    fc.assert(
      fc.property(anyCrank, anyAngle, (g, angle) => {
        const centres = value(deadCentres(g));
        const height = value(pinHeight(g, angle));
        expect(height).toBeLessThanOrEqual(centres.topHeight + 1e-12);
        expect(height).toBeGreaterThanOrEqual(centres.bottomHeight - 1e-12);
        expect(value(pinHeight(g, centres.topAngle))).toBeCloseTo(centres.topHeight, 12);
        expect(value(pinHeight(g, centres.bottomAngle))).toBeCloseTo(centres.bottomHeight, 12);
      }),
    );
  });

  it('is fastest where no angle nearby is faster', () => {
    fc.assert(
      fc.property(anyCrank, (g) => {
        const peak = value(peakSpeedAngle(g));
        const at = (a: number) => value(pistonSpeed(g, a as Angle, speed));
        expect(at(peak)).toBeGreaterThanOrEqual(at(peak - 1e-3));
        expect(at(peak)).toBeGreaterThanOrEqual(at(peak + 1e-3));
      }),
    );
  });

  it('is not fastest where rod and throw are square, nor by the two-term form (reference MO-02, MO-03)', () => {
    expect(toUnit('angle', value(peakSpeedAngle(crank(2, 6))), 'deg')).not.toBeCloseTo(71.57, 1);
    // The textbook's two-term form: sin θ + sin 2θ/2n is largest at 74.955 deg, n = 1000/300.
    const n = 1000 / 300;
    const twoTerm = (Math.acos((-n + Math.sqrt(n ** 2 + 8)) / 4) * 180) / Math.PI;
    expect(twoTerm).toBeCloseTo(74.955, 3);
    expect(toUnit('angle', value(peakSpeedAngle(crank(300, 1000))), 'deg')).toBeCloseTo(74.53, 2);
  });

  it('has its strongest pull upward before bottom dead centre on a long throw (reference MO-09)', () => {
    const g = crank(44.196, 144.78);
    const at = (angle: number) => value(pistonAcceleration(g, degrees(angle), speed));
    expect(at(146)).toBeLessThan(at(180));
    expect(at(146)).toBeLessThan(at(140));
    expect(at(146)).toBeLessThan(at(152));
  });

  it('covers twice the stroke in a turn: mean speed against the average of the exact speed', () => {
    const g = crank(43, 166);
    const steps = 3600;
    const sum = Array.from({ length: steps }, (_, at) => Math.abs(value(pistonSpeed(g, degrees(at / 10), speed))));
    const average = sum.reduce((a, b) => a + b, 0) / steps;
    expect(meanPistonSpeed(mm(86), speed)).toBeCloseTo(average, 4);
  });

  it('refuses a crank that could not turn and says how long the rod must be', () => {
    const short = crank(45, 50, 6);
    const fault = { code: 'rod-too-short', rodLength: mm(50), needed: mm(51) };
    for (const found of [
      pinHeight(short, degrees(1)),
      deadCentres(short),
      peakSpeedAngle(short),
      pistonDrop(short, degrees(1)),
    ]) {
      expect(found).toMatchObject({ ok: false, fault: { code: fault.code } });
      if (!found.ok) expect(found.fault.needed).toBeCloseTo(fault.needed, 12);
    }
    expect(pistonMotion(short, degrees(1), speed).ok).toBe(false);
    expect(pinHeight(crank(45, 45), degrees(0)).ok).toBe(false);
    expect(pinHeight(crank(45, Number.NaN), degrees(0)).ok).toBe(false);
  });
});

describe('dead centres from the firing order', () => {
  it('share the cycle evenly when no intervals are stated', () => {
    expect(value(firingTops([1, 3, 4, 2])).map(({ angle }) => Math.round(toUnit('angle', angle, 'deg')))).toEqual([
      0, 180, 360, 540,
    ]);
  });

  it('follow the stated intervals of an odd-fire engine', () => {
    // Common-pin 90 degree V6: 90 and 150 in turn (reference MO-37).
    const odd = [90, 150, 90, 150, 90, 150].map(degrees);
    const tops = value(firingTops([1, 6, 5, 4, 3, 2], odd));
    expect(tops.map(({ angle }) => Math.round(toUnit('angle', angle, 'deg')))).toEqual([0, 90, 240, 330, 480, 570]);
  });

  it('are refused with everything that is wrong with order and intervals', () => {
    expect(firingTops([])).toMatchObject({ fault: [{ code: 'order-empty' }] });
    expect(firingTops([], [degrees(720)])).toMatchObject({ fault: [{ code: 'order-empty' }] });
    expect(firingTops([1, 3, 1, 2, 5])).toMatchObject({
      fault: [
        { code: 'cylinder-repeated', cylinder: 1 },
        { code: 'cylinder-missing', cylinder: 4, highest: 5 },
      ],
    });
    expect(firingTops([1, 2], [degrees(720)])).toMatchObject({ fault: [{ code: 'interval-count' }] });
    expect(firingTops([1, 2], [degrees(360), degrees(350)])).toMatchObject({
      fault: [{ code: 'interval-sum', degrees: 710 }],
    });
    expect(firingTops([1, 2], [degrees(-1), degrees(721)])).toMatchObject({
      fault: [
        { code: 'interval-out-of-range', place: 1, degrees: -1 },
        { code: 'interval-out-of-range', place: 2, degrees: 721 },
      ],
    });
  });

  it('take intervals as printed to a hundredth of a degree: 720/7 is printed 102.86', () => {
    const seven = Array.from({ length: 7 }, () => degrees(102.86));
    expect(firingTops([1, 2, 3, 4, 5, 6, 7], seven).ok).toBe(true);
    expect(firingTops([1, 2, 3, 4, 5, 6, 7], [...seven.slice(1), degrees(102.89)]).ok).toBe(false);
  });
});

describe('firing order against the throws', () => {
  // Cross-plane V8 with pins (1,2)(3,4)(5,6)(7,8): odd numbers on one bank, even ones on the other.
  const throwsOf = (bank: number) =>
    [0, 0, 90, 90, 270, 270, 180, 180].map((throwAngle, at) => ({
      cylinder: at + 1,
      throwAngle: degrees(throwAngle),
      bankAngle: degrees(at % 2 === 0 ? bank : -bank),
    }));
  const tops = value(firingTops([1, 8, 4, 3, 6, 5, 7, 2]));

  it('agrees for a cross-plane V8 whose first bank leans clockwise', () => {
    // By reference MO-36 the tops of 1..8 are 0,270,270,180,90,0,180,90; 1-2 share a pin, so bank angles do the 90.
    expect(firingOrderAgainstThrows(tops, throwsOf(45), 'clockwise', degrees(0.5))).toEqual([]);
  });

  it('finds the same crank wrong when it turns the other way', () => {
    expect(firingOrderAgainstThrows(tops, throwsOf(45), 'anticlockwise', degrees(0.5)).length).toBeGreaterThan(0);
  });

  it('names the cylinders that were exchanged, and leaves out those it knows nothing of', () => {
    const exchanged = value(firingTops([1, 8, 4, 3, 6, 5, 2, 7]));
    const wrong = firingOrderAgainstThrows(exchanged, throwsOf(45), 'clockwise', degrees(0.5));
    expect(wrong.map((one) => one.cylinder).sort()).toEqual([2, 7]);
    expect(firingOrderAgainstThrows(exchanged, throwsOf(45).slice(2, 6), 'clockwise', degrees(0.5))).toEqual([]);
    expect(firingOrderAgainstThrows(exchanged, [], 'clockwise', degrees(0.5))).toEqual([]);
  });
});

describe('firing intervals of a vee', () => {
  it('sum to the cycle, and are even with the splay that is said to make them even', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 8 }), fc.double({ min: 0, max: Math.PI, noNaN: true }), (pairs, vee) => {
        const found = fireIntervals(2 * pairs, vee as Angle, 0 as Angle);
        expect((found.shorter + found.longer) * pairs).toBeCloseTo(4 * Math.PI, 9);
        expect(found.shorter).toBeLessThanOrEqual(found.longer);
        const even = fireIntervals(2 * pairs, vee as Angle, found.splayForEven);
        expect(even.shorter).toBeCloseTo(even.longer, 9);
      }),
    );
  });
});

describe('marks', () => {
  it('turn a rim distance back into its angle', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 2, noNaN: true }),
        fc.double({ min: 0, max: 6, noNaN: true }),
        (d, angle) => {
          const diameter = d as Length;
          expect(rimAngle(diameter, rimDistance(diameter, angle as Angle))).toBeCloseTo(angle, 10);
        },
      ),
    );
  });

  it('correct the wheel so that both stop readings become alike', () => {
    const { correction, eachSide } = topFromStop(degrees(-36.75), degrees(35.25));
    expect(degrees(35.25) + correction).toBeCloseTo(eachSide, 12);
    expect(degrees(-36.75) + correction).toBeCloseTo(-eachSide, 12);
  });
});
