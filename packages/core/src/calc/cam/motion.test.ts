import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Angle, degrees, type Length, mm } from '../../quantity/index.js';
import { describeCalcFault, runCalculation } from '../index.js';
import { lobeFromCard } from './card-lobe.js';
import { lobeAt, meanLiftShare } from './polynomial-lobe.js';
import { RISE_LAWS, riseAt, risePeaks } from './rise.js';

const outputs = (id: string, inputs: Record<string, unknown>, options = {}) => {
  const run = runCalculation(id, inputs, options);
  if (!run.ok) throw new Error(run.fault.map(describeCalcFault).join('\n'));
  return run.value;
};
const number = (id: string, inputs: Record<string, unknown>, name: string) =>
  Number(outputs(id, inputs).outputs[name]?.value);
const refusal = (id: string, inputs: Record<string, unknown>) => {
  const run = runCalculation(id, inputs);
  return run.ok ? '' : run.fault.map(describeCalcFault).join('\n');
};

/** An invented lobe of 280 crank degrees and 8 mm, its nose where the test wants it. */
const lobe = { peakLift: mm(8), halfDuration: degrees(140), exponents: [6, 8, 10] as const };
const readings = (nose: number, step = 10, noise: (at: number) => number = () => 0) => {
  const angles = Array.from({ length: Math.floor(260 / step) + 1 }, (_, at) => nose - 130 + at * step);
  return {
    angles: angles.map((one) => `${one} deg`),
    lifts: angles.map((one, at) => `${(lobeAt(lobe, degrees(one - nose)).lift * 1000 + noise(at)).toFixed(7)} mm`),
  };
};
const id = 'cam.centreline-from-lobe';

describe('the centreline of a whole lobe', () => {
  it('is the nose of a symmetric lobe, by least squares and by equal lifts alike', () => {
    fc.assert(
      fc.property(fc.double({ min: 95, max: 125, noNaN: true }), (nose) => {
        const fitted = outputs(id, readings(nose)).outputs;
        expect(Number(fitted.centreline?.value)).toBeCloseTo(nose, 3);
        const flank = number(
          'cam.events-from-table',
          { ...readings(nose), checkingLifts: ['2 mm'], valve: 'intake' },
          'centrelines',
        );
        expect(flank).toBeCloseTo(nose, 6);
        expect(Number(fitted.peakLift?.value)).toBeCloseTo(8, 4);
      }),
      { numRuns: 20 },
    );
  });

  it('does not depend on the order of the readings', () => {
    const { angles, lifts } = readings(108, 10, (at) => 0.01 * Math.sin(7 * at));
    const order = angles.map((_, at) => (at * 11) % angles.length);
    const mixed = { angles: order.map((at) => angles[at]), lifts: order.map((at) => lifts[at]) };
    expect(number(id, mixed, 'centreline')).toBeCloseTo(number(id, { angles, lifts }, 'centreline'), 9);
  });

  it('has the duration of the lobe it was taken from', () => {
    const wanted = 140 * bisect((x) => lobeAt(lobe, degrees(140 * x)).lift - mm(1.27));
    expect(number(id, readings(110), 'duration')).toBeCloseTo(2 * wanted, 2);
  });

  it('is told from a wheel that is set wrong by the stop readings', () => {
    const stops = { stopBefore: '-39 deg', stopAfter: '43 deg' };
    expect(number(id, { ...readings(110), ...stops }, 'centreline')).toBeCloseTo(108, 3);
    expect(refusal(id, { ...readings(110), stopAfter: '43 deg' })).toMatch(/both stop readings/);
    expect(refusal(id, { ...readings(110), stopBefore: '43 deg' })).toMatch(/both stop readings/);
  });

  it('is more certain with more readings of the same scatter', () => {
    const noise = (at: number) => 0.01 * Math.sin(12.9898 * at + 78.233 * at * at);
    const few = number(id, { ...readings(110, 13, noise), terms: 6 }, 'standardUncertainty');
    const many = number(id, { ...readings(110, 2, noise), terms: 6 }, 'standardUncertainty');
    expect(many).toBeLessThan(few);
    expect(few).toBeGreaterThan(0);
  });

  it('has a stated uncertainty that trials of noisy readings bear out', () => {
    const random = (seed: number) => (at: number) => {
      const spread = Math.sin(seed * 127.1 + at * 311.7) * 43758.5453;
      return 0.02 * (spread - Math.floor(spread) - 0.5) * Math.sqrt(12);
    };
    const runs = Array.from(
      { length: 60 },
      (_, seed) => outputs(id, { ...readings(110, 5, random(seed)), terms: 6 }).outputs,
    );
    const off = runs.map((run) => Number(run.centreline?.value) - 110);
    const stated = runs.reduce((sum, run) => sum + Number(run.standardUncertainty?.value), 0) / runs.length;
    const seen = Math.sqrt(off.reduce((sum, one) => sum + one ** 2, 0) / off.length);
    expect(seen / stated).toBeGreaterThan(0.7);
    expect(seen / stated).toBeLessThan(1.4);
  });

  it('may have flanks that differ: its middle then leaves the nose', () => {
    const skew = (at: number) => lobeAt(lobe, degrees(at > 110 ? (at - 110) * 0.9 : at - 110)).lift * 1000;
    const angles = Array.from({ length: 53 }, (_, at) => -20 + 5 * at);
    const inputs = {
      angles: angles.map((one) => `${one} deg`),
      lifts: angles.map((one) => `${skew(one).toFixed(7)} mm`),
      flanks: 'unlike',
      leastLift: '0.6 mm',
    };
    const found = outputs(id, inputs).outputs;
    const half = 140 * bisect((x) => lobeAt(lobe, degrees(140 * x)).lift - mm(1.27));
    expect(Number(found.centreline?.value)).toBeCloseTo(110 + (half / 0.9 - half) / 2, 1);
    expect(Math.abs(Number(found.peakAngle?.value) - 110)).toBeLessThan(1);
  });

  it('is found on the lobes of other laws too, with readings far apart and off the middle', () => {
    for (const law of RISE_LAWS) {
      const lift = (angle: number) => 8 * riseAt(law, Math.max(0, 1 - Math.abs(angle - 107.3) / 130)).lift;
      const half = 130 * bisect((x) => lift(107.3 + 130 * x) - 1.27);
      for (const [step, flanks, slack] of [
        [5, 'alike', 0.02],
        [15, 'alike', 0.02],
        [5, 'unlike', 0.02],
        [10, 'unlike', 0.3],
      ] as const) {
        const angles = Array.from({ length: Math.floor(340 / step) }, (_, at) => -60 + step * at);
        const inputs = {
          angles: angles.map((one) => `${one} deg`),
          lifts: angles.map((one) => `${lift(one).toFixed(6)} mm`),
        };
        const found = outputs(id, { ...inputs, flanks }).outputs;
        expect(Math.abs(Number(found.centreline?.value) - 107.3), `${law} ${step} ${flanks}`).toBeLessThan(slack);
        expect(Math.abs(Number(found.duration?.value) - 2 * half), `${law} ${step} ${flanks}`).toBeLessThan(
          3 * slack + 0.25,
        );
      }
    }
  });

  it('is exact by symmetry when few readings lie alike on both flanks, whether or not the flanks may differ', () => {
    for (const flanks of ['alike', 'unlike']) {
      expect(number(id, { ...readings(110, 26), flanks }, 'centreline')).toBeCloseTo(110, 5);
    }
  });

  it('points out a reading that lies far off', () => {
    const { angles, lifts } = readings(110);
    const wrong = lifts.map((one, at) => (at === 8 ? '6.9 mm' : one));
    const { cautions } = outputs(id, { angles, lifts: wrong });
    expect(cautions.map((one) => one.code)).toEqual(['reading-far-off']);
    expect(cautions[0]?.text).toContain('60.00 deg');
  });

  it('has no uncertainty of its own without readings to spare', () => {
    const { outputs: found } = outputs(id, {
      angles: ['50 deg', '90 deg', '110 deg', '170 deg'],
      lifts: ['3 mm', '7 mm', '8 mm', '3.5 mm'],
      terms: 3,
      checkingLift: '4 mm',
    });
    expect(found.standardUncertainty).toBeUndefined();
    expect(found.scatter).toBeUndefined();
  });

  it.each<[string, Record<string, unknown>, RegExp]>([
    ['lists of unlike length', { angles: ['0 deg'], lifts: ['1 mm', '2 mm'] }, /1 angles and 2 lifts/],
    ['a checking lift above the lobe', { ...readings(110), checkingLift: '9 mm' }, /no reading is above/],
    [
      'too few readings',
      { angles: ['0 deg', '9 deg'], lifts: ['3 mm', '4 mm'] },
      /2 readings are high enough to be used; 4 or more/,
    ],
    [
      'readings at one angle',
      { angles: Array(8).fill('9 deg'), lifts: Array(8).fill('4 mm') },
      /do not tell the curve/,
    ],
    [
      'readings without rise',
      { angles: ['0 deg', '1 deg', '2 deg', '3 deg', '4 deg', '5 deg'], lifts: Array(6).fill('4 mm') },
      /do not tell the curve/,
    ],
    [
      'one angle, unlike flanks',
      { angles: Array(8).fill('9 deg'), lifts: Array(8).fill('4 mm'), flanks: 'unlike' },
      /do not tell the curve/,
    ],
    [
      'readings that do not go down far enough',
      {
        angles: ['80 deg', '90 deg', '100 deg', '110 deg', '120 deg', '130 deg'],
        lifts: ['6 mm', '7 mm', '7.8 mm', '8 mm', '7.8 mm', '7 mm'],
        terms: 3,
        flanks: 'unlike',
      },
      /on the opening flank do not reach down to 1.270 mm/,
    ],
    [
      'a closing flank that was not followed down',
      {
        angles: ['50 deg', '70 deg', '90 deg', '110 deg', '120 deg', '130 deg'],
        lifts: ['1 mm', '5 mm', '7.2 mm', '8 mm', '7.8 mm', '7 mm'],
        terms: 4,
        flanks: 'unlike',
      },
      /on the closing flank do not reach down/,
    ],
  ])('refuses %s', (_, inputs, line) => {
    expect(refusal(id, inputs)).toMatch(line);
  });
});

/** Root of a falling function between 0 and 1, by a search of the test's own. */
function bisect(f: (x: number) => number): number {
  let [low, high] = [0, 1];
  for (let turn = 0; turn < 60; turn += 1) {
    const middle = (low + high) / 2;
    if (f(middle) > 0) low = middle;
    else high = middle;
  }
  return low;
}

describe('pairs of equal lift', () => {
  const pairs = 'cam.centreline-from-pairs';
  it('give the same centreline when the wheel and every reading are turned alike', () => {
    const turned = { opening: ['63 deg'], closing: ['148.5 deg'], stopBefore: '-33 deg', stopAfter: '39 deg' };
    const plain = { opening: ['60 deg'], closing: ['145.5 deg'], stopBefore: '-36 deg', stopAfter: '36 deg' };
    expect(number(pairs, turned, 'centreline')).toBeCloseTo(number(pairs, plain, 'centreline'), 9);
  });
  it('state no uncertainty from a single pair', () => {
    expect(outputs(pairs, { opening: ['60 deg'], closing: ['145 deg'] }).outputs.standardUncertainty).toBeUndefined();
  });
  it.each<[string, Record<string, unknown>, RegExp]>([
    ['a reading without its mate', { opening: ['60 deg', '50 deg'], closing: ['145 deg'] }, /needs its closing/],
    [
      'flanks exchanged',
      { opening: ['60 deg', '150 deg'], closing: ['145 deg', '50 deg'] },
      /pair 2: the closing flank/,
    ],
    ['one stop reading', { opening: ['60 deg'], closing: ['145 deg'], stopAfter: '30 deg' }, /both stop readings/],
  ])('refuse %s', (_, inputs, line) => {
    expect(refusal(pairs, inputs)).toMatch(line);
  });
});

describe('events from a table', () => {
  const table = 'cam.events-from-table';
  it('refuse what the readings do not tell', () => {
    const some = { ...readings(110), valve: 'intake' };
    expect(refusal(table, { ...some, checkingLifts: ['9 mm'] })).toMatch(/no reading is above 9.000 mm/);
    expect(refusal(table, { ...some, stopAfter: '9 deg', checkingLifts: ['1 mm'] })).toMatch(/both stop readings/);
    const rising = { angles: ['0 deg', '1 deg', '2 deg'], valve: 'intake', checkingLifts: ['1 mm'] };
    expect(refusal(table, { ...rising, lifts: ['2 mm', '3 mm', '0 mm'] })).toMatch(/opening flank/);
    expect(refusal(table, { ...rising, angles: ['0 deg', '1 deg'], lifts: ['2 mm', '3 mm'] })).toMatch(
      /2 readings; at least 3/,
    );
    expect(refusal(table, { ...rising, angles: ['0 deg', '1 deg', '1 deg'], lifts: ['2 mm', '3 mm', '0 mm'] })).toMatch(
      /two readings at 1.00 deg/,
    );
    expect(refusal(table, { ...rising, lifts: ['2 mm', '3 mm'] })).toMatch(/3 angles and 2 lifts/);
  });
  it('run straight between two readings when asked to', () => {
    const inputs = {
      angles: ['0 deg', '10 deg', '20 deg'],
      lifts: ['0 mm', '4 mm', '0 mm'],
      checkingLifts: ['1 mm'],
      valve: 'exhaust',
      between: 'straight',
    };
    expect(number(table, inputs, 'durations')).toBeCloseTo(15, 9);
  });
  it('say on which side of a dead centre an event lies', () => {
    const inputs = {
      angles: ['10 deg', '20 deg', '150 deg', '160 deg'],
      lifts: ['0 mm', '4 mm', '4 mm', '0 mm'],
      checkingLifts: ['2 mm'],
      valve: 'intake',
      between: 'straight',
    };
    expect(outputs(table, inputs).outputs.inWords?.value).toEqual([
      'opens 15.00 deg after top, closes 25.00 deg before bottom',
    ]);
  });
});

describe('a lift spline', () => {
  const spline = 'cam.lift-spline';
  const some = { angles: ['0 deg', '90 deg', '180 deg'], lifts: ['0 mm', '4 mm', '0 mm'] };
  it('gives velocity and acceleration at a speed', () => {
    const found = outputs(spline, { ...some, at: ['45 deg'], crankSpeed: '10 rad/s' }).outputs;
    const [slope, bend] = [Number(found.slope?.value), Number(found.bend?.value)];
    expect(Number(found.velocity?.value) * 1000).toBeCloseTo(slope * 10, 9);
    expect(Number(found.acceleration?.value) * 1000).toBeCloseTo(bend * 100, 9);
  });
  it('may be periodic', () => {
    const found = outputs(spline, { ...some, at: ['0 deg', '180 deg'], ends: 'periodic' }).outputs.slope
      ?.value as number[];
    expect(found[0]).toBeCloseTo(found[1]!, 9);
  });
  it('refuses to go beyond its readings, or to close on another lift', () => {
    expect(refusal(spline, { ...some, at: ['-1 deg'] })).toMatch(/only between/);
    expect(refusal(spline, { ...some, at: ['181 deg'] })).toMatch(/only between/);
    expect(refusal(spline, { ...some, lifts: ['0 mm', '4 mm', '1 mm'], at: ['9 deg'], ends: 'periodic' })).toMatch(
      /ends with the lift/,
    );
    expect(refusal(spline, { ...some, lifts: ['0 mm'], at: ['9 deg'] })).toMatch(/3 angles and 1 lifts/);
  });
});

describe('the polynomial lobe', () => {
  const exponents = fc
    .record({ p: fc.double({ min: 2.2, max: 30, noNaN: true }), step: fc.double({ min: 0.5, max: 10, noNaN: true }) })
    .map(({ p, step }) => [p, p + step, p + 2 * step] as const);
  const unit = (list: readonly [number, number, number]) => ({
    peakLift: 1 as Length,
    halfDuration: 1 as Angle,
    exponents: list,
  });

  it('falls all the way on each flank and is never negative, whatever its exponents', () => {
    fc.assert(
      fc.property(exponents, fc.double({ min: 0, max: 0.99, noNaN: true }), (list, x) => {
        const [here, further] = [lobeAt(unit(list), x), lobeAt(unit(list), x + 0.01)];
        expect(further.lift).toBeLessThan(here.lift + 1e-9);
        expect(here.lift).toBeGreaterThan(-1e-9);
      }),
    );
  });
  it('ends with no lift, slope or bend, and has the slope of finite differences', () => {
    fc.assert(
      fc.property(exponents, fc.double({ min: -0.9, max: 0.9, noNaN: true }), (list, x) => {
        const step = 1e-5;
        const [up, down, here] = [lobeAt(unit(list), x + step), lobeAt(unit(list), x - step), lobeAt(unit(list), x)];
        expect(here.slope).toBeCloseTo((up.lift - down.lift) / (2 * step), 4);
        const end = lobeAt(unit(list), 1 - 1e-7);
        expect(Math.abs(end.lift) + Math.abs(end.slope) + Math.abs(end.bend)).toBeLessThan(1e-3);
        expect(lobeAt(unit(list), -1.5)).toEqual({ lift: 0, slope: 0, bend: 0 });
      }),
    );
  });
  it('has the mean lift of a numeric integral', () => {
    const count = 2000;
    const sum = Array.from({ length: count }, (_, at) => lobeAt(unit([6, 8, 10]), (at + 0.5) / count).lift);
    expect(meanLiftShare([6, 8, 10])).toBeCloseTo(sum.reduce((a, b) => a + b, 0) / count, 6);
  });
  it('gives velocity and acceleration at a speed, at angles from its nose', () => {
    const inputs = {
      p: 6,
      q: 8,
      r: 10,
      peakLift: '12.7 mm',
      duration: '290 deg',
      fromNose: ['0 deg'],
      shaftSpeed: '6500 rpm',
    };
    const found = outputs('cam.polynomial-lobe', inputs).outputs;
    // Row MO-34 of the reference list.
    expect(Number(found.acceleration?.value)).toBeCloseTo(-4594, -1);
    expect(Number(found.velocity?.value)).toBeCloseTo(0, 9);
    expect(Number(outputs('cam.polynomial-lobe', { p: 6, q: 8, r: 10 }).outputs.share?.value)).toBe(1);
  });
  it('refuses exponents that are alike', () => {
    for (const [p, q, r] of [
      [6, 6, 8],
      [6, 8, 8],
      [6, 8, 6],
    ]) {
      expect(refusal('cam.polynomial-lobe', { p, q, r })).toMatch(/must all differ/);
    }
  });
});

describe('a lobe from a card', () => {
  const card = 'cam.lift-from-card';
  const pair = (lift: number, duration: number) => ({ lift: mm(lift), duration: degrees(duration) });

  it('has the durations of the card, exactly when there are two', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 250, max: 330, noNaN: true }),
        fc.double({ min: 0.74, max: 0.86, noNaN: true }),
        (advertised, share) => {
          const found = lobeFromCard(mm(8), [pair(1.27, advertised * share), pair(0.15, advertised)], 6, 2);
          if (!found.ok) throw new Error(found.fault.code);
          for (const miss of found.value.misses) expect(miss).toBeCloseTo(0, 9);
          const { lobe: model } = found.value;
          expect(lobeAt(model, degrees((advertised * share) / 2)).lift).toBeCloseTo(mm(1.27), 9);
        },
      ),
    );
  });
  it('meets three durations of one of its own lobes', () => {
    const shares = [0.1, 0.3, 0.6].map((one) => ({
      lift: mm(8 * one),
      x: bisect((x) => lobeAt(lobe, degrees(140 * x)).lift - mm(8 * one)),
    }));
    const found = lobeFromCard(
      mm(8),
      shares.map(({ lift, x }) => ({ lift, duration: degrees(280 * x) })),
      20,
      2,
    );
    if (!found.ok) throw new Error(found.fault.code);
    expect(found.value.lobe.exponents[0]).toBeCloseTo(6, 4);
    expect(found.value.lobe.halfDuration).toBeCloseTo(degrees(140), 5);
  });
  it('does not mind the order of the card', () => {
    const rows = [pair(0.15, 290), pair(1.27, 234)];
    expect(lobeFromCard(mm(8), [...rows].reverse(), 6, 2)).toMatchObject({
      ok: true,
      value: { lobe: { exponents: [expect.closeTo(firstOf(rows), 9), expect.anything(), expect.anything()] } },
    });
  });
  const firstOf = (rows: ReturnType<typeof pair>[]) => {
    const found = lobeFromCard(mm(8), rows, 6, 2);
    return found.ok ? found.value.lobe.exponents[0] : Number.NaN;
  };
  it('gives the acceleration at its nose at a speed, and says that it is a model', () => {
    const found = outputs(card, {
      peakLift: '12.7 mm',
      durations: ['290 deg'],
      checkingLifts: ['0 mm'],
      crankSpeed: '6500 rpm',
    });
    expect(Number(found.outputs.noseAcceleration?.value)).toBeCloseTo(-4594, -1);
    expect(found.cautions.map((one) => one.code)).toEqual(['modelled-curve']);
  });
  it.each<[string, Record<string, unknown>, RegExp]>([
    [
      'a duration without its lift',
      { durations: ['280 deg', '230 deg'], checkingLifts: ['0 mm'] },
      /needs its checking lift/,
    ],
    [
      'a checking lift above the peak',
      { durations: ['280 deg'], checkingLifts: ['9 mm'] },
      /must be below the peak lift/,
    ],
    [
      'a longer duration higher up',
      { durations: ['230 deg', '280 deg'], checkingLifts: ['0.1 mm', '1 mm'] },
      /shorter at each higher/,
    ],
    [
      'one lift twice',
      { durations: ['230 deg', '280 deg'], checkingLifts: ['1 mm', '1 mm'] },
      /shorter at each higher/,
    ],
    ['a lobe too full', { durations: ['280 deg', '279 deg'], checkingLifts: ['0.1 mm', '7 mm'] }, /so full/],
    ['a lobe too pointed', { durations: ['280 deg', '20 deg'], checkingLifts: ['0.1 mm', '1 mm'] }, /so pointed/],
  ])('refuses %s', (_, inputs, line) => {
    expect(refusal(card, { peakLift: '8 mm', ...inputs })).toMatch(line);
  });
});

describe('the standard rises', () => {
  it.each(RISE_LAWS)('%s goes from 0 to 1, is centred, and has its tabled peaks (numeric search)', (law) => {
    expect(riseAt(law, 0).lift).toBeCloseTo(0, 12);
    expect(riseAt(law, 1).lift).toBeCloseTo(1, 12);
    expect(riseAt(law, 0.3).lift + riseAt(law, 0.7).lift).toBeCloseTo(1, 12);
    const points = Array.from({ length: 20_001 }, (_, at) => riseAt(law, at / 20_000));
    expect(Math.max(...points.map((one) => one.velocity))).toBeCloseTo(risePeaks(law).velocity, 6);
    expect(Math.max(...points.map((one) => one.acceleration))).toBeCloseTo(risePeaks(law).acceleration, 6);
    const step = 1e-5;
    const [up, down] = [riseAt(law, 0.37 + step), riseAt(law, 0.37 - step)];
    expect(riseAt(law, 0.37).velocity).toBeCloseTo((up.lift - down.lift) / (2 * step), 6);
    expect(riseAt(law, 0.37).acceleration).toBeCloseTo((up.velocity - down.velocity) / (2 * step), 5);
  });
  it('scale with rise, angle and speed', () => {
    const inputs = { law: 'cycloidal', rise: '10 mm', angle: '0.5 rad', shaftSpeed: '100 rad/s', at: [0.5] };
    const found = outputs('cam.rise-function', inputs).outputs;
    expect(Number(found.topSpeed?.value)).toBeCloseTo((2 * 0.01 * 100) / 0.5, 9);
    expect(Number(found.topAcceleration?.value)).toBeCloseTo((2 * Math.PI * 0.01 * 1e4) / 0.25, 6);
    expect(Number(found.lift?.value)).toBeCloseTo(5, 9);
  });
});

describe('a tilted indicator', () => {
  const error = (contact: string) =>
    outputs('cam.indicator-error', { reading: '10 mm', tilt: '20 deg', contact }).outputs;
  it('shows too much on a face square to the travel, too little on one square to the plunger', () => {
    expect(Number(error('face-square-to-travel').travel?.value)).toBeCloseTo(10 * Math.cos(Math.PI / 9), 9);
    expect(Number(error('lever').travel?.value)).toBeCloseTo(10 * Math.cos(Math.PI / 9), 9);
    expect(Number(error('face-square-to-plunger').travel?.value)).toBeCloseTo(10 / Math.cos(Math.PI / 9), 9);
  });
  it('is off by the allowed share at the allowed tilt', () => {
    for (const contact of ['face-square-to-travel', 'face-square-to-plunger']) {
      const tilt = outputs('cam.indicator-error', { reading: '10 mm', tilt: '0 deg', contact, allowedShare: 0.01 })
        .outputs.tiltAllowed;
      const at = outputs('cam.indicator-error', {
        reading: '10 mm',
        tilt: { value: tilt?.value, unit: 'deg' },
        contact,
      }).outputs;
      expect(Math.abs(Number(at.error?.value))).toBeCloseTo(0.1, 9);
    }
  });
});

describe('correcting the cam', () => {
  const choice = 'cam.offset-choice';
  it('combines a part with a tooth, and says it in words', () => {
    const found = outputs(choice, {
      measured: '90 deg',
      wanted: '110 deg',
      parts: ['-4 deg', '4 deg'],
      crankTeeth: 21,
      mostTeeth: 2,
    }).outputs;
    // One tooth of 21 is 17.143 degrees: with 4 more it nears the 20 that are wanted.
    expect(found.teeth?.value).toBe(-1);
    expect(found.part?.value).toBe(1);
    expect(found.advice?.value).toBe(
      'part 1 and 1 tooth retarded: makes 21.14 deg retard, leaves 1.14 deg advance wanting',
    );
  });
  it('names several teeth, or nothing to do', () => {
    expect(
      outputs(choice, { measured: '146 deg', wanted: '110 deg', crankTeeth: 20, mostTeeth: 2 }).outputs.advice?.value,
    ).toBe('2 teeth advanced: makes 36.00 deg advance, leaves nothing wanting');
    const still = outputs(choice, { measured: '110.2 deg', wanted: '110 deg', parts: ['4 deg'], doubt: '0.5 deg' });
    expect(still.outputs.advice?.value).toBe('leave as it is: makes nothing, leaves 0.20 deg advance wanting');
    expect(still.outputs.part).toBeUndefined();
    expect(still.cautions.map((one) => one.code)).toEqual(['within-doubt']);
  });
  it('leaves the teeth alone where a part does as well', () => {
    const found = outputs(choice, {
      measured: '128 deg',
      wanted: '110 deg',
      parts: ['18 deg'],
      crankTeeth: 20,
    }).outputs;
    expect([found.part?.value, found.teeth?.value]).toEqual([1, 0]);
  });
  it('never leaves more than was wanted', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -20, max: 20, noNaN: true }),
        fc.array(fc.integer({ min: -8, max: 8 }), { minLength: 1, maxLength: 5 }),
        (off, parts) => {
          const inputs = { measured: `${110 + off} deg`, wanted: '110 deg', parts: parts.map((one) => `${one} deg`) };
          expect(Math.abs(number(choice, inputs, 'left'))).toBeLessThanOrEqual(Math.abs(off) + 1e-9);
        },
      ),
    );
  });
  it('knows offset keys by their place, and back', () => {
    for (const place of ['crank-key', 'cam-key', 'cam-dowel-bushing']) {
      const there = outputs('cam.offset-part', { place, radius: '18 mm', offset: '0.5 mm' }).outputs.timing;
      const back = outputs('cam.offset-part', {
        place,
        radius: '18 mm',
        wanted: { value: there?.value, unit: 'deg' },
      }).outputs;
      expect(Number(back.neededOffset?.value)).toBeCloseTo(0.5, 9);
    }
    expect(refusal('cam.offset-part', { place: 'cam-key', radius: '3 mm', offset: '3 mm' })).toMatch(
      /smaller than the radius/,
    );
  });
});

describe('a crankshaft nearer to its camshaft', () => {
  const shift = 'cam.centre-shift';
  /** Length of a tight strand from a tooth of one sprocket to a tooth of the other, by the open belt: a second route. */
  const strand = (centres: number, small: number, large: number) => {
    const lean = Math.asin((large - small) / centres);
    return Math.sqrt(centres ** 2 - (large - small) ** 2) + (large - small) * lean;
  };
  it('shortens the strands as the open belt says', () => {
    const found = outputs(shift, {
      closer: '0.01 mm',
      drive: 'chain',
      centres: '120 mm',
      crankRadius: '30 mm',
    }).outputs;
    const shorter = strand(120, 30, 60) - strand(119.99, 30, 60);
    expect(Number(found.slack?.value)).toBeCloseTo(2 * shorter, 6);
    expect((Number(found.retard?.value) * Math.PI) / 180).toBeCloseTo((2 * shorter) / 60, 6);
  });
  it('takes backlash from gears', () => {
    const found = outputs(shift, { closer: '0.1 mm', drive: 'gears', pressureAngle: '20 deg' }).outputs;
    expect(Number(found.backlashLost?.value)).toBeCloseTo(0.2 * Math.tan(Math.PI / 9), 9);
  });
  it('refuses a chain without its sizes, or with one sprocket inside the other', () => {
    expect(refusal(shift, { closer: '0.1 mm', drive: 'chain', centres: '100 mm' })).toMatch(/distance of the centres/);
    expect(refusal(shift, { closer: '0.1 mm', drive: 'chain', crankRadius: '30 mm' })).toMatch(
      /distance of the centres/,
    );
    expect(refusal(shift, { closer: '0.1 mm', drive: 'chain', crankRadius: '30 mm', centres: '30 mm' })).toMatch(
      /inside each other/,
    );
  });
});

describe('a cam against its card', () => {
  const check = 'cam.card-check';
  const lobes = { lifts: ['7.00 mm', '7.02 mm'], cardLifts: ['7.00 mm'], liftTolerance: '0.03 mm' };
  it('is near where the doubt reaches over the limit', () => {
    expect(outputs(check, { ...lobes, liftDoubt: '0.02 mm' }).outputs.verdicts?.value).toEqual(['in', 'near']);
  });
  it('is judged by lift and duration, each lobe by its worse one', () => {
    const found = outputs(check, { ...lobes, durations: ['230 deg', '236 deg'], cardDurations: ['230 deg'] }).outputs;
    expect(found.verdicts?.value).toEqual(['in', 'out']);
    expect(found.verdict?.value).toBe('out');
    expect(found.durationDifferences?.value).toEqual([expect.closeTo(0), expect.closeTo(6)]);
  });
  it('may have a card for each lobe, and exactly meets a limit', () => {
    const found = outputs(check, { ...lobes, cardLifts: ['7.00 mm', '7.05 mm'] }).outputs;
    expect(found.verdict?.value).toBe('in');
    expect(found.lowestLobe?.value).toBe(2);
  });
  it.each<[string, Record<string, unknown>, RegExp]>([
    ['three card lifts for two lobes', { cardLifts: ['7 mm', '7 mm', '7 mm'] }, /one card lift for all/],
    ['durations without their card', { durations: ['230 deg', '230 deg'] }, /needed together/],
    ['a duration too few', { durations: ['230 deg'], cardDurations: ['230 deg'] }, /each lobe needs its duration/],
    [
      'a card duration too many',
      { durations: ['230 deg', '230 deg'], cardDurations: ['230 deg', '230 deg', '230 deg'] },
      /one card duration/,
    ],
  ])('refuses %s', (_, inputs, line) => {
    expect(refusal(check, { ...lobes, ...inputs })).toMatch(line);
  });
});
