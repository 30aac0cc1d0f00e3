import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { OutputUncertainty } from '../../calc/catalogue/result.js';
import { runCalculation } from '../../calc/index.js';
import { compressionOf } from './compression.js';
import { makeupOf } from './makeup.js';
import type { GivenFigure, Makeup } from './model.js';
import { answerIn, bareEngine, exact, makeupWith, valueIn } from './rows.suite.js';
import { solveCompression } from './solve-compression.js';

const four = bareEngine(4);
const ONE = { cylinder: 1 };
const WHOLE = {
  bore: 0.1,
  stroke: 0.09,
  'rod-length': 0.15,
  'gasket-bore': 0.102,
  'gasket-thickness': 0.0012,
  'deck-clearance': 0.0004,
  'piston-volume': 6e-6,
  'chamber-volume': 60e-6,
  'chamber-area': 0.006,
  'intake-closes': 1,
};
type Figures = Readonly<Record<string, number | undefined>>;
const ratioOf = (figures: Figures): number =>
  valueIn(compressionOf(makeupWith(four, { ...WHOLE, ...figures })), 'ratio', ONE)!;
/** The doubt of one figure, the others exact. */
const doubtful = (...rows: readonly (readonly [key: string, u: number | undefined])[]): Makeup => {
  const stated = Object.entries(WHOLE).flatMap(([key, value]) => exact(key, value));
  const moved = rows.map(([key, u]): GivenFigure => {
    const found = stated.find((one) => one.key === key)!;
    const { u: _, ...rest } = found;
    return u === undefined ? rest : { ...rest, u };
  });
  const keys = new Set(rows.map(([key]) => key));
  return makeupOf(four, undefined, [...moved, ...stated.filter(({ key }) => !keys.has(key))]);
};

describe('solved backwards and put in again, the goal comes out', () => {
  const goal = fc.double({ min: 7, max: 14, noNaN: true });
  const WAYS: readonly (readonly [name: string, needed: string, put: (needed: number) => Figures])[] = [
    ['chamber', 'chamber-needed', (needed) => ({ 'chamber-volume': needed })],
    ['gasket', 'gasket-needed', (needed) => ({ 'gasket-thickness': needed })],
    ['crown', 'piston-needed', (needed) => ({ 'piston-volume': needed })],
    ['deck', 'deck-needed', (needed) => ({ 'deck-clearance': needed })],
    ['deck cut', 'deck-cut-needed', (needed) => ({ 'deck-cut': needed })],
    ['head cut', 'head-cut-needed', (needed) => ({ 'head-cut': needed })],
    ['room', 'room-needed', (needed) => ({ 'other-volume': needed })],
  ];
  it.each(WAYS)('%s', (_, needed, put) => {
    fc.assert(
      fc.property(goal, (ratio) => {
        const found = valueIn(solveCompression(makeupWith(four, WHOLE), { ratio }), needed, ONE)!;
        expect(ratioOf(put(found))).toBeCloseTo(ratio, 8);
      }),
      { numRuns: 20 },
    );
  });

  it('an effective ratio through the static one', () => {
    fc.assert(
      fc.property(fc.double({ min: 6, max: 11, noNaN: true }), (effective) => {
        const found = solveCompression(makeupWith(four, WHOLE), { effective });
        const chamber = valueIn(found, 'chamber-needed', ONE);
        const again = compressionOf(makeupWith(four, { ...WHOLE, 'chamber-volume': chamber }));
        expect(valueIn(again, 'effective-ratio', ONE)).toBeCloseTo(effective, 8);
      }),
      { numRuns: 20 },
    );
  });

  it('a cut already planned is counted before a further one', () => {
    const planned = { ...WHOLE, 'deck-cut': 0.0002 };
    const [all, rest] = [WHOLE, planned].map((figures) =>
      valueIn(solveCompression(makeupWith(four, figures), { ratio: 10.5 }), 'deck-cut-needed', ONE),
    );
    expect(all! - rest!).toBeCloseTo(0.0002, 12);
  });

  it('a gasket that would have to be thinner than nothing is named', () => {
    const found = solveCompression(makeupWith(four, { ...WHOLE, 'chamber-volume': 90e-6 }), { ratio: 12 });
    expect(valueIn(found, 'gasket-needed', ONE)).toBeLessThan(0);
    expect(found.cautions.join('\n')).toContain('cylinder 1: no gasket is thin enough');
  });

  it('a gasket for the quench that is wanted', () => {
    const found = solveCompression(makeupWith(four, WHOLE), { ratio: 10, quench: 0.0011 });
    expect(valueIn(found, 'gasket-for-quench', ONE)).toBeCloseTo(0.0007, 12);
  });
});

describe('the ratio', () => {
  it.each([
    ['chamber-volume', 1e-6, 'falls'],
    ['gasket-thickness', 1e-4, 'falls'],
    ['gasket-bore', 1e-3, 'falls'],
    ['deck-clearance', 1e-4, 'falls'],
    ['piston-volume', 1e-6, 'falls'],
    ['deck-cut', 1e-4, 'grows'],
    ['head-cut', 1e-4, 'grows'],
    ['stroke', 1e-3, 'grows'],
  ])('with more %s', (key, step, way) => {
    const base = (WHOLE as Figures)[key] ?? 0;
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 10, noNaN: true }), (times) => {
        const change = ratioOf({ [key]: base + times * step }) - ratioOf({ [key]: base });
        expect(Math.sign(change)).toBe(way === 'grows' ? 1 : -1);
      }),
      { numRuns: 20 },
    );
  });

  it('is the same whether the sheet is written in inches or in millimetres', () => {
    const sheet = (bore: string, stroke: string, chamber: string, gasket: string) =>
      makeupOf(
        bareEngine(
          4,
          `crankTrain: { bore: ${bore}, stroke: ${stroke}, chamberVolume: ${chamber} }
figures: { gasket-bore: ${bore}, gasket-thickness: ${gasket}, deck-clearance: 0 mm, piston-volume: 0 cm3 }
`,
        ),
      );
    const [metric, inch] = [
      sheet('101.6 mm', '88.9 mm', '65.548256 cm3', '1.016 mm'),
      sheet('4 in', '3.5 in', '4 in3', '0.04 in'),
    ].map((makeup) => valueIn(compressionOf(makeup), 'ratio', ONE));
    expect(metric).toBeCloseTo(inch!, 10);
  });

  it('has the doubt of the chamber times swept over clearance squared', () => {
    const found = compressionOf(doubtful(['chamber-volume', 0.3e-6]));
    const [swept, clearance] = ['swept', 'clearance'].map((key) => valueIn(found, key, ONE)!);
    expect(answerIn(found, 'ratio', ONE)?.u).toBeCloseTo((swept! / clearance! ** 2) * 0.3e-6, 8);
  });

  it('has the doubt that the catalogue carries through its own calculation', () => {
    const found = answerIn(
      compressionOf(
        doubtful(
          ['bore', 1e-5],
          ['stroke', 5e-5],
          ['chamber-volume', 0.2e-6],
          ['gasket-thickness', 3e-5],
          ['deck-clearance', 2e-5],
          ['piston-volume', 0.3e-6],
        ),
      ),
      'ratio',
      ONE,
    );
    const run = runCalculation(
      'cylinder.compression-ratio',
      {
        bore: '100 ±0.01 mm',
        stroke: '90 ±0.05 mm',
        chamber: '60 ±0.2 cm3',
        gasketThickness: '1.2 ±0.03 mm',
        gasketBore: '102 mm',
        deckClearance: '0.4 ±0.02 mm',
        pistonVolume: '6 ±0.3 cm3',
      },
      { uncertainty: { trials: 20_000, seed: 1 } },
    );
    const output = run.ok ? run.value.outputs.ratio : undefined;
    const doubt = output?.uncertainty as OutputUncertainty | undefined;
    expect(output?.value).toBeCloseTo(found!.value, 8);
    expect(doubt?.standard).toBeCloseTo(found!.u!, 6);
  });

  it('has no doubt and no verdict where a figure states none', () => {
    const makeup = doubtful(['chamber-volume', undefined]);
    const wanted = makeupOf(four, undefined, [...makeup.figures.values(), ...exact('ratio-least', 9)]);
    const found = compressionOf(wanted);
    expect(answerIn(found, 'ratio', ONE)).toMatchObject({ verdict: 'no data' });
    expect(answerIn(found, 'ratio', ONE)?.u).toBeUndefined();
    expect(answerIn(found, 'quench', ONE)?.u).toBe(0);
    expect(found.cautions.join('\n')).toContain('no doubt is stated for chamber volume');
  });

  it('is held against what is wanted, with the chance that it keeps it', () => {
    const makeup = doubtful(['chamber-volume', 0.5e-6]);
    const at = valueIn(compressionOf(makeup), 'ratio', ONE)!;
    const held = answerIn(
      compressionOf(makeupOf(four, undefined, [...makeup.figures.values(), ...exact('ratio-most', at)])),
      'ratio',
      ONE,
    );
    expect(held?.inside).toBeCloseTo(0.5, 6);
    expect(held?.verdict).toBe('near');
    expect(held?.limit).toEqual({ high: at, from: 'reference row' });
  });
});

describe('what is missing', () => {
  it('is named, and the rest is computed', () => {
    const found = compressionOf(makeupWith(four, { ...WHOLE, 'piston-volume': undefined }));
    expect(answerIn(found, 'ratio', ONE)).toBeUndefined();
    expect(valueIn(found, 'quench', ONE)).toBeCloseTo(0.0016, 12);
    expect(found.stacks[0]?.parts.map(({ part }) => part)).toEqual(['chamber', 'gasket', 'deck']);
    expect(found.stacks[0]?.clearance).toBeUndefined();
    expect(found.missing).toContainEqual({ key: 'piston-volume', title: 'crown volume', for: 'compression ratio' });
  });
  it('a crevice that is not given is not counted, and the answer says so', () => {
    expect(compressionOf(makeupWith(four, WHOLE)).missing.map(({ key }) => key)).toEqual(['land-diameter']);
  });
  it('a head cut without the area of the chamber leaves the ratio out', () => {
    const found = compressionOf(makeupWith(four, { ...WHOLE, 'chamber-area': undefined, 'head-cut': 1e-4 }));
    expect(answerIn(found, 'ratio', ONE)).toBeUndefined();
    expect(found.missing.map(({ key }) => key)).toContain('chamber-area');
  });
});

describe('between the cylinders', () => {
  const unlike = {
    ...WHOLE,
    'chamber-volume@1': 60e-6,
    'chamber-volume@2': 61e-6,
    'chamber-volume@3': 60.5e-6,
    'chamber-volume@4': 60.2e-6,
  };
  it('the spread is that of the smallest and the largest chamber', () => {
    const found = compressionOf(makeupWith(four, { ...unlike, 'chamber-volume': undefined }));
    const [one, two] = [1, 2].map((cylinder) => valueIn(found, 'ratio', { cylinder })!);
    expect(valueIn(found, 'ratio-spread')).toBeCloseTo(one! - two!, 10);
    expect(found.working.join('\n')).toContain('highest ratio: cylinder 1, lowest: cylinder 2');
  });
  it('a doubt that all share hardly counts in the spread; one of each does', () => {
    const shared = compressionOf(doubtful(['gasket-thickness', 5e-5]));
    expect(answerIn(shared, 'ratio', ONE)?.u).toBeGreaterThan(0.04);
    expect(answerIn(shared, 'ratio-spread')?.u).toBeLessThan(1e-9);
    const makeup = doubtful(['chamber-volume', 0.3e-6]);
    const each = [1, 2, 3, 4].map(
      (at): GivenFigure => ({ ...makeup.figures.get('chamber-volume')!, key: `chamber-volume@${at}` }),
    );
    const own = compressionOf(makeupOf(four, undefined, [...each, ...makeup.figures.values()]));
    expect(answerIn(own, 'ratio-spread')?.u).toBeCloseTo(Math.SQRT2 * answerIn(own, 'ratio', ONE)!.u!, 8);
  });
});

it('another piston on the scratch copy does not stand where the measured one stood', () => {
  const heights = { 'deck-height': 0.2354, 'compression-height': 0.04 };
  const stated = Object.entries({ ...WHOLE, ...heights }).flatMap(([key, value]) =>
    exact(key, value).map((one): GivenFigure => ({ ...one, origin: 'measured' })),
  );
  const before = compressionOf(makeupOf(four, undefined, stated));
  expect(valueIn(before, 'deck-clearance', ONE)).toBeCloseTo(0.0004, 12);
  const after = compressionOf(makeupOf(four, undefined, stated, new Map([['compression-height', 0.0402]])));
  // 235.4 − 45 − 150 − 40.2 = 0.2 mm.
  expect(valueIn(after, 'deck-clearance', ONE)).toBeCloseTo(0.0002, 12);
});
