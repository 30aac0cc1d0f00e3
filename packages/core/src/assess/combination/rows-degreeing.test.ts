/** Reference rows of degree wheel and correction, asked of the functions that the screens use. */
import { describe, expect, it } from 'vitest';
import cam from '../../../../../cases/cam.json' with { type: 'json' };
import camMotion from '../../../../../cases/cam-motion.json' with { type: 'json' };
import crank from '../../../../../cases/crank.json' with { type: 'json' };
import type { ValveId } from '../../engine/index.js';
import { camCorrection } from './cam-correction.js';
import { degreeing } from './degreeing.js';
import type { CamReading } from './degreeing-model.js';
import { bareEngine, check, input, inputs, makeupWith, type Row, rowsOf, valueIn } from './rows.suite.js';
import { trueDeadCentre } from './true-dead-centre.js';

const of = (file: { readonly cases: unknown }, calculation: string) =>
  rowsOf(file)
    .filter((row) => row.calculation === calculation && row.refused === undefined)
    .map((row) => [row.case, row] as const);
const bare = makeupWith(bareEngine(), {});
const valve = (kind: ValveId['kind']): ValveId => ({ cylinder: 1, kind, index: 1 });
const read = (wheel: number, lift: number, kind: ValveId['kind'] = 'intake'): CamReading => ({
  lobe: valve(kind),
  wheel,
  lift,
  at: 'lifter',
});
/** Pairs of equal lifts, each higher than the last, under a nose between them. */
const pairs = (opening: readonly number[], closing: readonly number[]): readonly CamReading[] => [
  ...opening.flatMap((one, at) => [read(one, 0.002 + 0.001 * at), read(closing[at]!, 0.002 + 0.001 * at)]),
  read((opening.at(-1)! + closing.at(-1)!) / 2, 0.009),
];
const stopOf = (row: Row) => {
  const [first, second] = [input(row, 'stopBefore'), input(row, 'stopAfter')];
  return first === undefined || second === undefined ? [] : [{ cylinder: 1, first, second }];
};

describe('dead centre by a stop', () => {
  it.each(of(crank, 'crank.stop-method'))('%s', (_, row) => {
    const [first, second] = Object.keys(row.inputs).map((name) => input(row, name)!);
    const found = trueDeadCentre([{ cylinder: 1, first: first!, second: second! }])!;
    const names: Readonly<Record<string, number>> = {
      trueTop: found.top,
      correction: found.correction,
      eachSide: found.eachSide[0]!,
    };
    for (const name of Object.keys(row.expected!)) check(row, name, names[name]);
  });
});

describe('centreline from pairs of equal lifts', () => {
  it.each([...of(camMotion, 'cam.centreline-from-pairs'), ...of(cam, 'cam.centreline')])('%s', (_, row) => {
    const [opening, closing] = [inputs(row, 'opening'), inputs(row, 'closing')];
    const answer = degreeing(bare, pairs(opening, closing), stopOf(row));
    const [lobe] = answer.lobes;
    if (lobe!.stage === 'equal-lifts') check(row, 'centreline', valueIn(answer, 'centreline'));
    else {
      // The whole lobe outranks the pairs; their mean is that of the row all the same.
      check(row, 'centreline', lobe!.pairs.reduce((sum, { middle }) => sum + middle, 0) / lobe!.pairs.length);
    }
    if (row.expected!.wheelTop !== undefined) check(row, 'wheelTop', answer.deadCentre!.top);
    if (row.expected!.spread !== undefined) {
      const middles = lobe!.pairs.map(({ middle }) => middle);
      check(row, 'spread', Math.max(...middles) - Math.min(...middles));
    }
  });
});

describe('lobes read as a table (MO-22)', () => {
  it.each(of(camMotion, 'cam.events-from-table'))('%s: its middle', (_, row) => {
    const kind = row.inputs.valve as ValveId['kind'];
    const lifts = inputs(row, 'lifts');
    const readings = inputs(row, 'angles').map((angle, at) => read(angle, lifts[at]!, kind));
    const centreline = valueIn(degreeing(bare, readings), 'centreline')!;
    expect(centreline * (180 / Math.PI)).toBeCloseTo(Number.parseFloat((row.expected!.centrelines as string[])[0]!), 2);
  });
});

describe('correction', () => {
  it.each(of(camMotion, 'cam.offset-choice'))('%s', (_, row) => {
    const kind = (row.inputs.valve as ValveId['kind']) ?? 'intake';
    const sign = kind === 'intake' ? 1 : -1;
    const makeup = makeupWith(bareEngine(), { [`centreline-wanted@${kind}`]: input(row, 'wanted')! });
    const middle = sign * input(row, 'measured')!;
    const lobe = { lobe: valve(kind), middle: { value: middle, u: 0, uOfReadings: 0 } };
    const grown = degreeing(makeup, [read(middle, 0.008, kind)]).lobes[0]!;
    const parts = inputs(row, 'parts').map((angle, at) => ({
      id: String(at + 1),
      name: `part ${at + 1}`,
      angle,
      marked: 'crank' as const,
    }));
    const teeth = row.inputs.crankTeeth as number | undefined;
    const [best] = camCorrection(
      makeup,
      { ...grown, ...lobe },
      { parts, bothWays: false, ...(teeth && { crankTeeth: teeth }) },
    ).choices;
    check(row, 'left', best!.left);
    check(row, 'change', best!.change + best!.left);
    if (row.expected!.teeth !== undefined) expect(best!.teeth).toBe(row.expected!.teeth);
    if (row.expected!.part !== undefined) expect(best!.part!.id).toBe(String(row.expected!.part));
    if (row.expected!.centrelineAfter !== undefined) check(row, 'centrelineAfter', sign * best!.middle);
  });
});
