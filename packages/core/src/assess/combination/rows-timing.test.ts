/** Reference rows of the cam card asked of the timing diagram and the motion of the valve, the functions that the screens use. */
import { describe, expect, it } from 'vitest';
import cam from '../../../../../cases/cam.json' with { type: 'json' };
import camMotion from '../../../../../cases/cam-motion.json' with { type: 'json' };
import valvetrain from '../../../../../cases/valvetrain.json' with { type: 'json' };
import { fromUnit } from '../../quantity/index.js';
import { motionOf } from './lift-motion.js';
import { bareEngine, check, input, inputs, makeupWith, type Row, rowsOf, si, valueIn } from './rows.suite.js';
import { timingOf } from './timing.js';

const DEGREE = Math.PI / 180;
const of = (file: { readonly cases: unknown }, calculation: string) =>
  rowsOf(file).filter((row) => row.calculation === calculation && row.refused === undefined);
const named = (rows: readonly Row[]) => rows.map((row) => [row.case, row] as const);

const KEYS: Readonly<Record<string, string>> = {
  intakeOpens: 'intake-opens',
  intakeCloses: 'intake-closes',
  exhaustOpens: 'exhaust-opens',
  exhaustCloses: 'exhaust-closes',
  intakeDuration: 'intake-duration',
  exhaustDuration: 'exhaust-duration',
  intakeCentreline: 'intake-centreline',
  exhaustCentreline: 'exhaust-centreline',
  separation: 'separation',
  overlap: 'overlap',
};
function checkAll(row: Row, timing: ReturnType<typeof timingOf>) {
  const names = Object.keys(row.expected ?? {}).filter((name) => KEYS[name] !== undefined);
  expect(names.length).toBeGreaterThan(2);
  for (const name of names) check(row, name, valueIn(timing, KEYS[name]!));
}
/** An engine whose sheet prints these events, from seat to seat. */
function withEvents(row: Row) {
  const event = (name: string) => `${input(row, name)! / DEGREE} deg`;
  const events = `io: ${event('intakeOpens')} BTDC, ic: ${event('intakeCloses')} ABDC, eo: ${event('exhaustOpens')} BBDC, ec: ${event('exhaustCloses')} ATDC`;
  return bareEngine(4, `cam: { basis: seat, events: { ${events} } }\n`);
}

describe('cam cards', () => {
  it.each(named([...of(cam, 'cam.lobes-from-events'), ...of(cam, 'cam.advance')]))('%s', (_, row) => {
    const advance = input(row, 'advance') ?? 0;
    checkAll(row, timingOf(makeupWith(withEvents(row), { 'cam-advance': advance })));
  });

  it.each(named(of(cam, 'cam.events-from-lobes')))('%s', (_, row) => {
    const [intake, separation] = [input(row, 'intakeCentreline')!, input(row, 'separation')!];
    const figures = {
      'lobe-duration@intake': input(row, 'intakeDuration'),
      'lobe-duration@exhaust': input(row, 'exhaustDuration'),
      'centreline-wanted@intake': intake,
      'centreline-wanted@exhaust': 2 * separation - intake,
    };
    checkAll(row, timingOf(makeupWith(bareEngine(), figures)));
  });

  it.each(named(of(cam, 'cam.seat-windows')))('%s', (_, row) => {
    const [intake, exhaust] = timingOf(makeupWith(withEvents(row), {})).arcs;
    const radians = (degrees: number) => fromUnit('angle', degrees, 'deg');
    check(row, 'intakeCloses', radians(intake!.closes));
    check(row, 'exhaustOpens', radians(exhaust!.opens));
    check(row, 'intakeRest', radians(720 - (intake!.closes - intake!.opens)));
    check(row, 'exhaustRest', radians(720 - (exhaust!.closes - exhaust!.opens)));
  });
});

/** A lobe of its own nose: centreline 0 makes angles count from it. */
const lobe = (figures: Readonly<Record<string, number>>) =>
  makeupWith(bareEngine(), { 'rocker-ratio': 1, 'valve-lash': 0, 'centreline-wanted': 0, ...figures });

describe('lift of the valve', () => {
  it.each(named(of(camMotion, 'cam.polynomial-lobe')))('%s: lift, velocity and acceleration', (_, row) => {
    // Half duration of 60 degrees and a peak of 1 m: the nose, its half and its end lie on whole degrees.
    const half = si('angle', '60 deg');
    const [intake] = motionOf(lobe({ 'lobe-lift': 1, 'lobe-duration': 2 * half, 'lobe-fullness': 6 })).motions;
    const printed = (name: string) => (row.expected![name] as readonly string[]).map(Number);
    const [shares, velocities, bends] = [printed('share'), printed('velocityShare'), printed('bendShare')];
    for (const [at, degrees] of [0, 30, 60].entries()) {
      const place = 360 + degrees;
      expect(intake!.lifts[place]).toBeCloseTo(shares[at]!, 5);
      expect(intake!.slopes[place]! * half).toBeCloseTo(velocities[at]!, 5);
      expect(intake!.bends[place]! * half ** 2).toBeCloseTo(bends[at]!, 5);
    }
  });

  it.each(named(of(camMotion, 'cam.lift-from-card')))('%s', (_, row) => {
    const [atLift, seat] = inputs(row, 'durations');
    const [lift] = inputs(row, 'checkingLifts');
    const [intake] = motionOf(
      lobe({
        'lobe-lift': input(row, 'peakLift')!,
        'lobe-duration': seat!,
        'duration-at-lift': atLift!,
        'checking-lift': lift!,
      }),
    ).motions;
    const middle = 360;
    const printed = row.expected!.lift as readonly string[];
    for (const [at, degrees] of [-70, 0, 70].entries())
      expect(intake!.lifts[middle + degrees]! * 1000).toBeCloseTo(si('length', printed[at]!) * 1000, 3);
  });

  it.each(named(of(valvetrain, 'valvetrain.valve-lift')))('%s', (_, row) => {
    const figures = {
      'lobe-lift': input(row, 'lobeLift')!,
      'rocker-ratio': input(row, 'ratio')!,
      'lobe-duration': 4,
      'valve-lash': 0,
    };
    check(row, 'gross', valueIn(motionOf(lobe(figures)), 'valve-lift', { kind: 'intake' }));
    check(
      row,
      'net',
      valueIn(motionOf(lobe({ ...figures, 'valve-lash': input(row, 'lash')! })), 'valve-lift', { kind: 'intake' }),
    );
  });

  it('MO-34: the nose falls away at 4594 m/s² (12.7 mm, 290 degrees, 6500 rpm; computed from the model of MO-24, tol 5)', () => {
    const figures = { 'lobe-lift': si('length', '12.7 mm'), 'lobe-duration': si('angle', '290 deg') };
    const answer = motionOf(lobe(figures), { speed: si('angular-speed', '6500 rpm') });
    const nose = valueIn(answer, 'nose-acceleration', { kind: 'intake' })!;
    expect(Math.abs(nose + 4594)).toBeLessThan(5);
  });
});
