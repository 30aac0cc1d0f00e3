/** Reference rows on compression, quench, deck and intake face through the functions of the combination. */
import { describe, expect, it } from 'vitest';
import file from '../../../../../cases/cylinder.json' with { type: 'json' };
import type { Engine } from '../../engine/index.js';
import { compressionOf } from './compression.js';
import { intakeFacesOf } from './intake-face.js';
import type { Makeup } from './model.js';
import { answerIn, bareEngine, bareVee, check, input, makeupWith, type Row, rowsOf, valueIn } from './rows.suite.js';
import { solveCompression } from './solve-compression.js';

const rows = rowsOf(file);
const ONE = { cylinder: 1 };
const NOTHING_ELSE = { 'gasket-thickness': 0, 'deck-clearance': 0, 'piston-volume': 0 };

function partsOf(row: Row): Readonly<Record<string, number | undefined>> {
  return {
    bore: input(row, 'bore'),
    stroke: input(row, 'stroke'),
    'chamber-volume': input(row, 'chamber'),
    'gasket-thickness': input(row, 'gasketThickness'),
    'gasket-bore': input(row, 'gasketBore'),
    'deck-clearance': input(row, 'deckClearance'),
    'piston-volume': input(row, 'pistonVolume'),
    'other-volume': input(row, 'otherVolume'),
    'rod-length': input(row, 'rodLength'),
  };
}
const four = bareEngine(4);
const of = (row: Row, more: Readonly<Record<string, number | undefined>> = {}, engine: Engine = four): Makeup =>
  makeupWith(engine, { ...partsOf(row), ...more });

const disc = (bore: number) => (Math.PI / 4) * bore ** 2;
/** Chamber that makes a static ratio in a cylinder without anything else in it. */
const chamberFor = (ratio: number, bore: number, stroke: number) => (disc(bore) * stroke) / (ratio - 1);
const BORE = 0.1;

const WAYS: Readonly<Record<string, (row: Row) => Readonly<Record<string, number | undefined>>>> = {
  'cylinder.compression-ratio': (row) => {
    const found = compressionOf(of(row));
    const [stack] = found.stacks;
    const part = (name: string) => stack?.parts.find((one) => one.part === name)?.volume;
    return {
      swept: valueIn(found, 'swept', ONE),
      ratio: valueIn(found, 'ratio', ONE),
      deckRoom: part('deck'),
      gasketRoom: part('gasket'),
    };
  },
  'cylinder.downfill': (row) => {
    const bore = input(row, 'bore')!;
    const gasket = input(row, 'gasketVolume');
    const found = compressionOf(
      of(row, {
        'downfill-depth': input(row, 'depth'),
        'downfill-volume': input(row, 'measured'),
        'gasket-bore': bore,
        'gasket-thickness': gasket === undefined ? undefined : gasket / disc(bore),
      }),
    );
    return {
      extra: found.stacks[0]?.parts.find(({ part }) => part === 'piston')?.volume,
      swept: valueIn(found, 'swept', ONE),
      clearance: valueIn(found, 'clearance', ONE),
      ratio: valueIn(found, 'ratio', ONE),
    };
  },
  'cylinder.chamber-for-ratio': (row) => {
    const found = solveCompression(of(row, { ...NOTHING_ELSE, 'gasket-bore': input(row, 'bore') }), {
      ratio: input(row, 'ratio')!,
    });
    return { chamber: valueIn(found, 'chamber-needed', ONE), clearance: valueIn(found, 'clearance-needed', ONE) };
  },
  'cylinder.clearance-volume': (row) => {
    const cylinders = Number(row.inputs.cylinders);
    const stroke = input(row, 'displacement')! / cylinders / disc(BORE);
    const makeup = makeupWith(bareEngine(cylinders), { bore: BORE, stroke });
    return {
      clearance: valueIn(solveCompression(makeup, { ratio: input(row, 'staticRatio')! }), 'clearance-needed', ONE),
    };
  },
  'cylinder.displacement': (row) => {
    const cylinders = Number(row.inputs.cylinders);
    const found = compressionOf(of(row, {}, bareEngine(Math.max(2, cylinders))));
    return { perCylinder: valueIn(found, 'swept', ONE), total: valueIn(found, 'displacement') };
  },
  'cylinder.effective-ratio': (row) => {
    const stroke = input(row, 'stroke')!;
    const found = compressionOf(
      of(row, {
        ...NOTHING_ELSE,
        bore: BORE,
        'gasket-bore': BORE,
        'chamber-volume': chamberFor(input(row, 'staticRatio')!, BORE, stroke),
        'intake-closes': input(row, 'intakeCloses'),
        'closing-allowance': input(row, 'laterBy'),
      }),
    );
    return { effective: valueIn(found, 'effective-ratio', ONE), rise: valueIn(found, 'closing-rise', ONE) };
  },
  'cylinder.static-for-effective': (row) => {
    const makeup = of(row, { bore: BORE, 'intake-closes': input(row, 'intakeCloses') });
    const found = solveCompression(makeup, { effective: input(row, 'effective')! });
    return { staticRatio: valueIn(found, 'ratio-needed', ONE) };
  },
  'cylinder.cranking-pressure': (row) => {
    const air = input(row, 'ambient')!;
    const found = compressionOf(
      makeupWith(four, {
        ...NOTHING_ELSE,
        bore: BORE,
        stroke: BORE,
        'rod-length': 2 * BORE,
        'gasket-bore': BORE,
        // Closing at the lowest place: the trapped ratio is the static one.
        'intake-closes': 0,
        'chamber-volume': chamberFor(input(row, 'effective')!, BORE, BORE),
        'cranking-exponent': input(row, 'exponent'),
        'site-height': (288.15 / 0.0065) * (1 - (air / 101_325) ** (1 / 5.25588)),
      }),
    );
    const gauge = valueIn(found, 'cranking-pressure', ONE);
    return { gauge, absolute: gauge === undefined ? undefined : gauge + air };
  },
  'cylinder.mill-for-volume': (row) => {
    const now = 70e-6;
    const needed = now - input(row, 'reduction')!;
    const makeup = makeupWith(four, {
      ...NOTHING_ELSE,
      bore: BORE,
      stroke: BORE,
      'gasket-bore': BORE,
      'chamber-volume': now,
      'chamber-area': input(row, 'area'),
      'chamber-perimeter': input(row, 'perimeter'),
    });
    const ratio = 1 + (disc(BORE) * BORE) / needed;
    const cut = valueIn(solveCompression(makeup, { ratio }), 'head-cut-needed', ONE);
    return { cut, cutPerCc: cut };
  },
  'cylinder.intake-face': (row) => {
    const gasket = input(row, 'gasketChange');
    const makeup = makeupWith(bareVee(), {
      'head-cut': input(row, 'headCut'),
      'deck-cut': input(row, 'blockCut'),
      'gasket-thickness': gasket === undefined ? undefined : 1e-3 + gasket,
      'gasket-thickness-before': gasket === undefined ? undefined : 1e-3,
      'intake-face-angle': input(row, 'faceAngle'),
      'intake-gasket-change': input(row, 'intakeGasketChange'),
    });
    const found = intakeFacesOf(makeup);
    const left = { bank: 'left' };
    return {
      moved: valueIn(found, 'head-moved', left),
      faceCut: valueIn(found, 'intake-face-cut', left),
      drop: valueIn(found, 'manifold-drop', left),
    };
  },
};
/** Figures of these rows that the combination does not answer, with the reason. */
const NOT_ANSWERED: Readonly<Record<string, string>> = {
  perfect: 'an intermediate of the downfill',
};
/** Mechanism rows that are no question about parts that are put together. */
const ELSEWHERE: Readonly<Record<string, string>> = {
  'cylinder.size-from-displacement': 'sizes of an engine still to be designed',
  'cylinder.volume-at-angle': 'volume along the stroke; nothing is decided by it here',
  'cylinder.angle-mill': 'an angled face has no single cut, and the sheet holds one head thickness',
};

const mechanism = rows.filter((row) => row.case.startsWith('MO-'));

describe('reference rows on compression', () => {
  it.each(mechanism.filter((row) => WAYS[row.calculation]).map((row) => [row.case, row] as const))('%s', (_, row) => {
    const found = WAYS[row.calculation]!(row);
    const asked = Object.keys(row.expected ?? {}).filter((name) => NOT_ANSWERED[name] === undefined);
    expect(asked.length).toBeGreaterThan(0);
    for (const name of asked) check(row, name, found[name]);
  });

  it('leaves out only rows that are no question of the combination', () => {
    const left = mechanism.filter((row) => WAYS[row.calculation] === undefined).map((row) => row.calculation);
    expect([...new Set(left)].sort()).toEqual(Object.keys(ELSEWHERE).sort());
  });
});

it('a rod shorter than the throw leaves the effective ratio out and keeps the rest', () => {
  const inch = 0.0254;
  const found = compressionOf(
    makeupWith(four, {
      ...NOTHING_ELSE,
      bore: 4 * inch,
      stroke: 3.48 * inch,
      'rod-length': 1.7 * inch,
      'gasket-bore': 4 * inch,
      'chamber-volume': 64e-6,
      'intake-closes': 1,
    }),
  );
  expect(answerIn(found, 'effective-ratio')).toBeUndefined();
  expect(answerIn(found, 'ratio', ONE)?.value).toBeGreaterThan(9);
});
