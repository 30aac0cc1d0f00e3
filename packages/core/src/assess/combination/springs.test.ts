import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type LiftTable, lobeAt } from '../../calc/cam/index.js';
import { engineOf, read } from '../../engine/load/try-sheets.suite.js';
import { type Angle, type Length, rpm } from '../../quantity/index.js';
import { balanceOf } from './balance.js';
import { makeupOf } from './makeup.js';
import { answerIn, valueIn } from './rows.suite.js';
import { springsOf } from './springs.js';

const vee = engineOf(read('sheets/quernside-51-v8.yaml'));
const INTAKE = { kind: 'intake' } as const;
const tried = (figures: Readonly<Record<string, number>>) =>
  springsOf(makeupOf(vee, undefined, [], new Map(Object.entries(figures))));

describe('a valve spring', () => {
  it('with a shim pushes harder by rate times shim and has as much less room', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-4, max: 2e-3, noNaN: true }), (shim) => {
        const [plain, shimmed] = [tried({}), tried({ 'spring-shim': shim })];
        const change = (key: string) => valueIn(shimmed, key, INTAKE)! - valueIn(plain, key, INTAKE)!;
        expect(change('seat-load')).toBeCloseTo(valueIn(plain, 'rate', INTAKE)! * shim, 6);
        expect(change('bind-margin')).toBeCloseTo(-shim, 9);
        expect(change('retainer-margin')).toBeCloseTo(0, 12);
      }),
      { numRuns: 10 },
    );
  });

  it('holds to a speed that does not depend on the highest speed wanted, with a margin that falls with its square', () => {
    const [slow, fast] = [tried({ 'highest-speed': rpm(4000) }), tried({ 'highest-speed': rpm(5000) })];
    expect(valueIn(slow, 'separation-speed', INTAKE)).toBeCloseTo(valueIn(fast, 'separation-speed', INTAKE)!, 6);
    const share = valueIn(slow, 'follow-margin', INTAKE)! / valueIn(fast, 'follow-margin', INTAKE)!;
    expect(share).toBeCloseTo((5 / 4) ** 2, 9);
    expect(answerIn(fast, 'separation-speed', INTAKE)?.verdict).toBe('out');
  });

  it('on a lobe measured every two degrees parts where the modelled one does', () => {
    const lobe = {
      peakLift: 7.35e-3 as Length,
      halfDuration: ((128 * Math.PI) / 180) as Angle,
      exponents: [6, 8, 10] as const,
    };
    const angles = Array.from({ length: 129 }, (_, at) => ((2 * at - 128) * Math.PI) / 180);
    const table: LiftTable = {
      angles: angles.map((angle) => (angle + 2) as Angle),
      lifts: angles.map((angle) => lobeAt(lobe, angle).lift as Length),
    };
    const makeup = makeupOf(vee);
    const [modelled, measured] = [springsOf(makeup), springsOf(makeup, { intake: table })];
    const speed = valueIn(modelled, 'separation-speed', INTAKE)!;
    expect(valueIn(measured, 'separation-speed', INTAKE)! / speed).toBeCloseTo(1, 2);
    expect(modelled.cautions.join('\n')).toContain('modelled from the card');
    expect(answerIn(measured, 'lift', INTAKE)?.value).toBeCloseTo(valueIn(modelled, 'lift', INTAKE)!, 9);
  });

  it('without masses is answered for its loads and rooms, and what lacks is named', () => {
    const bare = springsOf(makeupOf(engineOf(read('sheets/transcribed/sm-ohv-v8-99x92.yaml'))));
    expect(answerIn(bare, 'separation-speed', INTAKE)).toBeUndefined();
    expect(bare.missing.map(({ key }) => key)).toEqual(expect.arrayContaining(['valve-mass', 'highest-speed']));
  });
});

describe('an opposed engine', () => {
  const boxer = engineOf(`gudgeon: 1
name: Flat twin
layout:
  form: opposed
  banks: { left: 90 deg, right: -90 deg }
  cylinders: { left: [1], right: [2] }
  crankpins: [{ cylinders: [1], at: 0 deg }, { cylinders: [2], at: 180 deg }]
  firingOrder: 1-2
`);
  const masses = {
    stroke: 0.087,
    'rod-length': 0.145,
    'highest-speed': rpm(6000),
    'piston-mass': 0.62,
    'pin-mass': 0,
    'ring-mass': 0,
    'rod-small-end-mass': 0,
    'cylinder-pitch': 0.1,
  };
  const with_ = (more: Readonly<Record<string, number>>) =>
    balanceOf(makeupOf(boxer, undefined, [], new Map(Object.entries({ ...masses, ...more }))));

  it('has no couple told before the offset of its banks is known', () => {
    const found = with_({});
    expect(valueIn(found, 'primary-force')).toBeCloseTo(0, 6);
    expect(answerIn(found, 'primary-couple')).toBeUndefined();
    expect(found.missing.map(({ key }) => key)).toContain('bank-offset');
  });
  it('has one of force times offset once it is', () => {
    // 10 647 N (row MO-39) at 50 mm: 532.4 N·m.
    expect(valueIn(with_({ 'bank-offset': 0.05 }), 'primary-couple')).toBeCloseTo(532.4, 1);
  });
});
