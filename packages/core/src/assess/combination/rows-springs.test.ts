/** Reference rows on valve springs and what they must hold through the functions of the combination. */
import { describe, expect, it } from 'vitest';
import file from '../../../../../cases/valve-springs.json' with { type: 'json' };
import type { Engine } from '../../engine/index.js';
import { bareEngine, check, input, inputs, makeupWith, type Row, rowsOf, valueIn } from './rows.suite.js';
import { springsOf } from './springs.js';

const rows = rowsOf(file);
const gear = (kind: string): Engine =>
  bareEngine(
    4,
    `valveGear:
  kind: ${kind}
  follower: flat
  adjustment: mechanical
  valvesPerCylinder: { intake: 1, exhaust: 1 }
`,
  );
const pushrod = gear('pushrod');
const INTAKE = { kind: 'intake' } as const;
const DEAD: Readonly<Record<string, number>> = { plain: 0, 'plain-ground': 1, squared: 2, 'squared-ground': 2 };

function wireOf(row: Row) {
  const wire = input(row, 'wire')!;
  const outside = input(row, 'outsideDiameter');
  const inside = input(row, 'insideDiameter');
  const mean = input(row, 'meanDiameter') ?? (outside === undefined ? inside! + wire : outside - wire);
  const total = row.inputs.totalCoils;
  return {
    'spring-wire': wire,
    'spring-mean-diameter': mean,
    'spring-active-coils':
      row.inputs.activeCoils === undefined
        ? Number(total) - DEAD[String(row.inputs.ends)]!
        : Number(row.inputs.activeCoils),
    'spring-modulus': input(row, 'shearModulus'),
    'spring-density': input(row, 'density'),
    'highest-speed': input(row, 'crankSpeed'),
  };
}
const fromWire = (row: Row) => springsOf(makeupWith(pushrod, wireOf(row)));
const DIRECT = { 'rocker-ratio': 1, 'valve-lash': 0 };

const WAYS: Readonly<Record<string, (row: Row) => Readonly<Record<string, number | undefined>>>> = {
  'valvetrain.spring-rate': (row) => {
    const found = fromWire(row);
    return { rate: valueIn(found, 'rate', INTAKE), surge: valueIn(found, 'surge', INTAKE) };
  },
  'valvetrain.spring-surge': (row) => {
    const found = fromWire(row);
    return {
      bothHeld: valueIn(found, 'surge', INTAKE),
      rate: valueIn(found, 'rate', INTAKE),
      camMultiple: valueIn(found, 'surge-multiple', INTAKE),
    };
  },
  'valvetrain.spring-loads': (row) => {
    const seat = input(row, 'seatLoad')!;
    const found = springsOf(
      makeupWith(pushrod, {
        ...DIRECT,
        'spring-seat-load': seat,
        'spring-installed-height': input(row, 'installedHeight'),
        'spring-rate': input(row, 'rate'),
        'lobe-lift': input(row, 'lift'),
        'spring-shim': input(row, 'shim'),
        'spring-bind-height': input(row, 'solidHeight'),
        'retainer-room': input(row, 'retainerRoom'),
      }),
    );
    const [height, lift] = [valueIn(found, 'height', INTAKE), valueIn(found, 'lift', INTAKE)];
    const closed = valueIn(found, 'seat-load', INTAKE);
    return {
      openLoad: valueIn(found, 'open-load', INTAKE),
      openHeight: height === undefined || lift === undefined ? undefined : height - lift,
      shimGain: closed === undefined ? undefined : closed - seat,
      bindMargin: valueIn(found, 'bind-margin', INTAKE),
      retainerMargin: valueIn(found, 'retainer-margin', INTAKE),
    };
  },
  'valvetrain.spring-rate-from-loads': (row) => {
    const [heights, loads] = [inputs(row, 'heights'), inputs(row, 'loads')];
    const found = springsOf(
      makeupWith(pushrod, {
        'spring-load-closed': loads[0],
        'spring-load-closed-height': heights[0],
        'spring-load-open': loads[1],
        'spring-load-open-height': heights[1],
      }),
    );
    return { rate: valueIn(found, 'rate', INTAKE) };
  },
  'valvetrain.moving-mass': (row) => {
    const ratio = Number(row.inputs.ratio);
    const found = springsOf(
      makeupWith(pushrod, {
        'valve-mass': input(row, 'valve'),
        'retainer-mass': input(row, 'retainer'),
        'spring-mass': input(row, 'spring'),
        'rocker-mass': input(row, 'rocker'),
        'pushrod-mass': input(row, 'pushrod'),
        'lifter-mass': input(row, 'lifter'),
        'rocker-ratio': ratio,
      }),
    );
    const atValve = valueIn(found, 'moving-mass', INTAKE);
    return { atValve, atLobe: atValve === undefined ? undefined : atValve * ratio ** 2 };
  },
  'valvetrain.follow-force': (row) => {
    const speed = input(row, 'crankSpeed')!;
    const found = springsOf(
      makeupWith(gear('overhead-bucket'), {
        ...DIRECT,
        'lobe-lift': input(row, 'lift'),
        'lobe-duration': input(row, 'duration'),
        'lobe-fullness': row.inputs.p === undefined ? undefined : Number(row.inputs.p),
        'highest-speed': speed,
        'valve-mass': input(row, 'mass'),
        'retainer-mass': 0,
        'spring-mass': 0,
        'lifter-mass': 0,
        // A spring that pushes alike at every lift: its load at full lift is that of the row.
        'spring-seat-load': input(row, 'openLoad'),
        'spring-rate': input(row, 'openLoad') === undefined ? undefined : 0,
      }),
    );
    const margin = valueIn(found, 'follow-margin', INTAKE);
    return {
      noseAcceleration: valueIn(found, 'nose-acceleration', INTAKE),
      forceNeeded: valueIn(found, 'load-needed', INTAKE),
      marginShare: margin === undefined ? undefined : margin - 1,
      floatSpeed: valueIn(found, 'separation-speed', INTAKE),
    };
  },
};
/** Figures that the combination does not answer, with the reason. */
const NOT_ANSWERED: Readonly<Record<string, string>> = {
  solidHeight: 'the bind height is measured or printed, not reckoned from the wire',
  activeCoils: 'an input here',
  totalCoils: 'an input there',
  index: 'shape of the wire',
  stress: 'the spring maker’s affair: no limit of it is known to the person at the bench',
  oneFree: 'both ends of an installed spring are held',
  surgeOneFree: 'both ends of an installed spring are held',
  activeMass: 'an intermediate of the surge',
  camFrequency: 'half of the crank speed',
  thickestShim: 'the shims are chosen by the decision on spring shims',
};

const answeredRows = rows.filter((row) => WAYS[row.calculation] !== undefined && row.refused === undefined);

describe('reference rows on valve springs', () => {
  it.each(answeredRows.map((row) => [row.case, row] as const))('%s', (_, row) => {
    const found = WAYS[row.calculation]!(row);
    const asked = Object.keys(row.expected ?? {}).filter((name) => NOT_ANSWERED[name] === undefined);
    expect(asked.length).toBeGreaterThan(0);
    for (const name of asked) check(row, name, found[name]);
  });

  it('MO-31: two springs share the load by their rates', () => {
    const row = rows.find(({ case: name }) => name === 'MO-31 two springs in parallel under 2000 N')!;
    const [outer, inner] = inputs(row, 'rates');
    const found = springsOf(makeupWith(pushrod, { 'spring-rate': outer, 'inner-spring-rate': inner }));
    expect(2000 * valueIn(found, 'inner-share', INTAKE)!).toBeCloseTo(695.7, 1);
    expect(valueIn(found, 'rate', INTAKE)).toBeCloseTo(outer! + inner!, 6);
  });
});
