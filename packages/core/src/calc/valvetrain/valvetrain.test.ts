import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Angle, inch, type Length, mm, ratio, type TemperatureDifference, turns } from '../../quantity/index.js';
import {
  type Adjuster,
  gapOfTravel,
  lashChange,
  lashPerTurn,
  plungerTravel,
  rockerSweep,
  type ScrewPlace,
  thermalGrowth,
  travelOfGap,
  turnsForLash,
  turnsForTravel,
  valveLift,
} from './index.js';

const places: readonly ScrewPlace[] = ['stud-nut', 'pushrod-end-screw', 'valve-end-screw'];
const anyAdjuster = fc.record({
  place: fc.constantFrom(...places),
  pitch: fc.double({ min: 0.3, max: 3, noNaN: true }).map(mm),
  ratio: fc.double({ min: 1, max: 2.5, noNaN: true }).map(ratio),
});

describe('turns of the adjuster', () => {
  it('give a plunger travel that gives the same turns back', () => {
    fc.assert(
      fc.property(anyAdjuster, fc.double({ min: 0, max: 5, noNaN: true }), (adjuster, n) => {
        const travel = plungerTravel(adjuster, turns(n));
        expect(turnsForTravel(adjuster, travel)).toBeCloseTo(turns(n), 9);
        const perTurn = lashPerTurn(adjuster);
        expect(turnsForLash(adjuster, (perTurn * n) as Length)).toBeCloseTo(turns(n), 9);
      }),
    );
  });

  it('take up at the valve what the plunger travels times the ratio', () => {
    fc.assert(
      fc.property(anyAdjuster, (adjuster) => {
        expect(lashPerTurn(adjuster)).toBeCloseTo(gapOfTravel(plungerTravel(adjuster, turns(1)), adjuster.ratio), 12);
      }),
    );
  });

  it('move the cup of a stud-nut rocker as a lever drawn point by point does', () => {
    // Second route: the pivot falls by p, the valve end stays where it is, the arm turns about it.
    const [cupArm, valveArm, fall] = [30, 45, 0.05];
    const slope = Math.asin(fall / valveArm);
    const cupFall = (cupArm + valveArm) * Math.sin(slope);
    const adjuster: Adjuster = { place: 'stud-nut', pitch: mm(fall), ratio: ratio(valveArm / cupArm) };
    expect(plungerTravel(adjuster, turns(1)) * 1000).toBeCloseTo(cupFall, 9);
  });

  it('do not forget the lever of a stud nut (reference MO-27: 0.0208 would be the careless answer)', () => {
    const adjuster: Adjuster = { place: 'stud-nut', pitch: (inch(1) / 24) as Length, ratio: ratio(1.5) };
    expect(plungerTravel(adjuster, turns(0.5)) / 0.0254).toBeCloseTo(0.0347, 4);
  });
});

describe('gap with the lifter bled down', () => {
  it('converts to plunger travel and back', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 5, noNaN: true }), fc.double({ min: 1, max: 2, noNaN: true }), (gap, r) => {
        expect(gapOfTravel(travelOfGap(mm(gap), ratio(r)), ratio(r))).toBeCloseTo(mm(gap), 12);
      }),
    );
  });
});

describe('valve lift and sweep', () => {
  it('is never negative when the lobe cannot take up the lash', () => {
    expect(valveLift(mm(0.1), ratio(1.5), mm(0.5))).toBe(0);
  });

  it('sweeps about four times as far when set up square with the valve closed (reference MO-26)', () => {
    const half = rockerSweep(inch(1.47), inch(0.5), 'half-lift');
    const closed = rockerSweep(inch(1.47), inch(0.5), 'closed');
    if (!half.ok || !closed.ok) throw new Error('refused');
    expect(closed.value.sweep / half.value.sweep).toBeCloseTo(4, 0);
  });

  it('refuses an arm that cannot reach the lift', () => {
    expect(rockerSweep(mm(10), mm(20), 'half-lift')).toMatchObject({ ok: false, fault: { code: 'arm-too-short' } });
    expect(rockerSweep(mm(10), mm(12), 'closed')).toMatchObject({ ok: false });
  });
});

describe('lash from cold to hot', () => {
  it('stays as it was when pivot, pushrod and valve tip all grow alike', () => {
    const grow = mm(0.2);
    expect(lashChange({ pivot: grow, pushrod: grow, valveTip: grow }, ratio(1.6))).toBeCloseTo(0, 15);
  });

  it('closes when only the valve grows, and opens when only the pivot rises', () => {
    const none = mm(0);
    expect(lashChange({ pivot: none, pushrod: none, valveTip: mm(0.1) }, ratio(1.5))).toBeCloseTo(-1e-4, 12);
    expect(lashChange({ pivot: mm(0.1), pushrod: none, valveTip: none }, ratio(1.5))).toBeCloseTo(2.5e-4, 12);
  });

  it('grows a part by coefficient, length and rise: 200 mm of steel, 80 K, 11.7e-6', () => {
    // Hand arithmetic: 0.1872 mm.
    expect(thermalGrowth(mm(200), 11.7e-6, 80 as TemperatureDifference) * 1000).toBeCloseTo(0.1872, 9);
  });
});

describe('the angle type', () => {
  it('does not take a length', () => {
    const adjuster: Adjuster = { place: 'stud-nut', pitch: mm(1), ratio: ratio(1.5) };
    // @ts-expect-error: a length is no angle
    expect(plungerTravel(adjuster, mm(1))).toBeGreaterThan(0);
    expect(plungerTravel(adjuster, 0 as Angle)).toBe(0);
  });
});
