/** Reference rows of the room between valve and piston, asked of the functions that the screens use. */
import { describe, expect, it } from 'vitest';
import crank from '../../../../../cases/crank.json' with { type: 'json' };
import valveRoom from '../../../../../cases/valve-room.json' with { type: 'json' };
import { liftTable } from '../../calc/cam/index.js';
import type { Angle, Length } from '../../quantity/index.js';
import { Look } from './look.js';
import { bareEngine, check, input, inputs, makeupWith, type Row, rowsOf, si, valueIn } from './rows.suite.js';
import { valveRoomOf } from './valve-room.js';
import { roomAt, roomModel } from './valve-room-model.js';

const of = (calculation: string) =>
  rowsOf(valveRoom)
    .filter((row) => row.calculation === calculation && row.refused === undefined)
    .map((row) => [row.case, row] as const);
const INTAKE = { kind: 'intake' } as const;
const crownOf = (row: Row) => (row.inputs.crown === 'flat-crown' ? 1 : 0);
const SHORT = { 'lobe-lift': 0.008, 'lobe-duration': 1e-3, 'centreline-wanted': 0, 'rocker-ratio': 1, 'valve-lash': 0 };
const KINDS = { 'compression-height': 0.03 };

describe('room over measured lifts', () => {
  it.each(of('valvetrain.valve-to-piston'))('%s', (_, row) => {
    const table = liftTable(inputs(row, 'angles') as Angle[], inputs(row, 'lifts') as Length[]);
    if (!table.ok) throw new Error('no table');
    const makeup = makeupWith(bareEngine(), {
      stroke: input(row, 'stroke')!,
      'rod-length': input(row, 'rodLength')!,
      'valve-angle': input(row, 'valveAngle')!,
      'valve-drop': input(row, 'gapAtTop')!,
      crown: crownOf(row),
    });
    const read = { intake: { table: table.value, at: 'valve', u: 0, uLift: 0 } } as const;
    const model = roomModel(new Look(makeup, 'intake'), 'intake', { read })!;
    const gaps = inputs(row, 'angles').map((angle) => roomAt(model, angle));
    const tolerance = si('length', row.tolerance!.gaps!);
    const printed = (row.expected!.gaps as string[]).map((text) => si('length', text));
    expect(gaps.length).toBe(printed.length);
    for (const [at, gap] of gaps.entries()) expect(Math.abs(gap - printed[at]!)).toBeLessThanOrEqual(tolerance);
    if (row.expected!.tableMinimum === undefined) return;
    check(row, 'tableMinimum', Math.min(...gaps));
    const answer = valveRoomOf(makeup, { read });
    expect(valueIn(answer, 'valve-room', INTAKE)).toBeLessThanOrEqual(Math.min(...gaps) + 1e-12);
    expect(answer.rooms[0]!.limit!.at).toBeCloseTo(si('length', '0.080 in'), 9);
    expect(answer.figures.find(({ key }) => key === 'valve-room')!.verdict).toBe('in');
  });
});

describe('room over the lift of a card', () => {
  it.each(of('valvetrain.valve-to-piston-from-card'))('%s', (_, row) => {
    const makeup = makeupWith(bareEngine(), {
      stroke: input(row, 'stroke')!,
      'rod-length': input(row, 'rodLength')!,
      'valve-angle': input(row, 'valveAngle')!,
      'valve-drop': input(row, 'gapAtTop')!,
      crown: 0,
      'lobe-lift': input(row, 'peakLift')!,
      'lobe-duration': inputs(row, 'durations')[0]!,
      'centreline-wanted': input(row, 'centreline')!,
      'rocker-ratio': input(row, 'ratio')!,
      'valve-lash': 0,
    });
    check(row, 'minimum', valueIn(valveRoomOf(makeup), 'valve-room', { kind: row.inputs.valve as 'exhaust' }));
  });
});

describe('room with the final gasket, cuts and lash', () => {
  it.each(of('valvetrain.gap-correction'))('%s', (_, row) => {
    const given = (name: string) => input(row, name) ?? 0;
    const corrected = (more: Readonly<Record<string, number>>) => {
      const makeup = makeupWith(bareEngine(), {
        ...SHORT,
        stroke: 0.088,
        'rod-length': 0.145,
        'valve-angle': input(row, 'valveAngle')!,
        crown: crownOf(row),
        'valve-drop': input(row, 'measured')!,
        ...more,
      });
      return valueIn(valveRoomOf(makeup), 'valve-room', { kind: 'exhaust' })!;
    };
    // A lobe that is open for no time leaves the room at the top; lash and a deeper pocket come on top of it (both change the room one to one,
    // over a flat crown the pocket by c) and have no figure of their own for a room that was taken as a whole.
    const perTravel = crownOf(row) === 1 ? 1 / Math.cos(input(row, 'valveAngle')!) : 1;
    const rest = given('lashMore') + perTravel * given('pocketCut');
    const found = corrected({
      'valve-drop-gasket': given('gasketUsed'),
      'gasket-thickness': given('gasketFinal'),
      'deck-cut': given('faceCut'),
      'valve-sunk': given('valveSunk'),
      'centreline-wanted': Math.PI,
    });
    check(row, 'corrected', found + rest);
  });
});

describe('hot and at speed', () => {
  it.each(of('valvetrain.hot-margin'))('%s', (_, row) => {
    const makeup = makeupWith(bareEngine(), {
      ...SHORT,
      ...KINDS,
      'centreline-wanted': Math.PI,
      stroke: input(row, 'stroke')!,
      'rod-length': input(row, 'rodLength')!,
      'compression-height': input(row, 'compressionHeight')!,
      'highest-speed': input(row, 'crankSpeed')!,
      'piston-mass': input(row, 'pulledMass')!,
      'pin-mass': 0,
      'ring-mass': 0,
      'rod-small-end-mass': 0,
      'rod-section': input(row, 'rodSection')!,
      'rod-warmer': 0,
      'piston-warmer': 0,
      'block-warmer': 0,
      'valve-angle': 0,
      crown: 0,
      'valve-drop': input(row, 'valveRoom')!,
      'gasket-thickness': input(row, 'deckRoom')!,
      'deck-clearance': 0,
    });
    const answer = valveRoomOf(makeup);
    check(row, 'nearer', valueIn(answer, 'piston-nearer'));
    check(row, 'deckRoomHot', valueIn(answer, 'quench-hot'));
    check(row, 'valveRoomHot', valueIn(answer, 'valve-room-hot', INTAKE));
  });
});

describe('piston under a closed valve (MO-08)', () => {
  it.each(
    rowsOf(crank)
      .filter((row) => row.case.startsWith('MO-08'))
      .map((row) => [row.case, row] as const),
  )('%s', (_, row) => {
    const stroke = input(row, 'stroke') ?? 2 * input(row, 'crankRadius')!;
    const makeup = makeupWith(bareEngine(), {
      ...SHORT,
      'centreline-wanted': Math.PI,
      stroke,
      'rod-length': input(row, 'rodLength')!,
      'valve-angle': 0,
      crown: 0,
      'valve-drop': 0.001,
    });
    const model = roomModel(new Look(makeup, 'intake'), 'intake', {})!;
    const angle = input(row, 'crankAngle') ?? inputs(row, 'angles')[0]!;
    check(row, 'drop', roomAt(model, angle) - 0.001);
  });
});
