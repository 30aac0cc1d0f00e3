import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { mm } from '../../quantity/index.js';
import { cautionsOf, numberOf, outputOf, refusalOf, run } from './run.suite.js';
import { farthest, reachAt, smallestCleanUp, wornSection } from './worn-profile.js';

describe('oversize', () => {
  const id = 'cylinder.oversize';
  const worn = {
    standardBore: '100 mm',
    largest: ['100.10 mm', '100.20 mm'],
    oversizes: ['0.75 mm', '0.25 mm', '0.50 mm'],
  };

  it('takes the least that exists, whatever their order, and an exact fit', () => {
    expect(numberOf(id, worn, 'oversize')).toBeCloseTo(0.25, 9);
    expect(numberOf(id, { ...worn, honeAllowance: '0.05 mm' }, 'oversize')).toBeCloseTo(0.25, 9);
    expect(numberOf(id, { ...worn, honeAllowance: '0.06 mm' }, 'oversize')).toBeCloseTo(0.5, 9);
  });

  it('needs no more with a shift than without, and never less than the worn bore', () => {
    const small = fc.double({ min: 0, max: 0.4, noNaN: true });
    fc.assert(
      fc.property(small, small, (wear, shift) => {
        const one = {
          standardBore: '100 mm',
          largest: [{ value: 100 + wear, unit: 'mm' }],
          axis: 'original',
          oversizes: ['5 mm'],
        };
        const need = numberOf(id, { ...one, shift: { value: shift, unit: 'mm' } }, 'largestNeeded');
        expect(need).toBeLessThanOrEqual(numberOf(id, one, 'largestNeeded') + 1e-12);
        expect(need).toBeGreaterThanOrEqual(100 + wear - 1e-9);
      }),
    );
  });

  it('bores a bore that is not worn to nothing over standard', () => {
    const fresh = { ...worn, largest: ['100 mm'], axis: 'original', oversizes: ['0 mm', '0.25 mm'] };
    expect(numberOf(id, fresh, 'oversize')).toBe(0);
    expect(numberOf(id, { ...fresh, largest: ['99.9 mm'] }, 'spare')).toBeCloseTo(0, 9);
  });

  it('reckons the wall left with the shift of the axis, and warns when it gets thin', () => {
    const wall = { ...worn, wall: '5 mm' };
    // Centred on wear at one wall: half of the oversize and half of the wear.
    expect(numberOf(id, wall, 'wallLeft')).toBeCloseTo(5 - 0.125 - 0.1, 9);
    expect(
      numberOf(id, { ...wall, axis: 'original', shift: '0.05 mm', oversizes: ['0.5 mm'] }, 'wallLeft'),
    ).toBeCloseTo(5 - 0.25 - 0.05, 9);
    expect(numberOf(id, { ...wall, largest: ['99.9 mm'] }, 'wallLeft')).toBeCloseTo(5 - 0.125, 9);
    expect(cautionsOf(id, { ...wall, leastWall: '4.775 mm' })).toEqual([]);
    expect(cautionsOf(id, { ...wall, leastWall: '4.78 mm' })).toEqual(['wall-too-thin']);
    expect(outputOf(id, worn, 'wallLeft')).toBeUndefined();
  });

  it('refuses a shift of a bar that is centred anyway, a wall limit without a wall, and too much wear', () => {
    expect(refusalOf(id, { ...worn, shift: '0.1 mm' })).toMatch(/needs no shift/);
    expect(refusalOf(id, { ...worn, leastWall: '3 mm' })).toMatch(/without the wall now/);
    expect(refusalOf(id, { ...worn, largest: ['101 mm'] })).toMatch(/no oversize reaches the \+1.0000 mm/);
  });
});

describe('clean-up of an oval bore', () => {
  const id = 'cylinder.clean-up';
  const oval = { standardBore: '100 mm', across: ['100.10 mm', '100.06 mm'], along: ['100.02 mm', '100.01 mm'] };

  it('is the worn diameter with even wear and no shift, and twice the wear when all sits on one wall', () => {
    expect(numberOf(id, { ...oval, wearShare: '0.5' }, 'bored')).toBeCloseTo(100.1, 9);
    expect(numberOf(id, oval, 'bored')).toBeCloseTo(100.2, 9);
    expect(numberOf(id, { ...oval, honeAllowance: '0.05 mm' }, 'oversize')).toBeCloseTo(0.25, 9);
  });

  it('with a limited shift stands between the two', () => {
    const found = run(id, { ...oval, shift: '0.02 mm' }).outputs;
    expect(Number(found.bored?.value)).toBeCloseTo(100.16, 9);
    expect(Number(found.bestShift?.value)).toBeCloseTo(0.02, 6);
  });

  it('is decided by the wear along the crank where that is larger', () => {
    const along = { standardBore: '100 mm', across: ['100.02 mm'], along: ['100.30 mm'], wearShare: '0.5' };
    expect(numberOf(id, along, 'bored')).toBeCloseTo(100.3, 9);
  });

  it('refuses a height with one reading', () => {
    expect(refusalOf(id, { ...oval, along: ['100 mm'] })).toMatch(/both directions/);
  });

  const radius = fc.double({ min: 40, max: 60, noNaN: true });
  it('takes the farthest point of a half ellipse, as trying every angle does', () => {
    fc.assert(
      fc.property(radius, radius, fc.double({ min: -2, max: 2, noNaN: true }), (semi, along, away) => {
        let best = 0;
        for (let step = 0; step <= 2000; step += 1) {
          const t = (step / 2000) * (Math.PI / 2);
          best = Math.max(best, Math.hypot(semi * Math.cos(t) + away, along * Math.sin(t)));
        }
        expect(farthest(semi, along, away)).toBeGreaterThanOrEqual(best - 1e-12);
        expect(farthest(semi, along, away)).toBeCloseTo(best, 4);
      }),
    );
  });

  it('finds no better axis by trying a thousand of them', () => {
    const size = fc.double({ min: 0, max: 0.5, noNaN: true });
    fc.assert(
      fc.property(
        fc.array(fc.tuple(size, size), { minLength: 1, maxLength: 3 }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (wears, share) => {
          const sections = wears.map(([a, b]) => wornSection(mm(100 + a), mm(100 + b), mm(100), share));
          const { diameter } = smallestCleanUp(sections, mm(0.3));
          for (let step = -500; step <= 500; step += 1) {
            expect(2 * reachAt(sections, (step / 500) * 0.0003)).toBeGreaterThanOrEqual(diameter - 1e-11);
          }
        },
      ),
      { numRuns: 30 },
    );
  });
});

describe('bored size, wall, sleeve', () => {
  it('gives each piston of a set its own bore, and refuses to bore nothing', () => {
    const set = { pistons: ['99.97 mm', '99.98 mm'], clearance: '0.03 mm', honeAllowance: '0.02 mm' };
    expect((outputOf('cylinder.bored-size', set, 'honed') as number[]).map((one) => one.toFixed(3))).toEqual([
      '100.000',
      '100.010',
    ]);
    expect(refusalOf('cylinder.bored-size', { ...set, honeAllowance: '101 mm' })).toMatch(/no bore is left/);
  });

  const wall = { wall: '4 mm', boreNow: '100 mm', boreAfter: '101 mm' };
  it.each<[object, string]>([
    [{}, 'no limit given'],
    [{ leastWall: '3.5 mm' }, 'within'],
    [{ leastWall: '3.6 mm' }, 'too small'],
    [{ shift: '-0.2 mm', leastWall: '3.7 mm' }, 'within'],
    [{ shift: '3.5 mm' }, 'the wall is cut through'],
  ])('with %j a wall of 4 mm is: %s', (change, verdict) => {
    expect(outputOf('cylinder.wall-left', { ...wall, ...change }, 'verdict')).toBe(verdict);
  });
  it('refuses a bar that makes a bore smaller', () => {
    expect(refusalOf('cylinder.wall-left', { ...wall, boreAfter: '99 mm' })).toMatch(
      /boreAfter must be at least 100 mm/,
    );
  });

  const sleeve = { outside: '106 mm', interference: '0.05 mm', finishedBore: '100 mm' };
  it('judges the block wall behind a sleeve only when it knows it', () => {
    const id = 'cylinder.sleeve';
    expect(outputOf(id, sleeve, 'verdict')).toBe('no wall given');
    expect(outputOf(id, { ...sleeve, boreNow: '100 mm', wall: '6 mm', leastWall: '3 mm' }, 'verdict')).toBe('within');
    expect(outputOf(id, { ...sleeve, boreNow: '100 mm', wall: '5 mm', leastWall: '3 mm' }, 'verdict')).toBe(
      'too small',
    );
    expect(refusalOf(id, { ...sleeve, wall: '6 mm' })).toMatch(/together/);
    expect(refusalOf(id, { ...sleeve, boreNow: '100 mm' })).toMatch(/together/);
    expect(refusalOf(id, { ...sleeve, finishedBore: '106 mm' })).toMatch(/no wall; finishedBore must be below 106 mm/);
  });
});

describe('piston clearance', () => {
  const id = 'cylinder.piston-clearance';
  const pair = { bore: '100.05 mm', piston: '100 mm' };

  it('asks for the measuring points, as a diameter without them is not comparable', () => {
    expect(cautionsOf(id, pair)).toEqual(['measuring-point']);
    expect(cautionsOf(id, { ...pair, boreDepth: '60 mm' })).toEqual(['measuring-point']);
    expect(cautionsOf(id, { ...pair, skirtHeight: '10 mm' })).toEqual(['measuring-point']);
    expect(cautionsOf(id, { ...pair, boreDepth: '60 mm', skirtHeight: '10 mm' })).toEqual([]);
  });

  it('keeps interference as a negative clearance', () => {
    const tight = { bore: '100 mm', piston: '100.01 mm' };
    expect(numberOf(id, tight, 'clearance')).toBeCloseTo(-0.01, 9);
    expect(outputOf(id, tight, 'toHone')).toBeUndefined();
    expect(outputOf(id, tight, 'verdict')).toBe('no limit given');
    expect(numberOf(id, pair, 'perSide')).toBeCloseTo(0.025, 9);
    expect(numberOf(id, pair, 'share')).toBeCloseTo(0.05 / 100.05, 12);
    expect(numberOf(id, { ...pair, least: '0.02 mm' }, 'toHone')).toBe(0);
    expect(outputOf(id, { ...pair, most: '0.04 mm' }, 'verdict')).toBe('too large');
  });

  it('implies the band from which it was made: the round trip closes', () => {
    const size = fc.double({ min: 50, max: 100, noNaN: true });
    const width = fc.double({ min: 0, max: 0.05, noNaN: true });
    fc.assert(
      fc.property(size, width, width, width, (piston, pistonWidth, boreWidth, gap) => {
        const t = (value: number) => ({ value, unit: 'mm' });
        const [p0, p1, b0, b1] = [
          piston,
          piston + pistonWidth,
          piston + pistonWidth + gap,
          piston + pistonWidth + gap + boreWidth,
        ];
        const band = run('cylinder.clearance-band', {
          boreLeast: t(b0),
          boreMost: t(b1),
          pistonLeast: t(p0),
          pistonMost: t(p1),
        }).outputs;
        const clearance = { clearanceLeast: t(Number(band.least?.value)), clearanceMost: t(Number(band.most?.value)) };
        const bore = run('cylinder.implied-band', {
          known: 'inner',
          sizeLeast: t(p0),
          sizeMost: t(p1),
          ...clearance,
        }).outputs;
        expect(
          [bore.least?.value, bore.most?.value]
            .map((one, at) => Number(one) - [b0, b1][at]!)
            .every((off) => Math.abs(off) < 1e-9),
        ).toBe(true);
        const inner = run('cylinder.implied-band', {
          known: 'outer',
          sizeLeast: t(b0),
          sizeMost: t(b1),
          ...clearance,
        }).outputs;
        expect(
          [inner.least?.value, inner.most?.value]
            .map((one, at) => Number(one) - [p0, p1][at]!)
            .every((off) => Math.abs(off) < 1e-9),
        ).toBe(true);
        expect(bore.verdict?.value).toBe('bands agree');
      }),
    );
  });

  it('refuses bands that run backwards, and says when graded parts are meant', () => {
    const band = { boreLeast: '100 mm', boreMost: '100.01 mm', pistonLeast: '99.9 mm', pistonMost: '99.91 mm' };
    expect(refusalOf('cylinder.clearance-band', { ...band, boreMost: '99.99 mm' })).toMatch(/boreLeast .*backwards/);
    expect(refusalOf('cylinder.clearance-band', { ...band, pistonMost: '99.8 mm' })).toMatch(/pistonLeast .*backwards/);
    const implied = {
      known: 'inner',
      sizeLeast: '99 mm',
      sizeMost: '99.1 mm',
      clearanceLeast: '0.02 mm',
      clearanceMost: '0.04 mm',
    };
    expect(outputOf('cylinder.implied-band', implied, 'verdict')).toMatch(/graded, matched parts/);
    expect(refusalOf('cylinder.implied-band', { ...implied, sizeMost: '98 mm' })).toMatch(/sizeLeast .*backwards/);
    expect(refusalOf('cylinder.implied-band', { ...implied, clearanceMost: '0 mm' })).toMatch(
      /clearanceLeast .*backwards/,
    );
  });

  it('shows a rule of thumb as one', () => {
    const rule = 'cylinder.clearance-rule';
    expect(cautionsOf(rule, { bore: '100 mm', alloy: 'forged 4032' })).toEqual(['advisory']);
    expect(numberOf(rule, { bore: '8 in', alloy: 'cast, hypereutectic' }, 'most') / 25.4).toBeCloseTo(0.005, 9);
  });
});
