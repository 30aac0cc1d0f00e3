import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { degrees, mm } from '../../quantity/index.js';
import { lobeAt } from '../cam/index.js';
import { describeCalcFault, runCalculation } from '../index.js';
import { camWindow } from './cam-window.js';

const outputs = (id: string, inputs: Record<string, unknown>, options = {}) => {
  const run = runCalculation(id, inputs, options);
  if (!run.ok) throw new Error(run.fault.map(describeCalcFault).join('\n'));
  return run.value;
};
const refusal = (id: string, inputs: Record<string, unknown>) => {
  const run = runCalculation(id, inputs);
  return run.ok ? '' : run.fault.map(describeCalcFault).join('\n');
};

/** Invented valve motion: 12 mm of lift over 280 crank degrees, noses 110 after and 110 before top. */
const lobe = { peakLift: mm(12), halfDuration: degrees(140), exponents: [6, 8, 10] as const };
const valve = (nose: number) => {
  const angles = Array.from({ length: 41 }, (_, at) => -80 + 4 * at);
  return {
    angles: angles.map((one) => `${one} deg`),
    lifts: angles.map((one) => `${(lobeAt(lobe, degrees(one - nose)).lift * 1000).toFixed(7)} mm`),
  };
};
const engine = { stroke: '88 mm', rodLength: '145 mm', valveAngle: '15 deg' };
const id = 'valvetrain.valve-to-piston';
const least = (nose: number, change: Record<string, unknown> = {}) =>
  Number(outputs(id, { ...engine, gapAtTop: '6 mm', ...valve(nose), ...change }).outputs.minimum?.value);

describe('the room between valve and piston', () => {
  it('shrinks at the intake and grows at the exhaust when the cam is advanced', () => {
    fc.assert(
      fc.property(fc.double({ min: -8, max: 6, noNaN: true }), (advance) => {
        const [now, later] = [{ advance: `${advance.toFixed(4)} deg` }, { advance: `${(advance + 2).toFixed(4)} deg` }];
        expect(least(110, later)).toBeLessThan(least(110, now));
        expect(least(-110, later)).toBeGreaterThan(least(-110, now));
      }),
      { numRuns: 25 },
    );
  });
  it('is like at both valves of a symmetric engine', () => {
    expect(least(110)).toBeCloseTo(least(-110), 6);
    const at = (nose: number) =>
      Number(outputs(id, { ...engine, gapAtTop: '6 mm', ...valve(nose) }).outputs.minimumAngle?.value);
    expect(at(110)).toBeCloseTo(-at(-110), 2);
    expect(at(110)).toBeGreaterThan(0);
    expect(at(110)).toBeLessThan(20);
  });
  it('grows by the lash where the valve is open', () => {
    expect(least(110, { lashMore: '0.2 mm' })).toBeCloseTo(least(110) + 0.2, 6);
    expect(least(110, { lashMore: '-0.2 mm' })).toBeCloseTo(least(110) - 0.2, 6);
  });
  it('grows by the gasket times the cosine, or over a flat crown by the gasket over it', () => {
    const cos = Math.cos(degrees(15));
    expect(least(110, { headHigher: '0.5 mm' }) - least(110)).toBeCloseTo(0.5 * cos, 6);
    const flat = { crown: 'flat-crown' };
    expect(least(110, { ...flat, headHigher: '0.5 mm' }) - least(110, flat)).toBeCloseTo(0.5 / cos, 6);
  });
  it('is the same by the card of the lobe from which the lifts were taken', () => {
    const card = {
      peakLift: '12 mm',
      durations: ['280 deg'],
      checkingLifts: ['0 mm'],
      centreline: '110 deg',
      ratio: 1,
    };
    for (const [side, nose] of [
      ['intake', 110],
      ['exhaust', -110],
    ] as const) {
      for (const advance of ['-4 deg', '0 deg', '4 deg']) {
        const found = outputs('valvetrain.valve-to-piston-from-card', {
          ...engine,
          gapAtTop: '6 mm',
          ...card,
          valve: side,
          advance,
        }).outputs;
        expect(Number(found.minimum?.value)).toBeCloseTo(least(nose, { advance }), 3);
      }
    }
  });
  it('carries the doubt of the gap at top whole into the least room', () => {
    const run = outputs(id, { ...engine, gapAtTop: '6.00 ±0.05 mm', ...valve(110) }, { uncertainty: { trials: 40 } });
    const doubt = run.outputs.minimum?.uncertainty;
    if (!doubt || !('standard' in doubt)) throw new Error('no doubt');
    expect(doubt.standard).toBeCloseTo(0.05, 3);
  });
  it('is in when it just meets its limit, and out below', () => {
    const still = {
      ...engine,
      gapAtTop: '2 mm',
      angles: ['-10 deg', '0 deg', '10 deg'],
      lifts: ['0 mm', '0 mm', '0 mm'],
    };
    expect(outputs(id, { ...still, limit: '2 mm' }).outputs.verdict?.text).toBe('in');
    expect(outputs(id, { ...still, limit: '2.001 mm' }).outputs.verdict?.text).toBe('out');
  });
  it('says when it may be less beyond the readings, and when there is none', () => {
    const rising = {
      ...engine,
      gapAtTop: '1 mm',
      angles: ['0 deg', '2 deg', '4 deg'],
      lifts: ['0.8 mm', '1.0 mm', '1.3 mm'],
    };
    expect(outputs(id, rising).cautions.map((one) => one.code)).toEqual(['least-at-end', 'valve-hits-piston']);
  });
  it.each<[string, Record<string, unknown>, RegExp]>([
    ['a rod shorter than the throw', { rodLength: '40 mm' }, /could not turn; rodLength must be above 44 mm/],
    ['a lift without its angle', { lifts: ['1 mm'] }, /41 angles and 1 lifts/],
  ])('is refused for %s', (_, change, line) => {
    expect(refusal(id, { ...engine, gapAtTop: '6 mm', ...valve(110), ...change })).toMatch(line);
  });
  it.each<[string, Record<string, unknown>, RegExp]>([
    ['a rod shorter than the throw', { rodLength: '40 mm' }, /could not turn/],
    ['a duration without its lift', { checkingLifts: ['0 mm', '1 mm'] }, /needs its checking lift/],
    ['a checking lift above the peak', { checkingLifts: ['13 mm'] }, /no lobe has these durations/],
  ])('by a card is refused for %s', (_, change, line) => {
    const card = {
      valve: 'intake',
      peakLift: '12 mm',
      durations: ['280 deg'],
      checkingLifts: ['0 mm'],
      centreline: '110 deg',
      ratio: 1,
    };
    expect(
      refusal('valvetrain.valve-to-piston-from-card', { ...engine, gapAtTop: '6 mm', ...card, ...change }),
    ).toMatch(line);
  });
});

describe('the window of cam advance', () => {
  const window = 'valvetrain.cam-window';
  const [intake, exhaust] = [valve(110), valve(-110)];
  const both = {
    ...engine,
    intakeGap: '4 mm',
    intakeAngles: intake.angles,
    intakeLifts: intake.lifts,
    intakeLimit: '1.5 mm',
    exhaustGap: '4 mm',
    exhaustAngles: exhaust.angles,
    exhaustLifts: exhaust.lifts,
    exhaustLimit: '1.5 mm',
  };
  it('ends where a valve just keeps its limit', () => {
    const found = outputs(window, both).outputs;
    const [most, retard] = [Number(found.mostAdvance?.value), Number(found.mostRetard?.value)];
    expect(least(110, { advance: `${most.toFixed(9)} deg`, gapAtTop: '4 mm' })).toBeCloseTo(1.5, 6);
    expect(least(-110, { advance: `${retard.toFixed(9)} deg`, gapAtTop: '4 mm' })).toBeCloseTo(1.5, 6);
    expect(retard).toBeCloseTo(-most, 3);
    expect(found.verdict?.value).toBe('kept');
    expect([found.advances?.value].flat().length).toBe(9);
  });
  it('is not bounded by a valve that was not measured', () => {
    const { exhaustGap, exhaustAngles, exhaustLifts, ...one } = both;
    expect([exhaustGap, exhaustAngles.length, exhaustLifts.length]).toEqual(['4 mm', 41, 41]);
    const found = outputs(window, one).outputs;
    expect(found.mostRetard).toBeUndefined();
    expect(found.exhaustMinimum).toBeUndefined();
    expect(found.mostAdvance).toBeDefined();
  });
  it('is bounded only on the other side by an exhaust valve alone', () => {
    const { intakeGap: _, intakeAngles: __, intakeLifts: ___, ...one } = both;
    const found = outputs(window, one).outputs;
    expect(found.mostAdvance).toBeUndefined();
    expect(found.intakeMinimum).toBeUndefined();
    expect(Number(found.mostRetard?.value)).toBeLessThan(0);
  });
  it('lies off to one side when a limit is broken now, or nowhere', () => {
    const broken = outputs(window, { ...both, intakeLimit: '3.5 mm', exhaustLimit: '0 mm' }).outputs;
    expect(broken.verdict?.value).toBe('not kept');
    expect(Number(broken.mostAdvance?.value)).toBeLessThan(0);
    const none = outputs(window, { ...both, intakeLimit: '50 mm' }).outputs;
    expect(none.mostAdvance).toBeUndefined();
    expect(none.verdict?.value).toBe('not kept');
  });
  it('says when its readings end too soon', () => {
    const short = { intakeAngles: ['-4 deg', '0 deg', '4 deg'], intakeLifts: ['0.5 mm', '1 mm', '1.6 mm'] };
    const { exhaustGap: _, exhaustAngles: __, exhaustLifts: ___, ...one } = both;
    expect(outputs(window, { ...one, ...short }).cautions.map((caution) => caution.code)).toEqual(['least-at-end']);
    expect(outputs(window, { ...both, advances: ['0 deg'] }).cautions).toEqual([]);
  });
  it.each<[string, Record<string, unknown>, RegExp]>([
    ['half of a valve', { exhaustLifts: undefined }, /the exhaust valve needs its room/],
    ['half of the other valve', { intakeGap: undefined }, /the intake valve needs its room/],
    ['a lift too few', { intakeLifts: ['1 mm'] }, /41 angles and 1 lifts/],
    ['a crank that cannot turn', { rodLength: '40 mm' }, /could not turn/],
  ])('is refused for %s', (_, change, line) => {
    expect(refusal(window, { ...both, ...change })).toMatch(line);
  });
  it('is refused without any valve', () => {
    expect(refusal(window, engine)).toMatch(/readings of one valve at least/);
  });
  it('is found by search around where the cam stands, and looks at the nearest stretch that serves', () => {
    const room = (leastGap: (advance: number) => number) => camWindow([{ leastGap, limit: 0 }], degrees(10));
    const bounded = room((a) => degrees(3.3) - Math.abs(a));
    expect(bounded.most).toBeCloseTo(degrees(3.3), 9);
    expect(bounded.least).toBeCloseTo(degrees(-3.3), 9);
    const far = room((a) => Math.abs(a - degrees(1)) - degrees(4));
    expect(far.keptNow).toBe(false);
    expect(far.most).toBeCloseTo(degrees(-3), 9);
    expect(far.least).toBeUndefined();
  });
});
