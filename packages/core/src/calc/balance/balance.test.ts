import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Angle, degrees, grams, kilograms, type Length, type Mass, mm, rpm } from '../../quantity/index.js';
import { describeCalcFault, runCalculation } from '../index.js';
import { length, plus, polar, times } from './complex.js';
import {
  type CrankSizes,
  ellipseOf,
  exactPeaks,
  harmonicAt,
  scalesOf,
  shakeAt,
  shakingOf,
  type Throw,
  twoPlaneCorrection,
  type Unbalance,
} from './index.js';

type Inputs = Readonly<Record<string, unknown>>;
function run(id: string, inputs: Inputs) {
  const found = runCalculation(id, inputs);
  if (!found.ok) throw new Error(found.fault.map(describeCalcFault).join('\n'));
  return found.value.outputs;
}
const numberOf = (id: string, inputs: Inputs, output: string): number => Number(run(id, inputs)[output]?.value);
function refusalOf(id: string, inputs: Inputs): string {
  const found = runCalculation(id, inputs);
  return found.ok ? 'accepted' : found.fault.map(describeCalcFault).join('\n');
}

const sizes: CrankSizes = { crankRadius: mm(43.5), rodLength: mm(145), crankSpeed: rpm(6000) };
const pull = sizes.crankRadius * sizes.crankSpeed ** 2;
const one = (throwAngle: number, bankAngle = 0, position = 0, reciprocating = 0.6): Throw => ({
  throwAngle: degrees(throwAngle),
  bankAngle: degrees(bankAngle),
  position: mm(position),
  reciprocating: kilograms(reciprocating),
  rotating: 0 as Mass,
});
const middle = mm(0);

const anyAngle = fc.double({ min: -360, max: 360, noNaN: true });
const anyThrow = fc
  .tuple(
    anyAngle,
    anyAngle,
    fc.double({ min: -300, max: 300, noNaN: true }),
    fc.double({ min: 0.1, max: 2, noNaN: true }),
  )
  .map(([t, b, z, m]) => one(t, b, z, m));
const anyThrows = fc.array(anyThrow, { minLength: 1, maxLength: 8 });

describe('shaking forces', () => {
  it('agree with the two terms summed cylinder by cylinder at every crank angle', () => {
    fc.assert(
      fc.property(anyThrows, anyAngle, (throws, turn) => {
        const theta = degrees(turn);
        const { primaryForce, secondaryForce, primaryCouple, secondaryCouple } = shakingOf(throws, sizes, middle);
        const ratio = sizes.crankRadius / sizes.rodLength;
        const parts = throws.map((t) => {
          const phi = t.throwAngle + theta - t.bankAngle;
          const first = polar(t.reciprocating * pull * Math.cos(phi), t.bankAngle);
          const second = polar(t.reciprocating * pull * ratio * Math.cos(2 * phi), t.bankAngle);
          return { first, second, arm: -t.position };
        });
        const near = (a: { re: number; im: number }, list: { re: number; im: number }[]) => {
          const whole = list.reduce(plus);
          expect(Math.hypot(a.re - whole.re, a.im - whole.im)).toBeLessThan(1e-6);
        };
        near(
          harmonicAt(primaryForce, theta),
          parts.map((p) => p.first),
        );
        near(
          harmonicAt(secondaryForce, theta),
          parts.map((p) => p.second),
        );
        near(
          harmonicAt(primaryCouple, theta),
          parts.map((p) => times(p.first, p.arm)),
        );
        near(
          harmonicAt(secondaryCouple, theta),
          parts.map((p) => times(p.second, p.arm)),
        );
      }),
    );
  });

  it('never exceed the largest nor go below the least that is named, and reach both', () => {
    fc.assert(
      fc.property(anyThrows, (throws) => {
        const { primaryForce, secondaryForce } = shakingOf(throws, sizes, middle);
        const scale = scalesOf(throws, sizes, middle).force;
        for (const harmonic of [primaryForce, secondaryForce]) {
          const { most, least, crankAngle } = ellipseOf(harmonic, scale);
          const seen = Array.from({ length: 721 }, (_, at) => length(harmonicAt(harmonic, (at * Math.PI) / 360)));
          expect(Math.max(...seen)).toBeLessThanOrEqual(most + 1e-6);
          expect(Math.min(...seen)).toBeGreaterThanOrEqual(least - 1e-6);
          if (crankAngle !== undefined) expect(length(harmonicAt(harmonic, crankAngle))).toBeCloseTo(most, 6);
        }
      }),
    );
  });

  it('by two terms lie near the exact slider-crank when the rod is long', () => {
    const long = { ...sizes, rodLength: mm(145 * 200) };
    fc.assert(
      fc.property(anyThrows, anyAngle, (throws, turn) => {
        const { primaryForce, secondaryForce } = shakingOf(throws, long, middle);
        const exact = shakeAt(throws, { ...long, pinOffset: mm(0) }, middle, degrees(turn));
        if (!exact.ok) throw new Error('refused');
        const terms = plus(harmonicAt(primaryForce, degrees(turn)), harmonicAt(secondaryForce, degrees(turn)));
        expect(length(plus(terms, times(exact.value.force, -1)))).toBeLessThan(1e-6 * pull * 16);
      }),
    );
  });

  it('are nowhere larger than the exact peak, tried at every half degree', () => {
    const offset = { ...sizes, pinOffset: mm(2) };
    fc.assert(
      fc.property(anyThrows, (throws) => {
        const peaks = exactPeaks(throws, offset, middle);
        if (!peaks.ok) throw new Error('refused');
        for (let step = 0; step < 720; step += 1) {
          const shake = shakeAt(throws, offset, middle, (step * Math.PI) / 360);
          if (!shake.ok) throw new Error('refused');
          expect(length(shake.value.force)).toBeLessThanOrEqual(peaks.value.force.most + 1e-6 * pull);
          expect(length(shake.value.couple)).toBeLessThanOrEqual(peaks.value.couple.most + 1e-6 * pull);
        }
      }),
      { numRuns: 40 },
    );
  });

  it('do not care from where the throws are counted, and couples do not care about the plane when there is no force', () => {
    const four = [one(0, 0, 0), one(180, 0, 100), one(180, 0, 200), one(0, 0, 300)];
    const turned = four.map((t) => ({ ...t, throwAngle: (t.throwAngle + 1) as Angle }));
    const most = (
      throws: readonly Throw[],
      order: 'primaryForce' | 'secondaryForce' | 'primaryCouple',
      about: Length,
    ) => ellipseOf(shakingOf(throws, sizes, about)[order], pull).most;
    expect(most(turned, 'secondaryForce', middle)).toBeCloseTo(most(four, 'secondaryForce', middle), 6);
    const boxer = [one(90, 90, 0), one(270, -90, 50)];
    expect(most(boxer, 'primaryForce', middle)).toBe(0);
    expect(most(boxer, 'primaryCouple', mm(400))).toBeCloseTo(most(boxer, 'primaryCouple', middle), 6);
  });

  it('are balanced in engines that are known to be: straight six, flat six, cross-plane vee with its counterweights', () => {
    const six = [0, 240, 120, 120, 240, 0].map((t, at) => one(t, 0, 100 * at));
    const flat = [0, 180, 240, 60, 120, 300].map((t, at) => one(t, at % 2 === 0 ? -90 : 90, 60 * at));
    for (const throws of [six, flat]) {
      const { primaryForce, secondaryForce } = shakingOf(throws, sizes, mm(250));
      expect(ellipseOf(primaryForce, pull).most).toBe(0);
      expect(ellipseOf(secondaryForce, pull).most).toBe(0);
    }
  });
});

describe('the entries of shaking', () => {
  const four = {
    throwAngles: ['0 deg', '180 deg', '180 deg', '0 deg'],
    bankAngles: ['0 deg'],
    positions: ['0 mm', '100 mm', '200 mm', '300 mm'],
    reciprocating: ['0.62 kg'],
    stroke: '87 mm',
    rodLength: '145 mm',
    crankSpeed: '6000 rpm',
  };
  const forces = 'balance.shaking-forces';
  const shafts = 'balance.balance-shafts';
  const at = 'balance.shaking-at';

  it('say nothing about the phase of what is not there', () => {
    const found = run(forces, four);
    for (const name of [
      'primaryForceAt',
      'primaryForceDirection',
      'primaryCoupleAt',
      'exactCoupleAt',
      'exactCoupleDirection',
    ]) {
      expect(found[name]).toBeUndefined();
    }
    expect(found.exactCouple?.value).toBe(0);
    expect(found.secondaryForceAt?.value).toBe(0);
    // The exact force is largest downward, with all four cranks level; two terms put the same size at the top.
    expect(Number(found.exactForceAt?.value) % 180).toBeCloseTo(90, 3);
    expect(found.exactForceDirection?.value).toBeCloseTo(180, 6);
    expect(run(shafts, { ...four, shaftRadius: '20 mm' }).primaryShaftPhase).toBeUndefined();
  });

  it('mirror with the running sense', () => {
    const twin = { ...four, throwAngles: ['30 deg'], bankAngles: ['40 deg'], positions: ['0 mm'] };
    const clock = run(forces, twin);
    const anti = run(forces, { ...twin, bankAngles: ['-40 deg'], rotation: 'anticlockwise' });
    expect(anti.primaryForceAt?.value).toBeCloseTo(Number(clock.primaryForceAt?.value), 9);
    expect(Number(anti.primaryForceDirection?.value) + Number(clock.primaryForceDirection?.value)).toBeCloseTo(360, 9);
    const side = (inputs: object) =>
      Number([run(at, { ...twin, ...inputs, crankAngles: ['10 deg'] }).sideways?.value].flat()[0]);
    expect(side({ bankAngles: ['-40 deg'], rotation: 'anticlockwise' })).toBeCloseTo(-side({}), 9);
  });

  it('turn the direction of a force along its bank: up the bank at its own top dead centre', () => {
    const twin = { ...four, throwAngles: ['0 deg'], bankAngles: ['45 deg'], positions: ['0 mm'] };
    const found = run(forces, twin);
    expect(found.primaryForceAt?.value).toBeCloseTo(45, 9);
    expect(found.primaryForceDirection?.value).toBeCloseTo(45, 9);
    expect(found.exactForceAt?.value).toBeCloseTo(45, 3);
  });

  it('add up: two terms are first and second order together', () => {
    const twin = { ...four, throwAngles: ['0 deg', '90 deg', '0 deg', '0 deg'], crankAngles: ['33 deg', '120 deg'] };
    const up = (method: string) => [run(at, { ...twin, method }).up?.value].flat().map(Number);
    const couple = (method: string) => [run(at, { ...twin, method }).couples?.value].flat().map(Number);
    expect(up('two-term')[0]).toBeCloseTo((up('primary')[0] as number) + (up('secondary')[0] as number), 6);
    expect(Math.abs((up('exact')[1] as number) - (up('two-term')[1] as number))).toBeLessThan(0.05 * pull);
    expect(couple('primary')[0]).not.toBeCloseTo(couple('secondary')[0] as number, 3);
  });

  it('count rotating mass and balance factor at the crankpin', () => {
    const single = { ...four, throwAngles: ['0 deg'], positions: ['0 mm'] };
    const turning = numberOf(forces, { ...single, reciprocating: ['0 g'], rotating: ['100 g'] }, 'primaryForce');
    // Closed form m·r·ω².
    expect(turning).toBeCloseTo(0.1 * pull, 6);
    const half = run(forces, { ...single, balanceFactor: '50 %' });
    expect(half.primaryForce?.value).toBeCloseTo((0.62 * pull) / 2, 6);
    expect(half.primaryForceLeast?.value).toBeCloseTo((0.62 * pull) / 2, 6);
    expect(half.primaryForceDirection?.value).toBeCloseTo(0, 9);
    expect(run(forces, { ...single, rotating: ['100 g'], about: '-50 mm' }).primaryCouple?.value).toBeCloseTo(
      0.05 * 0.72 * pull,
      6,
    );
  });

  it('balance a single cylinder completely with half its mass on the crank and a shaft that turns against it', () => {
    const single = {
      ...four,
      throwAngles: ['20 deg'],
      positions: ['0 mm'],
      balanceFactor: '50 %',
      shaftRadius: '30 mm',
    };
    const found = run(shafts, single);
    expect(found.primaryAhead?.value).toBe(0);
    // Half of m·r on the shaft's radius, opposite to the force that turns back from −20°.
    expect(found.primaryShaft?.value).toBeCloseTo((0.31 * 43.5 * 1000) / 30, 6);
    expect(found.primaryShaftPhase?.value).toBeCloseTo(160, 9);
    expect(found.secondaryShaftAheadPhase?.value).toBeCloseTo(220, 9);
    expect(found.secondaryShaftBackPhase?.value).toBeCloseTo(140, 9);
    expect(found.primaryCoupleAheadDirection).toBeUndefined();
  });

  it.each(['positions', 'bankAngles', 'reciprocating', 'rotating'])(
    'refuse a list %s of the wrong length by name',
    (name) => {
      const two = name === 'positions' ? ['1 mm', '2 mm'] : name === 'bankAngles' ? ['0 deg', '0 deg'] : ['1 g', '1 g'];
      for (const id of [forces, at, shafts]) {
        const inputs = {
          ...four,
          [name]: two,
          ...(id === at && { crankAngles: ['0 deg'] }),
          ...(id === shafts && { shaftRadius: '1 mm' }),
        };
        expect(refusalOf(id, inputs)).toContain(`${name}: one value for all or 4, one for each throw`);
      }
    },
  );

  it('refuse a crank that cannot turn, by its offset as well', () => {
    const rod = { ...four, rodLength: '43.5 mm' };
    expect(refusalOf(forces, rod)).toMatch(/could not turn; rodLength must be above 43.5 mm/);
    const offset = { ...four, rodLength: '50 mm', pinOffset: '10 mm' };
    expect(refusalOf(forces, offset)).toMatch(/could not turn; rodLength must be above 53.5 mm/);
    expect(refusalOf(at, { ...offset, crankAngles: ['0 deg'] })).toMatch(
      /could not turn; rodLength must be above 53.5 mm/,
    );
  });
});

describe('rotor', () => {
  const anyPart = fc
    .tuple(
      fc.double({ min: 1, max: 500, noNaN: true }),
      fc.double({ min: 10, max: 200, noNaN: true }),
      anyAngle,
      fc.double({ min: -500, max: 500, noNaN: true }),
    )
    .map(([m, r, a, z]): Unbalance => ({ mass: grams(m), radius: mm(r), angle: degrees(a), position: mm(z) }));

  it('has no force and no couple left with both corrections on', () => {
    fc.assert(
      fc.property(fc.array(anyPart, { minLength: 1, maxLength: 6 }), (parts) => {
        const found = twoPlaneCorrection(parts, [mm(-100), mm(200)], [mm(50), mm(80)]);
        if (!found.ok) throw new Error('refused');
        const [first, second] = found.value;
        const all = [
          ...parts,
          { ...first, radius: mm(50), position: mm(-100) },
          { ...second, radius: mm(80), position: mm(200) },
        ];
        const vectors = all.map((part) => polar(part.mass * part.radius, part.angle));
        expect(length(vectors.reduce(plus))).toBeLessThan(1e-12);
        expect(
          length(vectors.map((v, place) => times(v, (all[place] as Unbalance).position)).reduce(plus)),
        ).toBeLessThan(1e-12);
      }),
    );
  });

  const rotor = { masses: ['10 g', '20 g'], radii: ['50 mm'], angles: ['0 deg', '90 deg'] };
  const planes = { firstPlane: '0 mm', secondPlane: '100 mm', firstRadius: '50 mm', secondRadius: '50 mm' };

  it('takes one radius for all, or one each', () => {
    const single = 'balance.single-plane';
    const together = { ...rotor, correctionRadius: '50 mm' };
    expect(numberOf(single, { ...together, radii: ['50 mm', '50 mm'] }, 'mass')).toBeCloseTo(
      numberOf(single, together, 'mass'),
      12,
    );
    expect(run(single, together).force).toBeUndefined();
  });

  it.each<[object, RegExp]>([
    [{ radii: ['1 mm', '2 mm', '3 mm'] }, /radii: one value is needed for each of 2 masses/],
    [{ angles: ['0 deg'] }, /angles: one value is needed/],
    [{ positions: ['0 mm'] }, /positions: one value is needed/],
    [{ secondPlane: '0 mm' }, /must lie apart/],
  ])('refuses %j', (change, words) => {
    expect(refusalOf('balance.two-plane', { ...rotor, positions: ['0 mm', '50 mm'], ...planes, ...change })).toMatch(
      words,
    );
  });
  it('refuses too few angles in one plane', () => {
    expect(refusalOf('balance.single-plane', { ...rotor, angles: ['0 deg'], correctionRadius: '1 mm' })).toMatch(
      /angles: one value/,
    );
  });

  it('allows half to each of two planes', () => {
    const inputs = { mass: '25 kg', grade: '16 mm/s', speed: '6000 rpm', radius: '50 mm' };
    const id = 'balance.allowed-unbalance';
    expect(numberOf(id, { ...inputs, planes: 2 }, 'residual') * 2).toBeCloseTo(numberOf(id, inputs, 'residual'), 12);
  });
});

describe('weights', () => {
  it('with unequal rods agree with the equal ones, and are refused when a rod lacks one mass', () => {
    const id = 'balance.bobweight-unequal';
    expect(refusalOf(id, { rotating: ['1 g'], reciprocating: ['1 g', '2 g'] })).toMatch(/each rod needs/);
    expect(
      numberOf(id, { rotating: ['100 g', '50 g'], reciprocating: ['300 g', '100 g'], factor: '50 %' }, 'bobweight'),
    ).toBeCloseTo(350, 9);
    const same = { bigEnd: '200 g', piston: '400 g', smallEnd: '100 g', rodsPerPin: 1, factor: '0 %' };
    expect(numberOf('balance.bobweight', same, 'bobweight')).toBeCloseTo(200, 9);
    expect(numberOf('balance.bobweight', same, 'rotating')).toBeCloseTo(200, 9);
    expect(numberOf('balance.bobweight', { ...same, rodsPerPin: 2, oil: '5 g' }, 'rotating')).toBeCloseTo(405, 9);
    expect(numberOf('balance.bobweight', { ...same, rodsPerPin: 2 }, 'reciprocating')).toBeCloseTo(1000, 9);
  });

  it('of rod ends are parted by the lever and refused outside the rod', () => {
    const id = 'balance.rod-ends-by-centre';
    expect(numberOf(id, { total: '600 g', rodLength: '150 mm', fromBigEnd: '75 mm' }, 'bigEnd')).toBeCloseTo(300, 9);
    expect(refusalOf(id, { total: '600 g', rodLength: '150 mm', fromBigEnd: '151 mm' })).toMatch(
      /fromBigEnd must be at most 150 mm/,
    );
  });

  it('of rod ends by scale: two weighings, or a check of three', () => {
    const id = 'balance.rod-ends-by-scale';
    expect(numberOf(id, { total: '392.2 g', smallEnd: '162.4 g' }, 'bigEnd')).toBeCloseTo(229.8, 9);
    expect(run(id, { total: '392.2 g', smallEnd: '162.4 g' }).verdict?.value).toMatch(/^not checked/);
    expect(run(id, { total: '392.2 g', smallEnd: '162.4 g' }).fromBigEnd).toBeUndefined();
    const three = (total: string) => run(id, { total, bigEnd: '229.8 g', smallEnd: '162.4 g' });
    expect(three('393.2 g').verdict?.value).toBe('weighings agree');
    expect(three('393.3 g').verdict?.value).toBe('weighings disagree: weigh again');
    expect(three('393.3 g').difference?.value).toBeCloseTo(-1.1, 9);
    expect(refusalOf(id, { total: '392.2 g' })).toMatch(/at least one end must be weighed/);
    expect(refusalOf(id, { total: '392.2 g', bigEnd: '400 g' })).toMatch(/more than the whole rod/);
    expect(refusalOf(id, { total: '392.2 g', smallEnd: '392.2 g' })).toMatch(/more than the whole rod/);
  });

  it('are matched to the lightest; a piece that cannot lose enough is named', () => {
    const id = 'balance.weight-match';
    const set = { masses: ['500 g', '503 g', '501 g'] };
    expect(run(id, set).remove?.value).toEqual([0, 3, 1].map((one) => expect.closeTo(one, 9)));
    expect(run(id, set).total?.value).toBeCloseTo(4, 9);
    expect(run(id, set).cannot?.value).toEqual([]);
    expect(run(id, { ...set, canLose: '2 g' }).cannot?.value).toEqual([2]);
    expect(run(id, { ...set, canLose: '3 g' }).cannot?.value).toEqual([]);
    expect(run(id, { ...set, tolerance: '1 g' }).remove?.value).toEqual([0, 3, 0].map((one) => expect.closeTo(one, 9)));
    expect(refusalOf(id, { masses: ['500 g'] })).toMatch(/nothing to be matched to/);
  });
});
