import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { numberOf, outputOf, refusalOf, run } from './run.suite.js';

const mm = (n: number) => ({ value: n, unit: 'mm' });
const cc = (n: number) => ({ value: n, unit: 'cc' });
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const anyEngine = fc.record({
  bore: between(50, 150).map(mm),
  stroke: between(50, 150).map(mm),
  chamber: between(30, 150).map(cc),
  gasketThickness: between(0.3, 3).map(mm),
  deckClearance: between(-0.2, 1).map(mm),
  pistonVolume: between(-5, 20).map(cc),
  pocketVolume: between(0, 3).map(cc),
  creviceVolume: between(0, 2).map(cc),
  otherVolume: between(-1, 5).map(cc),
});
const ratio = 'cylinder.compression-ratio';
/** Swept volume of 100 x 90 mm, to the last bit as the core finds it. */
const SWEPT = { value: (Math.PI / 4) * 0.1 ** 2 * 0.09, unit: 'm3' };

describe('compression ratio', () => {
  it('comes back when each part in turn is worked out from it', () => {
    const solvers = [
      ['cylinder.chamber-for-ratio', 'chamber', 'cc'],
      ['cylinder.gasket-for-ratio', 'gasketThickness', 'mm'],
      ['cylinder.deck-for-ratio', 'deckClearance', 'mm'],
      ['cylinder.piston-for-ratio', 'pistonVolume', 'cc'],
      ['cylinder.stroke-for-ratio', 'stroke', 'mm'],
      ['cylinder.bore-for-ratio', 'bore', 'mm'],
    ] as const;
    fc.assert(
      fc.property(anyEngine, (engine) => {
        const wanted = { value: numberOf(ratio, engine, 'ratio'), unit: '' };
        for (const [id, part] of solvers) {
          const { [part]: given, ...others } = engine;
          expect(numberOf(id, { ...others, ratio: wanted }, part), id).toBeCloseTo(given.value, 6);
        }
        const { otherVolume, ...others } = engine;
        expect(numberOf('cylinder.room-for-ratio', { ...others, ratio: wanted }, 'room')).toBeCloseTo(
          otherVolume.value,
          6,
        );
      }),
      { numRuns: 50 },
    );
  });

  it('is the same in inches and in millimetres', () => {
    fc.assert(
      fc.property(anyEngine, (engine) => {
        const inches = Object.fromEntries(
          Object.entries(engine).map(([name, { value, unit }]) => [
            name,
            unit === 'mm' ? { value: value / 25.4, unit: 'in' } : { value: value / 16.387064, unit: 'in3' },
          ]),
        );
        expect(numberOf(ratio, inches, 'ratio')).toBeCloseTo(numberOf(ratio, engine, 'ratio'), 9);
      }),
    );
  });

  it('falls as any part grows', () => {
    fc.assert(
      fc.property(
        anyEngine,
        fc.constantFrom('chamber', 'gasketThickness', 'deckClearance', 'pistonVolume'),
        (engine, part) => {
          const larger = { ...engine, [part]: { ...engine[part], value: engine[part].value + 0.5 } };
          expect(numberOf(ratio, larger, 'ratio')).toBeLessThan(numberOf(ratio, engine, 'ratio'));
        },
      ),
    );
  });

  const small = { bore: '100 mm', stroke: '90 mm', chamber: '70 cc' };

  it('counts the gasket with its own bore, or as a volume', () => {
    // Hand arithmetic: 1 mm at 103 mm diameter is 8.332 cc.
    const byBore = { ...small, gasketThickness: '1 mm', gasketBore: '103 mm' };
    expect(numberOf(ratio, byBore, 'gasketRoom')).toBeCloseTo(8.3323, 4);
    expect(numberOf(ratio, { ...small, gasketVolume: '8.3323 cc' }, 'ratio')).toBeCloseTo(
      numberOf(ratio, byBore, 'ratio'),
      5,
    );
  });

  it('counts the crevice by its sizes, or as a volume', () => {
    const bySize = { ...small, landHeight: '6 mm', landDiameter: '99.4 mm' };
    expect(numberOf(ratio, bySize, 'creviceRoom')).toBeCloseTo(0.5638, 4);
  });

  it('says which parts were not given, and when the gasket hangs into the bore', () => {
    const said = (inputs: object) => run(ratio, { ...small, ...inputs }).cautions.map((one) => one.text);
    expect(said({})).toEqual([
      'not given and therefore not counted: head gasket, deck clearance, piston volume, crevice above the top ring',
    ]);
    expect(said({ otherVolume: '9 cc' })[0]).toContain('unless they are in the other volume');
    const all = { gasketThickness: '1 mm', deckClearance: '0 mm', pistonVolume: '0 cc', creviceVolume: '0 cc' };
    expect(said(all)).toEqual([]);
    expect(said({ ...all, gasketBore: '99 mm' })).toEqual(['the gasket bore is smaller than the cylinder bore']);
    expect(said({ ...all, gasketBore: '100 mm' })).toEqual([]);
  });

  it.each<[string, object, RegExp]>([
    ['a gasket given twice', { gasketVolume: '8 cc', gasketThickness: '1 mm' }, /the gasket is given twice/],
    ['a gasket volume beside a bore', { gasketVolume: '8 cc', gasketBore: '100 mm' }, /the gasket is given twice/],
    ['a gasket bore alone', { gasketBore: '101 mm' }, /gasketBore 101 mm: a gasket bore says nothing/],
    ['a crevice given twice', { creviceVolume: '1 cc', landHeight: '6 mm' }, /the crevice is given twice/],
    ['half of a land', { landHeight: '6 mm' }, /needed together/],
    ['the other half of a land', { landDiameter: '99 mm' }, /needed together/],
    [
      'a land larger than the bore',
      { landHeight: '6 mm', landDiameter: '101 mm' },
      /does not go into the bore; landDiameter must be at most 100 mm/,
    ],
    ['no room at the top', { pistonVolume: '-70 cc' }, /no clearance volume is left/],
  ])('refuses %s', (_, change, words) => {
    expect(refusalOf(ratio, { ...small, ...change })).toMatch(words);
  });

  it.each(['chamber', 'gasket', 'deck', 'piston', 'room', 'stroke'])(
    'refuses parts that cannot be for the %s as well',
    (part) => {
      const { stroke, chamber, ...bore } = small;
      const goal = {
        ...bore,
        ratio: '10',
        ...(part !== 'stroke' && { stroke }),
        ...(part !== 'chamber' && { chamber }),
      };
      const wrong = { ...goal, landHeight: '6 mm' };
      expect(refusalOf(`cylinder.${part}-for-ratio`, wrong)).toMatch(/needed together/);
    },
  );

  it('refuses a chamber, a gasket or a stroke for which no room is left', () => {
    const much = { ratio: '12', bore: '100 mm', stroke: '90 mm', otherVolume: '80 cc' };
    expect(refusalOf('cylinder.chamber-for-ratio', much)).toMatch(/already take more room than the ratio allows/);
    expect(refusalOf('cylinder.gasket-for-ratio', { ...much, chamber: '1 cc' })).toMatch(/already take more room/);
    const none = { ratio: '12', bore: '100 mm', chamber: '10 cc', pistonVolume: '-10 cc' };
    expect(refusalOf('cylinder.stroke-for-ratio', none)).toMatch(/no clearance volume is left/);
    // Exactly as much as the ratio allows leaves a chamber of nothing, which is an answer.
    const exact = { ...much, ratio: '2', otherVolume: SWEPT };
    expect(numberOf('cylinder.chamber-for-ratio', exact, 'chamber')).toBe(0);
    expect(numberOf('cylinder.gasket-for-ratio', { ...exact, chamber: '0 cc' }, 'gasketThickness')).toBe(0);
  });

  it('lets a piston stand proud to meet a ratio and names its crown', () => {
    const goal = { ratio: '12', bore: '100 mm', stroke: '90 mm', chamber: '70 cc' };
    expect(numberOf('cylinder.deck-for-ratio', goal, 'deckClearance')).toBeLessThan(0);
    expect(outputOf('cylinder.deck-for-ratio', goal, 'deckCut')).toBeUndefined();
    expect(outputOf('cylinder.piston-for-ratio', goal, 'crown')).toBe('dome');
    expect(outputOf('cylinder.piston-for-ratio', { ...goal, ratio: '9' }, 'crown')).toBe('dish');
    const flat = { ...goal, ratio: '2', chamber: SWEPT };
    expect(outputOf('cylinder.piston-for-ratio', flat, 'crown')).toBe('flat');
  });

  it('finds a bore with a gasket of its own bore, as a volume, and refuses what no bore can do', () => {
    const goal = { ratio: '10', stroke: '90 mm', chamber: '70 cc' };
    const id = 'cylinder.bore-for-ratio';
    // Hand arithmetic: area = 9·(70 + 8)/90 mm.
    const volume = numberOf(id, { ...goal, gasketVolume: '8 cc' }, 'bore');
    expect(volume).toBeCloseTo(Math.sqrt((4 * 9 * 78e3) / 90 / Math.PI), 6);
    const own = { ...goal, gasketThickness: '1 mm', gasketBore: '100.9253 mm' };
    expect(numberOf(id, own, 'bore')).toBeCloseTo(volume, 3);
    expect(refusalOf(id, { ...goal, gasketVolume: '8 cc', gasketBore: '100 mm' })).toMatch(/given twice/);
    expect(refusalOf(id, { ...goal, gasketVolume: '8 cc', gasketThickness: '1 mm' })).toMatch(/given twice/);
    expect(refusalOf(id, { ...goal, gasketBore: '100 mm' })).toMatch(/says nothing/);
    expect(refusalOf(id, { ...goal, deckClearance: '10 mm' })).toMatch(/no bore brings this ratio/);
    expect(refusalOf(id, { ...goal, pistonVolume: '-70 cc' })).toMatch(/no bore brings this ratio/);
  });
});

describe('displacement turned round', () => {
  const id = 'cylinder.size-from-displacement';
  const v8 = { displacement: '355.1468 in3', cylinders: 8 };

  it('gives the stroke for a bore and the bore for a stroke', () => {
    // 4.030 x 3.480 in is 355.1 in3 for eight (reference row MO-13).
    expect(numberOf(id, { ...v8, bore: '4.030 in' }, 'stroke') / 25.4).toBeCloseTo(3.48, 3);
    expect(numberOf(id, { ...v8, stroke: '3.480 in' }, 'bore') / 25.4).toBeCloseTo(4.03, 3);
  });

  it('needs exactly one of bore, stroke and their ratio', () => {
    expect(refusalOf(id, v8)).toMatch(/exactly one/);
    expect(refusalOf(id, { ...v8, bore: '4 in', stroke: '3 in' })).toMatch(/exactly one/);
  });
});

describe('spread over the cylinders', () => {
  const id = 'cylinder.ratio-spread';
  const base = { bores: ['100 mm'], strokes: ['90 mm'], chambers: ['70 cc', '71 cc', '69 cc'] };

  it('names the lowest and the highest cylinder', () => {
    const { outputs } = run(id, {
      ...base,
      gasketThickness: '1 mm',
      gasketBore: '101 mm',
      pistonVolumes: ['1 cc'],
      otherVolumes: ['1 cc'],
    });
    expect([outputs.lowestCylinder?.value, outputs.highestCylinder?.value]).toEqual([2, 3]);
    expect(Number(outputs.spread?.value)).toBeCloseTo(
      Number(outputs.highest?.value) - Number(outputs.lowest?.value),
      12,
    );
  });

  it('agrees with the single calculation', () => {
    const one = numberOf(ratio, { bore: '100 mm', stroke: '90 mm', chamber: '71 cc' }, 'ratio');
    expect((outputOf(id, base, 'ratios') as number[])[1]).toBeCloseTo(one, 12);
  });

  it('has no spread when all are alike', () => {
    expect(numberOf(id, { ...base, chambers: ['70 cc', '70 cc'] }, 'spread')).toBe(0);
  });

  it.each<[string, object, RegExp]>([
    [
      'lists of different lengths, by name',
      { deckClearances: ['0 mm', '1 mm'] },
      /deckClearances .*each list needs one value, or 3/,
    ],
    ['a gasket bore alone', { gasketBore: '101 mm' }, /says nothing/],
    ['a cylinder without room, by its place', { deckClearances: ['0 mm', '-20 mm', '0 mm'] }, /left at place 2/],
  ])('refuses %s', (_, change, words) => {
    expect(refusalOf(id, { ...base, ...change })).toMatch(words);
  });
});

describe('choice of parts', () => {
  const id = 'cylinder.choose-parts';
  const offer = {
    bore: '100 mm',
    stroke: '90 mm',
    ratio: '10',
    chambers: ['64 cc', '70 cc'],
    gasketThicknesses: ['0.7 mm', '1.0 mm', '1.3 mm'],
    deckClearances: ['0 mm', '0.2 mm'],
    pistonVolumes: ['-4 cc', '0 cc', '5 cc'],
  };

  it('finds no better combination by trying each through the ratio itself', () => {
    const found = run(id, { ...offer, leastQuench: '0.9 mm', mostQuench: '1.2 mm', gasketBore: '102 mm' }).outputs;
    const off: number[] = [];
    for (const chamber of offer.chambers)
      for (const gasketThickness of offer.gasketThicknesses)
        for (const deckClearance of offer.deckClearances)
          for (const pistonVolume of offer.pistonVolumes) {
            const quench = Number.parseFloat(gasketThickness) + Number.parseFloat(deckClearance);
            if (quench < 0.9 - 1e-9 || quench > 1.2 + 1e-9) continue;
            const parts = { chamber, gasketThickness, deckClearance, pistonVolume, gasketBore: '102 mm' };
            off.push(Math.abs(numberOf(ratio, { bore: '100 mm', stroke: '90 mm', ...parts }, 'ratio') - 10));
          }
    expect(found.fitting?.value).toBe(off.length);
    expect(Math.abs(Number(found.ratio?.value) - 10)).toBeCloseTo(Math.min(...off), 9);
    const next = [found.nextRatios?.value].flat().map((one) => Math.abs(Number(one) - 10));
    expect(next).toEqual([...next].sort((a, b) => a - b));
    expect(next.length).toBe(5);
  });

  it('takes the smaller quench of two that are equally near', () => {
    const two = {
      ...offer,
      chambers: ['70 cc'],
      gasketThicknesses: ['1 mm'],
      gasketBore: '100 mm',
      pistonVolumes: ['0 cc', '3.9269908169872414 cc'],
      deckClearances: ['0.5 mm', '0 mm'],
    };
    expect(numberOf(id, { ...two, ratio: '9.62' }, 'quench')).toBeCloseTo(1, 9);
  });

  it('refuses when nothing fits, and more combinations than it tries', () => {
    expect(refusalOf(id, { ...offer, mostQuench: '0.1 mm' })).toMatch(/no combination of these parts fits/);
    expect(refusalOf(id, { ...offer, chambers: ['1 cc'], pistonVolumes: ['-90 cc'] })).toMatch(/no combination/);
    const many = Array.from({ length: 60 }, (_, at) => `${60 + at / 10} cc`);
    const lots = {
      ...offer,
      chambers: many,
      pistonVolumes: many,
      gasketThicknesses: Array.from({ length: 15 }, (_, at) => `1.${at + 10} mm`),
    };
    expect(refusalOf(id, lots)).toMatch(/that makes 108000 combinations; at most 100000/);
  });
});
