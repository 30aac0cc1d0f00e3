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

  it('a printed torque rounded to tens is the same torque (330 N·m and 240 lb-ft of the balancer bolt)', () => {
    expect(codes(JOINT.replace('20 N·m', '330 N·m (240 lb-ft)'))).toEqual([]);
    expect(codes(JOINT.replace('20 N·m', '330 N·m (204 lb-ft)'))).toEqual(['units-disagree']);
  });
});
