/** Reference rows of rockers, pushrods and preload, asked of the functions that the screens use. */
import { describe, expect, it } from 'vitest';
import valveRoom from '../../../../../cases/valve-room.json' with { type: 'json' };
import valvetrain from '../../../../../cases/valvetrain.json' with { type: 'json' };
import { preloadOf } from './preload.js';
import { pushrodOf } from './pushrod.js';
import { rockersOf } from './rockers.js';
import { bareEngine, check, input, inputs, makeupWith, type Row, rowsOf, si, valueIn } from './rows.suite.js';

const of = (file: { readonly cases: unknown }, calculation: string) =>
  rowsOf(file)
    .filter((row) => row.calculation === calculation && row.refused === undefined)
    .map((row) => [row.case, row] as const);
const INTAKE = { kind: 'intake' } as const;
const gear = (adjustment: 'hydraulic' | 'mechanical', adjuster: string) =>
  bareEngine(
    4,
    `valveGear:
  kind: pushrod
  follower: flat
  adjustment: ${adjustment}
  valvesPerCylinder: { intake: 1, exhaust: 1 }
  adjuster: ${adjuster}
`,
  );

describe('rockers', () => {
  it.each(of(valveRoom, 'valvetrain.rocker-motion'))('%s', (_, row) => {
    const lifts = inputs(row, 'lobeLifts');
    const answer = rockersOf(
      makeupWith(bareEngine(), {
        'lobe-lift': Math.max(...lifts),
        'valve-arm': input(row, 'valveArm')!,
        'valve-arm-above': input(row, 'valveArmAbove')!,
        'pushrod-arm': input(row, 'pushrodArm')!,
        'pushrod-arm-below': input(row, 'pushrodArmBelow')!,
      }),
    );
    check(row, 'sweep', valueIn(answer, 'contact-sweep', INTAKE));
    if (row.expected!.swing !== undefined) check(row, 'swing', valueIn(answer, 'rocker-swing', INTAKE));
    if (row.expected!.halfLiftError !== undefined)
      check(row, 'halfLiftError', valueIn(answer, 'half-lift-error', INTAKE));
    const last = (row.expected!.valveLifts as string[]).at(-1)!;
    expect(answer.paths[0]!.valveLifts.at(-1)!).toBeCloseTo(si('length', last), 6);
  });

  it.each(of(valvetrain, 'valvetrain.rocker-sweep'))('%s', (_, row) => {
    const figures = {
      'lobe-lift': input(row, 'lift')!,
      'rocker-ratio': 1,
      'valve-lash': 0,
      'valve-arm': input(row, 'arm')!,
    };
    const answer = rockersOf(makeupWith(bareEngine(), figures));
    const closed = row.inputs.squareAt === 'closed';
    check(row, 'sweep', valueIn(answer, closed ? 'sweep-closed' : 'sweep-half-lift', INTAKE));
    if (!closed) check(row, 'swing', valueIn(answer, 'rocker-swing', INTAKE));
  });

  it.each(of(valveRoom, 'valvetrain.pushrod-half-lift'))('%s', (_, row) => {
    // Like angles keep the ratio of the arms: the lobe lift is the lift times Rp/Rv.
    const lobe = (input(row, 'lift')! * input(row, 'pushrodArm')!) / input(row, 'valveArm')!;
    const answer = rockersOf(
      makeupWith(gear('mechanical', '{ place: stud-nut }'), {
        'lobe-lift': lobe,
        'valve-arm': input(row, 'valveArm')!,
        'valve-arm-above': input(row, 'valveArmAbove')!,
        'pushrod-arm': input(row, 'pushrodArm')!,
        'pushrod-arm-below': input(row, 'pushrodArmBelow')!,
      }),
    );
    check(row, 'longer', valueIn(answer, 'pushrod-longer', INTAKE));
    check(row, 'wantedAngle', input(row, 'valveArmAbove')! - valueIn(answer, 'half-lift-error', INTAKE)!);
  });
});

describe('pushrod length', () => {
  it.each(of(valveRoom, 'valvetrain.pushrod-length'))('%s', (_, row) => {
    const hydraulic = input(row, 'preload') !== undefined;
    const lower = -(input(row, 'headHigher') ?? 0);
    const makeup = makeupWith(gear(hydraulic ? 'hydraulic' : 'mechanical', '{ place: none }'), {
      'pushrod-zero-lash': input(row, 'zeroLash')!,
      'rocker-ratio': Number(row.inputs.ratio),
      'lifter-preload': input(row, 'preload'),
      'valve-lash': input(row, 'lash'),
      'deck-cut': lower,
      'base-circle-smaller': input(row, 'baseCircleSmaller') ?? 0,
    });
    const answer = pushrodOf(makeup, { offered: inputs(row, 'offered') });
    check(row, 'needed', valueIn(answer, 'pushrod-needed', INTAKE));
    check(row, 'chosen', valueIn(answer, 'pushrod-chosen', INTAKE));
    if (hydraulic) check(row, 'chosenPreload', valueIn(answer, 'pushrod-preload', INTAKE));
    else check(row, 'chosenLash', valueIn(answer, 'pushrod-lash', INTAKE));
  });
});

/** `1/24 in` as decimals that a sheet takes. */
const pitchOf = (row: Row) => `${(input(row, 'pitch')! * 1000).toFixed(7)} mm`;

describe('preload', () => {
  it.each(of(valvetrain, 'valvetrain.preload-from-turns'))('%s', (_, row) => {
    const engine = gear('hydraulic', `{ place: ${row.inputs.place}, pitch: ${pitchOf(row)} }`);
    const figures = { 'rocker-ratio': Number(row.inputs.ratio), 'preload-turns': input(row, 'turned')! };
    const travel = valueIn(preloadOf(makeupWith(engine, figures)), 'preload-travel', INTAKE);
    check(row, 'plungerTravel', travel);
    // And back: that preload takes those turns.
    const back = preloadOf(makeupWith(engine, { 'rocker-ratio': Number(row.inputs.ratio), 'lifter-preload': travel }));
    expect(valueIn(back, 'turns-needed', INTAKE)).toBeCloseTo(input(row, 'turned')!, 9);
  });

  it.each(of(valvetrain, 'valvetrain.collapsed-lifter'))('%s', (_, row) => {
    const figures = { 'rocker-ratio': Number(row.inputs.ratio), 'lifter-collapsed-gap': input(row, 'gap')! };
    check(
      row,
      'travel',
      valueIn(preloadOf(makeupWith(gear('hydraulic', '{ place: none }'), figures)), 'travel-left', INTAKE),
    );
  });

  it.each(of(valvetrain, 'valvetrain.pushrod-step'))('%s', (_, row) => {
    // A longer pushrod takes as much of the travel that is left: the gap bled down shrinks by its step.
    const gap = (preload: number) => {
      const figures = { 'rocker-ratio': Number(row.inputs.ratio), 'lifter-travel': 0.005, 'lifter-preload': preload };
      return valueIn(preloadOf(makeupWith(gear('hydraulic', '{ place: none }'), figures)), 'gap-left', INTAKE)!;
    };
    check(row, 'gapChange', gap(0.001) - gap(0.001 + input(row, 'longer')!));
  });
});
