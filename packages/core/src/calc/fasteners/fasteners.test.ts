import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Force, megapascals, mm, newtonMetres, newtons, ratio, toUnit } from '../../quantity/index.js';
import {
  assemblyPreload,
  checkColumns,
  nutFactorRanges,
  preloadBand,
  preloadByNutFactor,
  readThread,
  rootAreas,
  strengthOf,
  stressArea,
  type Thread,
  threadSizes,
  tighteningArm,
  tighteningFactor,
  tighteningStress,
  torqueAtOtherNutFactor,
  torqueByNutFactor,
} from './index.js';

const thread = (text: string): Thread => {
  const found = readThread(text);
  if (!found.ok) throw new Error(`${text}: ${found.fault.why}`);
  return found.value;
};
const anyThread = fc
  .record({
    d: fc.integer({ min: 3, max: 42 }),
    share: fc.double({ min: 0.05, max: 0.18, noNaN: true }),
    form: fc.constantFrom('metric' as const, 'unified' as const),
  })
  .map(({ d, share, form }): Thread => ({ form, diameter: mm(d), pitch: mm(d * share) }));
const anyFriction = fc.double({ min: 0.04, max: 0.3, noNaN: true }).map(ratio);

describe('reading a thread', () => {
  it.each([
    ['M10 x 1.5', 'metric', 10, 1.5],
    ['m10x1.25', 'metric', 10, 1.25],
    ['M12×1.75', 'metric', 12, 1.75],
    ['3/8-24', 'unified', 9.525, 25.4 / 24],
    ['7/16-20 UNF', 'unified', 11.1125, 1.27],
    ['1 1/4-7', 'unified', 31.75, 25.4 / 7],
    ['1-8', 'unified', 25.4, 3.175],
    ['#10-24', 'unified', 4.826, 25.4 / 24],
  ])('%s', (text, form, diameter, pitch) => {
    // Designations of ISO 261 and ASME B1.1, from memory; sizes exact by definition.
    const found = thread(text);
    expect(found.form).toBe(form);
    expect(found.diameter * 1000).toBeCloseTo(diameter, 9);
    expect(found.pitch * 1000).toBeCloseTo(pitch, 9);
  });

  it.each([
    ['M12', 'pitch-missing'],
    ['7/16', 'pitch-missing'],
    ['M10 x 5', 'pitch-too-coarse'],
    ['3/8-0', 'pitch-missing'],
    ['3/0-24', 'unreadable'],
    ['10-24', 'unreadable'],
    ['bolt', 'unreadable'],
    ['', 'unreadable'],
  ])('refuses "%s": %s', (text, why) => {
    expect(readThread(text)).toMatchObject({ ok: false, fault: { code: 'not-a-thread', why } });
  });
});

describe('areas', () => {
  it('lie between root and nominal, whatever the thread', () => {
    fc.assert(
      fc.property(anyThread, (any) => {
        const { pitchDiameter, minorDiameter, rootDiameter } = threadSizes(any);
        expect(rootDiameter).toBeLessThan(minorDiameter);
        expect(minorDiameter).toBeLessThan(pitchDiameter);
        expect(pitchDiameter).toBeLessThan(any.diameter);
        expect(rootAreas(any).flat).toBeLessThan(rootAreas(any).rounded);
        expect(rootAreas(any).rounded).toBeLessThan(stressArea(any));
        expect(stressArea(any)).toBeLessThan((Math.PI / 4) * any.diameter ** 2);
      }),
    );
  });

  it('does not use the metric constant on an inch thread (reference O-04: 0.1438 would be that error)', () => {
    expect(toUnit('area', stressArea(thread('1/2-13')), 'in2')).toBeCloseTo(0.1419, 4);
    expect(toUnit('area', stressArea({ ...thread('1/2-13'), form: 'metric' }), 'in2')).toBeCloseTo(0.1438, 4);
  });

  it('is smaller on the coarse thread of the same diameter', () => {
    expect(stressArea(thread('M10 x 1.5'))).toBeLessThan(stressArea(thread('M10 x 1.25')));
  });
});

describe('strength classes', () => {
  it('change their minimum above 16 mm in class 8.8, with 16 mm still in the lower range', () => {
    expect(strengthOf('8.8', mm(16))).toMatchObject({ ok: true, value: { proof: megapascals(580) } });
    expect(strengthOf('8.8', mm(16.1))).toMatchObject({ ok: true, value: { proof: megapascals(600) } });
  });

  it('are refused by name or by size when the table has no such row', () => {
    expect(strengthOf('14.9', mm(10))).toMatchObject({ fault: { code: 'no-such-class' } });
    expect(strengthOf('grade 2', mm(25.4))).toMatchObject({ fault: { code: 'diameter-outside-class' } });
  });
});

describe('torque and preload', () => {
  it('give each other back by the short form', () => {
    fc.assert(
      fc.property(anyFriction, fc.double({ min: 100, max: 1e5, noNaN: true }), (k, force) => {
        const torque = torqueByNutFactor(k, mm(10), newtons(force));
        expect(preloadByNutFactor(k, mm(10), torque)).toBeCloseTo(force, 6);
      }),
    );
  });

  it('differ between the three long forms by at most half a percent', () => {
    fc.assert(
      fc.property(
        anyFriction,
        fc.constantFrom('M6 x 1', 'M10 x 1.25', 'M12 x 1.75', 'M14 x 2', '3/8-16', '7/16-14'),
        (mu, text) => {
          const t = thread(text);
          const ring = { outside: mm(t.diameter * 1450), hole: mm(t.diameter * 1100) };
          const arms = (['exact', 'printed', 'linear'] as const).map((form) =>
            tighteningArm(t, { thread: mu, head: mu }, ring, form),
          );
          expect(Math.max(...arms) / Math.min(...arms)).toBeLessThan(1.02);
          if (mu <= 0.16) expect(Math.max(...arms) / Math.min(...arms)).toBeLessThan(1.006);
        },
      ),
    );
  });

  it('scale to another lubricant by the ratio of the nut factors, not to the 53 that is in print (reference O-10)', () => {
    const corrected = torqueAtOtherNutFactor(newtonMetres(130), ratio(0.17), ratio(0.09));
    expect(corrected).toBeCloseTo(68.82, 2);
    expect(Math.abs(corrected - 53)).toBeGreaterThan(10);
  });

  it('spread over 2.6 to 1 for machine oil (reference O-10)', () => {
    const { low, high } = nutFactorRanges['machine oil'];
    expect(high / low).toBeCloseTo(2.6, 6);
  });

  it('make a band that holds the preload of every friction and wrench error inside it', () => {
    const t = thread('M10 x 1.25');
    const ring = { outside: mm(14.6), hole: mm(11) };
    const band = preloadBand(t, ring, newtonMetres(60), ratio(0.04), { low: ratio(0.1), high: ratio(0.14) }, 'exact');
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 0.14, noNaN: true }),
        fc.double({ min: -0.04, max: 0.04, noNaN: true }),
        (mu, w) => {
          const friction = { thread: ratio(mu), head: ratio(mu) };
          const force = (60 * (1 + w)) / tighteningArm(t, friction, ring, 'exact');
          expect(force).toBeLessThanOrEqual(band.most * (1 + 1e-12));
          expect(force).toBeGreaterThanOrEqual(band.least * (1 - 1e-12));
        },
      ),
    );
    // The tightening factor of the half width is most over least again.
    expect(tighteningFactor(band.halfWidth)).toBeCloseTo(band.most / band.least, 9);
  });

  it('reach the asked share of yield exactly when the assembly preload is put back into the stress', () => {
    fc.assert(
      fc.property(anyFriction, fc.constantFrom('elastic' as const, 'plastic' as const), (mu, torsion) => {
        const t = thread('M10 x 1.5');
        const force = assemblyPreload(t, megapascals(940), ratio(0.9), mu, torsion);
        const noRing = { outside: mm(0), hole: mm(0) };
        const torque = newtonMetres(tighteningArm(t, { thread: mu, head: ratio(0) }, noRing, 'exact') * force);
        const { equivalent } = tighteningStress(t, force as Force, torque, torsion);
        expect(equivalent / 940e6).toBeCloseTo(0.9, 9);
      }),
    );
  });

  it('puts a pair of torques right whichever way its columns are headed', () => {
    expect(checkColumns(newtonMetres(63), newtonMetres(80)).verdict).toBe('heads-exchanged');
    expect(checkColumns(newtonMetres(80), newtonMetres(63)).verdict).toBe('consistent');
    expect(checkColumns(newtonMetres(63), newtonMetres(63)).verdict).toBe('alike');
  });
});
