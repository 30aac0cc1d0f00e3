import { describe, expect, it } from 'vitest';
import { BASE, engineOf, JOINT } from './try-sheets.suite.js';

describe('doubts that do not stop the work', () => {
  const codes = (text: string) => engineOf(text).cautions.map((each) => each.code);

  it.each([
    [
      'a hole that no stage tightens',
      JOINT.replace('{ torque: 20 N·m }', '{ holes: 1-3, torque: 20 N·m }').replace(
        'holes: 1-4, angle',
        'holes: 1-3, angle',
      ),
      'never-tightened',
    ],
    ['a recipe that ends by slackening', JOINT.replace('holes: 1-4, angle: 90 deg', 'loosen: fully'), 'left-loose'],
    [
      'a fastener for which there is no hole',
      JOINT.replace('thread: M10 }', 'thread: M10 }, { id: stud, name: stud, thread: M8 }'),
      'spare-fastener',
    ],
    [
      'a wet hole without sealer',
      JOINT.replace('fastener: bolt }', 'fastener: bolt, opensInto: water, onThread: oil }'),
      'water-hole',
    ],
    [
      'a piston far out of the block',
      `${BASE}crankTrain: { stroke: 80 mm, rodLength: 140 mm, compressionHeight: 30 mm, deckHeight: 200 mm }\n`,
      'deck-disagrees',
    ],
    ['events at a lift that is not given', `${BASE}cam: { basis: at-lift }\n`, 'checking-lift'],
    [
      'a duration that its events do not give',
      `${BASE}cam: { basis: seat, events: { io: 10 deg, ic: 50 deg, eo: 50 deg, ec: 10 deg }, advertisedDuration: { intake: 250 deg, exhaust: 240 deg } }\n`,
      'duration-disagrees',
    ],
    [
      'lash for hydraulic followers',
      `${BASE}valveGear: { kind: pushrod, follower: flat, adjustment: hydraulic, valvesPerCylinder: { intake: 1, exhaust: 1 }, lash: { intake: { hot: 0.2 mm }, exhaust: {} } }\n`,
      'lash-on-hydraulic',
    ],
    [
      'one size printed twice and not alike',
      `${BASE}limits: [{ part: pin, what: diameter, whenNew: 20.000 mm }, { part: pin, what: diameter, whenNew: 20.002 mm }]\n`,
      'stated-twice',
    ],
    [
      'a wear limit inside the new window',
      `${BASE}limits: [{ part: pin, what: diameter, whenNew: 19.990..20.000 mm, wear: ">= 19.995 mm" }]\n`,
      'worn-when-new',
    ],
  ])('%s', (_, text, code) => {
    expect(codes(text)).toEqual([code]);
  });

  it('a limit and its figure in another unit agree, although only the first says which way it limits', () => {
    const limit = (text: string) => `${BASE}limits: [{ part: engine, what: difference, whenNew: ${text} }]\n`;
    expect(codes(limit('<= 1.0 kgf/cm2 (14 psi)'))).toEqual([]);
    expect(codes(limit('<= 1.0 kgf/cm2 (41 psi)'))).toEqual(['units-disagree']);
    expect(codes(limit('0.5..1.0 kgf/cm2 (14 psi)'))).toEqual(['units-disagree']);
  });

  it('a printed torque rounded to tens is the same torque (330 N·m and 240 lb-ft of the balancer bolt)', () => {
    expect(codes(JOINT.replace('20 N·m', '330 N·m (240 lb-ft)'))).toEqual([]);
    expect(codes(JOINT.replace('20 N·m', '330 N·m (204 lb-ft)'))).toEqual(['units-disagree']);
  });
});

describe('a bolt and the depth of its hole (a bolt that bottoms reads torque without clamping, fasteners-open.md O-32)', () => {
  const sheet = (hole: string, joint = '') =>
    JOINT.replace('thread: M10 }', 'thread: M10x1.5, length: 100 mm }')
      .replace('fastener: bolt }]', `fastener: bolt, ${hole} }]`)
      .replace('    order: 1-4', `${joint}    order: 1-4`);
  const cautions = (hole: string, joint = '') => engineOf(sheet(hole, joint)).cautions;
  const codes = (hole: string, joint = '') => cautions(hole, joint).map((each) => each.code);

  it.each([
    // 100 mm less 70 mm leaves 30 mm.
    ['opensInto: blind, depth: 30 mm, clamped: 70 mm', []],
    ['opensInto: blind, depth: 29.9 mm, clamped: 70 mm', ['bottoms']],
    ['depth: 29.9 mm, clamped: 70 mm', ['bottoms']],
    ['opensInto: water, onThread: sealer, depth: 29.9 mm, clamped: 70 mm', []],
    // The gasket is 0.3 mm thinner at its least: then it bottoms.
    ['opensInto: blind, depth: 30.1 mm, clamped: 69.8..70.1 mm', ['bottoms']],
    // 10 mm are one diameter of an M10 thread.
    ['clamped: 90 mm', []],
    ['clamped: 90.1 mm', ['little-thread']],
    ['opensInto: air, depth: 9 mm, clamped: 70 mm', ['little-thread']],
    ['opensInto: blind, depth: 30 mm', []],
  ])('%s', (hole, expected) => {
    expect(codes(hole)).toEqual(expected);
  });

  it('names the holes, the reach and the depth in one line', () => {
    expect(cautions('opensInto: blind, depth: 25 mm, clamped: 70 mm')[0]?.message).toBe(
      'joints[0].holes: holes 1, 2, 3, 4: the head bolt reaches 30.0 mm past what it clamps, the hole is 25 mm deep; it would bottom before it clamps',
    );
  });

  it('the thickness stated once for the joint holds for every hole that does not say its own', () => {
    expect(codes('opensInto: blind, depth: 29 mm', '    clamped: 70 mm\n')).toEqual(['bottoms']);
    expect(codes('opensInto: blind, depth: 29 mm, clamped: 72 mm', '    clamped: 70 mm\n')).toEqual([]);
  });
});
