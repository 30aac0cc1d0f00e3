/** Reference rows on bobweight and shaking through the functions of the combination. */
import { describe, expect, it } from 'vitest';
import file from '../../../../../cases/balance.json' with { type: 'json' };
import type { Bank, Cylinder, Engine, Layout } from '../../engine/index.js';
import { degrees } from '../../quantity/index.js';
import { balanceOf } from './balance.js';
import { bareEngine, bareVee, check, input, inputs, makeupWith, type Row, rowsOf, valueIn } from './rows.suite.js';
import { shakingTurn } from './shaking.js';

const rows = rowsOf(file);
const like = (list: readonly number[], at: number): number => (list.length === 1 ? list[0] : list[at]) ?? 0;

/** Engine whose throws and banks are those of the row; cylinders count along each bank as their positions rise. */
function engineOfRow(row: Row): Engine {
  const [throws, angles] = [inputs(row, 'throwAngles'), inputs(row, 'bankAngles')];
  const banks: readonly Bank[] = [...new Set(throws.map((_, at) => like(angles, at)))].map((angle) => ({
    id: `bank-${angle}`,
    angle: angle as Bank['angle'],
  }));
  const cylinders = throws.map(
    (throwAngle, at): Cylinder => ({
      number: at + 1,
      bank: `bank-${like(angles, at)}`,
      place: at + 1,
      throwAngle: throwAngle as NonNullable<Cylinder['throwAngle']>,
    }),
  );
  const form: Layout['form'] =
    banks.length === 1 ? 'inline' : Math.abs(banks[0]!.angle) > degrees(80) ? 'opposed' : 'vee';
  return { ...bareEngine(4), layout: { form, banks, cylinders, rotation: 'clockwise', firingOrder: [] } };
}

function shaken(row: Row) {
  const spots = inputs(row, 'positions');
  const banks = new Set(inputs(row, 'bankAngles')).size;
  return makeupWith(engineOfRow(row), {
    'piston-mass': inputs(row, 'reciprocating')[0],
    'pin-mass': 0,
    'ring-mass': 0,
    'rod-small-end-mass': 0,
    stroke: input(row, 'stroke'),
    'rod-length': input(row, 'rodLength'),
    'highest-speed': input(row, 'crankSpeed'),
    'balance-factor': input(row, 'balanceFactor') ?? 0,
    'cylinder-pitch': banks > 1 && spots.length > 2 ? spots[2]! - spots[0]! : (spots[1] ?? 0) - (spots[0] ?? 0),
    'bank-offset': banks > 1 && spots.length === 2 ? spots[1]! - spots[0]! : 0,
  });
}

const KEYS: Readonly<Record<string, string>> = {
  primaryForce: 'primary-force',
  secondaryForce: 'secondary-force',
  primaryCouple: 'primary-couple',
  secondaryCouple: 'secondary-couple',
  exactForce: 'whole-force',
};
/** Least and place of an ellipse stand in the working and in the curves, not among the answers. */
const IN_CURVES = [
  'cylinderForce',
  'primaryForceLeast',
  'primaryForceAt',
  'primaryForceDirection',
  'secondaryForceLeast',
  'secondaryForceDirection',
  'primaryCoupleLeast',
];

describe('reference rows on balance', () => {
  const asked = rows.filter((row) => row.calculation === 'balance.shaking-forces' && row.refused === undefined);
  it.each(asked.map((row) => [row.case, row] as const))('%s', (_, row) => {
    const found = balanceOf(shaken(row));
    const names = Object.keys(row.expected ?? {}).filter((name) => !IN_CURVES.includes(name));
    expect(names.length).toBeGreaterThan(0);
    for (const name of names) check(row, name, valueIn(found, KEYS[name] ?? name));
  });

  it('MO-38: the bobweight of a vee of eight, and the share of each part', () => {
    const row = rows.find(({ case: name }) => name === 'MO-38 V8 bobweight')!;
    const found = balanceOf(
      makeupWith(bareVee(), {
        'rod-big-end-mass': input(row, 'bigEnd'),
        'rod-shell-mass': input(row, 'bearing'),
        'oil-mass': input(row, 'oil'),
        'piston-mass': input(row, 'piston'),
        'pin-mass': input(row, 'pin'),
        'lock-mass': input(row, 'locks'),
        'ring-mass': input(row, 'rings'),
        'rod-small-end-mass': input(row, 'smallEnd'),
      }),
    );
    for (const pin of [1, 2, 3, 4]) check(row, 'bobweight', valueIn(found, `bobweight-${pin}`));
    for (const { parts, bobweight } of found.pins)
      expect(parts.reduce((sum, { mass }) => sum + mass, 0)).toBeCloseTo(bobweight, 9);
    expect(found.assumed.join()).toContain('balance factor 0.50');
  });

  it('MO-39: the inline four by the exact slider-crank at top and a quarter turn on', () => {
    const row = rows.find(({ calculation }) => calculation === 'balance.shaking-at')!;
    const whole = shakingTurn(shaken(row))!.vectors.find(({ key }) => key === 'whole-force')!;
    expect(whole.up[0]).toBeCloseTo(12_777, -1);
    expect(whole.up[30]).toBeCloseTo(-13_394, -1);
    expect(Math.max(...whole.across.map(Math.abs))).toBeLessThan(1e-6);
  });

  it('a rod shorter than the throw leaves the shaking out', () => {
    const row = rows.find(({ refused }) => refused === 'the crank could not turn')!;
    expect(valueIn(balanceOf(shaken(row)), 'primary-force')).toBeUndefined();
  });

  it('leaves out rows of rotors, balance shafts and rods on a scale: questions of the balancing machine', () => {
    const done = ['balance.shaking-forces', 'balance.shaking-at', 'balance.bobweight', 'balance.bobweight-unequal'];
    const left = new Set(rows.map(({ calculation }) => calculation).filter((id) => !done.includes(id)));
    for (const id of left)
      expect(id).toMatch(
        /^balance\.(balance-shafts|two-plane|single-plane|allowed-unbalance|rod-ends-by-\w+|weight-match)$/,
      );
  });
});
