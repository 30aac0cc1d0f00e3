import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Force, type Mass, newtonsPerMillimetre, type Ratio, type Stiffness } from '../../quantity/index.js';
import { describeCalcFault, runCalculation } from '../index.js';
import { splineThrough } from '../numeric/index.js';
import { firstToPart, massAtValve } from './moving-mass.js';
import { loadShares } from './spring-loads.js';

const outputs = (id: string, inputs: Record<string, unknown>) => {
  const run = runCalculation(id, inputs);
  if (!run.ok) throw new Error(run.fault.map(describeCalcFault).join('\n'));
  return run.value;
};
const refusal = (id: string, inputs: Record<string, unknown>) => {
  const run = runCalculation(id, inputs);
  return run.ok ? '' : run.fault.map(describeCalcFault).join('\n');
};
const text = (id: string, inputs: Record<string, unknown>, name: string) => outputs(id, inputs).outputs[name]?.text;

describe('a spring of round wire', () => {
  const spring = { wire: '4 mm', meanDiameter: '28 mm', activeCoils: 5 };
  it.each<[string, Record<string, unknown>, RegExp]>([
    ['without a diameter', { meanDiameter: undefined }, /exactly one of the diameters/],
    ['with two diameters', { outsideDiameter: '32 mm' }, /exactly one of the diameters/],
    ['with wire as thick as its coil', { wire: '28 mm' }, /no room inside/],
    ['without coils', { activeCoils: undefined }, /either the total or the active/],
    ['with both counts of coils', { totalCoils: 7 }, /either the total or the active/],
    ['with nothing but end coils', { activeCoils: undefined, totalCoils: 2 }, /no coil is left to work/],
  ])('is refused %s', (_, change, line) => {
    expect(refusal('valvetrain.spring-rate', { ...spring, ...change })).toMatch(line);
  });
  it('is softer by the cube of its diameter and stiffer by the fourth power of its wire', () => {
    const rate = (change: Record<string, unknown>) =>
      Number(outputs('valvetrain.spring-rate', { ...spring, ...change }).outputs.rate?.value);
    expect(rate({ meanDiameter: '56 mm' }) / rate({})).toBeCloseTo(1 / 8, 9);
    expect(rate({ wire: '8 mm' }) / rate({})).toBeCloseTo(16, 9);
  });
  it('surges at the frequency of the closed form d/(2π·D²·N)·√(G/2ρ)', () => {
    const closed = (0.004 / (2 * Math.PI * 0.028 ** 2 * 5)) * Math.sqrt(79.3e9 / (2 * 7850));
    expect(Number(outputs('valvetrain.spring-surge', spring).outputs.bothHeld?.value)).toBeCloseTo(closed, 6);
    const measured = outputs('valvetrain.spring-surge', { ...spring, rate: '40 N/mm', activeMass: '40 g' }).outputs;
    expect(Number(measured.bothHeld?.value)).toBeCloseTo(500, 6);
  });
});

describe('springs together', () => {
  const rates = fc.array(fc.double({ min: 1, max: 100, noNaN: true }).map(newtonsPerMillimetre), {
    minLength: 1,
    maxLength: 4,
  });
  it('share a load without a rest', () => {
    fc.assert(
      fc.property(rates, fc.double({ min: 0, max: 5000, noNaN: true }), (list, together) => {
        const shares = loadShares(list, together as Force);
        expect(shares.reduce((sum, one) => sum + one.load, 0)).toBeCloseTo(together, 6);
        expect(shares.reduce((sum, one) => sum + one.share, 0)).toBeCloseTo(1, 9);
      }),
    );
  });
  it('need either their load or their lengths and height', () => {
    const pair = { rates: ['30 N/mm', '15 N/mm'] };
    const id = 'valvetrain.nested-springs';
    expect(refusal(id, pair)).toMatch(/either the load of the set/);
    expect(refusal(id, { ...pair, together: '9 N', height: '9 mm' })).toMatch(/either the load of the set/);
    expect(refusal(id, { ...pair, freeLengths: ['50 mm', '40 mm'] })).toMatch(/each spring needs its free length/);
    expect(refusal(id, { ...pair, freeLengths: ['50 mm'], height: '40 mm' })).toMatch(
      /each spring needs its free length/,
    );
    expect(refusal(id, { ...pair, height: '40 mm' })).toMatch(/each spring needs its free length/);
    expect(refusal(id, { ...pair, freeLengths: ['50 mm', '40 mm'], height: '50 mm' })).toMatch(/no spring carries/);
  });
});

describe('an installed spring', () => {
  const id = 'valvetrain.spring-loads';
  const spring = { seatLoad: '400 N', installedHeight: '45 mm', rate: '50 N/mm', lift: '12 mm' };
  it('warns of coils and retainer that come too near', () => {
    const near = outputs(id, { ...spring, solidHeight: '32 mm', retainerRoom: '13 mm' });
    expect(near.cautions.map((one) => one.text)).toEqual([
      'the bind margin is less than wanted',
      'the retainer room is less than wanted',
    ]);
    expect(outputs(id, { ...spring, solidHeight: '31.476 mm', retainerRoom: '13.524 mm' }).cautions).toEqual([]);
  });
  it('is refused without height for its lift', () => {
    expect(refusal(id, { ...spring, lift: '44 mm', shim: '2 mm' })).toMatch(
      /no height left; installedHeight must be above 46 mm/,
    );
  });
  it('has a rate only where load and height change', () => {
    const read = 'valvetrain.spring-rate-from-loads';
    expect(refusal(read, { heights: ['40 mm', '40 mm'], loads: ['1 N', '2 N'] })).toMatch(/unlike heights/);
    expect(refusal(read, { heights: ['40 mm'], loads: ['1 N', '2 N'] })).toMatch(/each height needs its load/);
    expect(refusal(read, { heights: ['40 mm', '50 mm'], loads: ['1 N', '2 N'] })).toMatch(
      /must grow as the height shrinks/,
    );
    expect(text(read, { heights: ['40 mm', '35 mm', '30 mm'], loads: ['100 N', '350 N', '603 N'] }, 'farthest')).toBe(
      '1.0 N',
    );
  });
});

describe('what a spring must hold', () => {
  const id = 'valvetrain.follow-force';
  const lobe = { lift: '12 mm', duration: '280 deg', crankSpeed: '6000 rpm', mass: '200 g' };
  it('may come from a measured curvature at the nose', () => {
    const found = outputs(id, {
      noseBend: '-10 mm',
      crankSpeed: '100 rad/s',
      mass: '200 g',
      openLoad: '40 N',
      wantedMargin: 0.5,
    });
    // 0.010 m × 100² = 100 m/s2, times 0.2 kg = 20 N.
    expect(found.outputs.forceNeeded?.text).toBe('20.0 N');
    expect(found.outputs.forceWanted?.text).toBe('30.0 N');
    expect(found.outputs.marginShare?.text).toBe('1.000');
    expect(found.cautions).toEqual([]);
  });
  it('is more than a weak spring has', () => {
    expect(outputs(id, { ...lobe, openLoad: '200 N' }).cautions.map((one) => one.code)).toEqual(['valve-float']);
  });
  it('needs one description of the lobe, not two and not half', () => {
    expect(refusal(id, { ...lobe, lift: undefined })).toMatch(/either lift and duration/);
    expect(refusal(id, { ...lobe, noseBend: '-9 mm' })).toMatch(/either lift and duration/);
    expect(refusal(id, { ...lobe, lift: undefined, noseBend: '-9 mm' })).toMatch(/either lift and duration/);
    expect(refusal(id, { ...lobe, duration: undefined, noseBend: '-9 mm' })).toMatch(/either lift and duration/);
    for (const alike of [{ p: 8 }, { r: 8 }, { r: 6 }])
      expect(refusal(id, { ...lobe, ...alike })).toMatch(/must all differ/);
  });
  it('counts masses by their energy: the whole at two speeds is the sum of the parts', () => {
    const ratio = 1.7;
    const gear = { withValve: 0.14 as Mass, spring: 0.12 as Mass, rockerAtValve: 0.03 as Mass, withLobe: 0.16 as Mass };
    const lobeSpeed = 3;
    const energy =
      (0.14 * (lobeSpeed * ratio) ** 2 +
        0.04 * (lobeSpeed * ratio) ** 2 +
        0.03 * (lobeSpeed * ratio) ** 2 +
        0.16 * lobeSpeed ** 2) /
      2;
    expect((massAtValve(gear, ratio as Ratio) * (lobeSpeed * ratio) ** 2) / 2).toBeCloseTo(energy, 12);
  });
});

describe('a measured lobe that the gear must follow', () => {
  const angles = Array.from({ length: 37 }, (_, at) => -1.2 + at / 15);
  const curve = splineThrough(
    angles,
    angles.map((one) => 0.01 * Math.cos(one) ** 2),
    { kind: 'natural' },
  );
  const load = (seat: number, rate: number) => [seat as Force, rate as Stiffness, 0.2 as Mass] as const;
  it('parts first at its nose when the spring is soft (closed form: h″ = −0.02·cos 2θ)', () => {
    const found = firstToPart(curve, ...load(400, 1e-9))!;
    expect(found.speed).toBeCloseTo(Math.sqrt(400 / (0.2 * 0.02)), 0);
    expect(found.angle).toBeCloseTo(0, 1);
  });
  it('holds to a higher speed with a stiffer spring', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 100, max: 800, noNaN: true }),
        fc.double({ min: 0, max: 80_000, noNaN: true }),
        (seat, rate) => {
          expect(firstToPart(curve, ...load(seat * 1.1, rate))!.speed).toBeGreaterThan(
            firstToPart(curve, ...load(seat, rate))!.speed,
          );
        },
      ),
    );
  });
  it('compares with the speed that is wanted, and needs a nose', () => {
    const id = 'valvetrain.separation-speed';
    const gear = { seatLoad: '400 N', rate: '50 N/mm', mass: '200 g' };
    const lobe = {
      angles: ['-60 deg', '-30 deg', '0 deg', '30 deg', '60 deg'],
      lifts: ['0 mm', '5 mm', '6 mm', '4.9 mm', '0 mm'],
    };
    const found = outputs(id, { ...gear, ...lobe, ratio: 1.5, crankSpeed: '3000 rpm' }).outputs;
    expect(Number(found.speedShare?.value)).toBeCloseTo(Number(found.speed?.value) / 3000, 9);
    expect(Number(found.loadShare?.value)).toBeCloseTo(Number(found.speedShare?.value) ** 2, 9);
    expect(refusal(id, { ...gear, angles: ['0 deg', '10 deg', '20 deg'], lifts: ['1 mm', '0 mm', '1 mm'] })).toMatch(
      /never bends down/,
    );
    expect(refusal(id, { ...gear, angles: ['0 deg', '10 deg', '10 deg'], lifts: ['1 mm', '0 mm', '1 mm'] })).toMatch(
      /may stand once/,
    );
  });
});

describe('a rocker in motion', () => {
  const id = 'valvetrain.rocker-motion';
  const arm = { valveArm: '40 mm', valveArmAbove: '8 deg', pushrodArm: '25 mm', pushrodArmBelow: '10 deg' };
  const lifts = ['0 mm', '2 mm', '4 mm', '6 mm', '8 mm'];
  it('has the ratio that finite differences of its lift show', () => {
    const close = ['3.99 mm', '4.00 mm', '4.01 mm'];
    for (const more of [{}, { pushrodLength: '180 mm', pushrodTilt: '4 deg' }]) {
      const found = outputs(id, { ...arm, ...more, lobeLifts: close }).outputs;
      const [low, , high] = [found.valveLifts?.value].flat().map(Number);
      expect([found.ratios?.value].flat().at(1)).toBeCloseTo((high! - low!) / 0.02, 5);
    }
  });
  it('with a very long pushrod is the same as with one whose swing does not count', () => {
    const long = outputs(id, { ...arm, lobeLifts: lifts, pushrodLength: '2000 mm' }).outputs.valveLifts
      ?.value as number[];
    const endless = outputs(id, { ...arm, lobeLifts: lifts }).outputs.valveLifts?.value as number[];
    for (const [at, lift] of long.entries()) expect(lift).toBeCloseTo(endless[at]!, 1);
    expect(long[4]).not.toBe(endless[4]);
  });
  it('sweeps least when it is square at half lift', () => {
    const sweep = (above: number) =>
      Number(outputs(id, { ...arm, valveArmAbove: `${above} deg`, lobeLifts: ['8 mm'] }).outputs.sweep?.value);
    const found = [4, 6, 8, 9, 10, 12, 14].map(sweep);
    const half = outputs(id, { ...arm, lobeLifts: ['8 mm'] }).outputs.halfLiftError;
    const square = 8 - Number(half?.value);
    expect(sweep(square)).toBeLessThan(Math.min(...found) + 1e-3);
    expect(sweep(-5)).toBeGreaterThan(found[0]!);
  });
  it('at no lift has its ratio and no path', () => {
    const found = outputs(id, { ...arm, lobeLifts: ['0 mm'], tip: 'pad' }).outputs;
    expect(Number(found.meanRatio?.value)).toBeCloseTo(
      (40 * Math.cos((8 * Math.PI) / 180)) / (25 * Math.cos((10 * Math.PI) / 180)),
      6,
    );
    expect(Number(found.sweep?.value)).toBeCloseTo(0, 9);
    expect(found.slide).toBeUndefined();
  });
  it('is refused where an arm would pass its dead point', () => {
    expect(refusal(id, { ...arm, lobeLifts: ['40 mm'] })).toMatch(/cannot follow a lobe lift of 40.000 mm/);
    const limit = (25 * (1 + Math.sin((10 * Math.PI) / 180))).toFixed(9);
    expect(refusal(id, { ...arm, valveArmAbove: '40 deg', lobeLifts: [`${limit} mm`] })).toMatch(/cannot follow/);
    expect(refusal(id, { ...arm, pushrodArm: '0.001 mm', lobeLifts: ['0.003 mm'] })).toMatch(/cannot follow/);
  });
});

describe('a pushrod', () => {
  const id = 'valvetrain.pushrod-length';
  const rod = { zeroLash: '200 mm', ratio: 1.5 };
  it('needs a preload or a lash', () => {
    expect(refusal(id, rod)).toMatch(/either the preload/);
    expect(refusal(id, { ...rod, preload: '1 mm', lash: '0.3 mm' })).toMatch(/either the preload/);
  });
  it('may miss the allowed preload with what is on offer', () => {
    const some = {
      ...rod,
      preload: '1 mm',
      offered: ['200 mm', '202 mm'],
      leastPreload: '0.5 mm',
      mostPreload: '1.5 mm',
    };
    expect(outputs(id, some).cautions.map((one) => one.code)).toEqual(['preload-outside']);
    expect(outputs(id, { ...some, offered: ['202 mm'] }).cautions.length).toBe(1);
    expect(outputs(id, { ...some, offered: ['201.5 mm'] }).cautions).toEqual([]);
    expect(outputs(id, { ...rod, preload: '1 mm', offered: ['203 mm'] }).cautions).toEqual([]);
    expect(outputs(id, { ...rod, preload: '1 mm' }).outputs.chosen).toBeUndefined();
    expect(outputs(id, { ...rod, lash: '0.3 mm' }).outputs.chosenLash).toBeUndefined();
  });
  it('follows a pivot that is raised as a stud nut turned out would want it', () => {
    expect(text(id, { ...rod, preload: '0 mm', pivotHigher: '0.60 mm' }, 'change')).toBe('1.000 mm');
  });
  it('by the half-lift rule leaves a rocker that is square at half lift alone', () => {
    const half = 'valvetrain.pushrod-half-lift';
    const square = (Math.asin(12 / 80) * 180) / Math.PI;
    const arm = {
      lift: '12 mm',
      valveArm: '40 mm',
      valveArmAbove: `${square} deg`,
      pushrodArm: '25 mm',
      pushrodArmBelow: '5 deg',
    };
    const found = outputs(half, { ...arm, length: '200 mm' }).outputs;
    expect(Number(found.longer?.value)).toBeCloseTo(0, 9);
    expect(Number(found.length?.value)).toBeCloseTo(200, 9);
    expect(refusal(half, { ...arm, lift: '50 mm', valveArm: '25 mm' })).toMatch(/cannot reach that lift/);
  });
  it('by trials says where to look next', () => {
    const trials = 'valvetrain.pushrod-trials';
    const three = { lengths: ['190 mm', '191 mm', '192 mm'] };
    const wide = (a: number, b: number, c: number) => ({ ...three, widths: [`${a} mm`, `${b} mm`, `${c} mm`] });
    expect(text(trials, wide(1, 2, 3), 'advice')).toMatch(/shorter/);
    expect(text(trials, wide(3, 2, 1), 'advice')).toMatch(/longer/);
    expect(text(trials, { lengths: ['190 mm', '191 mm'], widths: ['1 mm', '2 mm'] }, 'advice')).toMatch(
      /at least three/,
    );
    expect(outputs(trials, { ...wide(3, 2, 1), offsets: ['1 mm', '1 mm', '1 mm'] }).outputs.centred).toBeUndefined();
    const beyond = outputs(trials, { ...wide(1, 2, 3), offsets: ['1 mm', '2 mm', '3 mm'] });
    expect(beyond.cautions.map((one) => one.code)).toEqual(['beyond-trials']);
    expect(beyond.outputs.centred?.text).toBe('189.000 mm');
    expect(outputs(trials, { ...wide(1, 2, 3), offsets: ['-3 mm', '-2 mm', '-1 mm'] }).outputs.centred?.text).toBe(
      '193.000 mm',
    );
    expect(
      outputs(trials, { lengths: ['190 mm'], widths: ['1 mm'], offsets: ['1 mm'] }).outputs.centred,
    ).toBeUndefined();
    expect(refusal(trials, { ...three, widths: ['1 mm'] })).toMatch(/each trial needs its width/);
    expect(refusal(trials, { ...wide(1, 2, 3), offsets: ['1 mm'] })).toMatch(/each trial needs its width/);
    expect(refusal(trials, { ...wide(1, 2, 3), lengths: ['190 mm', '190 mm', '192 mm'] })).toMatch(/may stand once/);
  });
  it('by trials finds the vertex of a parabola, in any order', () => {
    fc.assert(
      fc.property(fc.double({ min: 190.6, max: 191.4, noNaN: true }), (best) => {
        const width = (length: number) => `${1 + (length - best) ** 2} mm`;
        const found = outputs('valvetrain.pushrod-trials', {
          lengths: ['192 mm', '190 mm', '191 mm'],
          widths: [192, 190, 191].map(width),
        });
        expect(Number(found.outputs.narrowest?.value)).toBeCloseTo(best, 6);
      }),
    );
  });
});

describe('hot and at speed', () => {
  const id = 'valvetrain.hot-margin';
  const engine = {
    stroke: '90 mm',
    rodLength: '150 mm',
    compressionHeight: '35 mm',
    crankSpeed: '7000 rpm',
    pulledMass: '800 g',
    rodSection: '180 mm2',
  };
  it('is an estimate, and says when parts meet', () => {
    const far = outputs(id, { ...engine, deckRoom: '2 mm', valveRoom: '2 mm' });
    expect(far.cautions.map((one) => one.code)).toEqual(['estimate']);
    const near = outputs(id, { ...engine, deckRoom: '0.1 mm', valveRoom: '0.1 mm', play: '0.05 mm' });
    expect(near.cautions.map((one) => one.code)).toEqual(['estimate', 'touches', 'touches']);
    expect(outputs(id, engine).outputs.deckRoomHot).toBeUndefined();
    expect(refusal(id, { ...engine, rodLength: '45 mm' })).toMatch(/could not turn/);
  });
  it('stretches the rod with the square of the speed', () => {
    const long = (speed: string) => Number(outputs(id, { ...engine, crankSpeed: speed }).outputs.stretch?.value);
    expect(long('8000 rpm') / long('4000 rpm')).toBeCloseTo(4, 9);
  });
});

describe('a parked crank', () => {
  const id = 'valvetrain.park-angle';
  it('has its nearest piston as far from the top as can be', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 719 }), { minLength: 1, maxLength: 12 }), (tops) => {
        const found = outputs(id, { tops: tops.map((one) => `${one} deg`) }).outputs;
        const parked = [found.angles?.value].flat().map(Number);
        const near = (at: number) => Math.min(...tops.map((top) => Math.abs(((((at - top) % 360) + 540) % 360) - 180)));
        for (const at of parked) expect(near(at)).toBeCloseTo(Number(found.away?.value), 6);
        for (let at = 0; at < 360; at += 5) expect(near(at)).toBeLessThanOrEqual(Number(found.away?.value) + 1e-6);
      }),
    );
  });
  it('says when an open valve still reaches a piston', () => {
    const inline = { tops: ['0 deg', '120 deg', '240 deg'], stroke: '90 mm', rodLength: '150 mm' };
    expect(outputs(id, { ...inline, valveReach: '10 mm' }).cautions).toEqual([]);
    expect(outputs(id, { ...inline, valveReach: '40 mm' }).cautions.map((one) => one.code)).toEqual([
      'valve-hits-piston',
    ]);
    expect(refusal(id, { ...inline, rodLength: undefined })).toMatch(/needed together/);
    expect(refusal(id, { ...inline, rodLength: '40 mm' })).toMatch(/could not turn/);
  });
});

describe('the opening area of a valve', () => {
  const id = 'valvetrain.valve-area';
  it('never shrinks as the lift grows, and goes over without a jump', () => {
    const lifts = Array.from({ length: 60 }, (_, at) => `${at / 4} mm`);
    const areas = outputs(id, { lifts, headDiameter: '40 mm', seatWidth: '2 mm' }).outputs.areas?.value as number[];
    for (const [at, area] of areas.slice(1).entries()) {
      expect(area).toBeGreaterThanOrEqual(areas[at]!);
      expect(area - areas[at]!).toBeLessThan(60);
    }
  });
  it('needs an opening', () => {
    expect(refusal(id, { lifts: ['1 mm'], headDiameter: '10 mm', seatWidth: '2 mm', stem: '6 mm' })).toMatch(
      /leaves no opening/,
    );
    expect(refusal(id, { lifts: ['1 mm'], headDiameter: '40 mm', throat: '6 mm', stem: '6 mm' })).toMatch(
      /fills the throat/,
    );
  });
});
