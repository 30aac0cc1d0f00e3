import { describe, expect, it } from 'vitest';
import { outputOf, runChanged } from '../../example.suite.js';

type Change = Readonly<Record<string, unknown>>;

describe('what a fastener entry refuses', () => {
  const bolt = 'fasteners.bolt-resilience';
  const member = 'fasteners.member-stiffness';
  const cone = 'fasteners.cone-compliance';
  it.each<[string, string, Change, RegExp]>([
    ['a segment without its section', 'fasteners.stretch', { areas: ['0.08 in2'] }, /each segment needs/],
    ['no sections', 'fasteners.stretch', { areas: undefined }, /one of areas and diameters/],
    ['two kinds of sections', 'fasteners.stretch', { diameters: ['0.3 in', '0.3 in'] }, /and not both/],
    ['a shank without diameter', bolt, { shankDiameters: undefined }, /each shank segment needs/],
    ['a shank without length', bolt, { shankLengths: undefined }, /each shank segment needs/],
    ['the root of a unified thread', bolt, { thread: '3/8-24', threadArea: 'root' }, /take the stress area/],
    ['a tapped part without modulus', bolt, { tappedModulus: undefined }, /has a tappedModulus/],
    ['a nut with the modulus of a tapped part', bolt, { into: 'nut' }, /has a tappedModulus/],
    [
      'a bolt of nothing',
      bolt,
      {
        shankLengths: undefined,
        shankDiameters: undefined,
        freeThread: undefined,
        head: 'none',
        into: 'none',
        tappedModulus: undefined,
      },
      /nothing of the bolt is left/,
    ],
    ['a sleeve without a wall', 'fasteners.sleeve-compliance', { hole: '22 mm' }, /hole must be below 22 mm/],
    ['a face inside the hole', member, { washerFace: '0.5 in' }, /washerFace must be above 0.5 in/],
    [
      'a layer without modulus',
      member,
      { thicknesses: ['1 in', '1 in', '1 in'], moduli: ['30000000 psi', '10000000 psi'] },
      /each layer needs/,
    ],
    ['a washer face inside its hole', cone, { bearingOutside: '11 mm' }, /bear on/],
    ['parts inside the hole', cone, { outside: '10 mm' }, /outside must be above 11 mm/],
    ['a grip far too short', cone, { joint: 'through', outside: '17 mm', grip: '0.0001 mm' }, /so short a grip/],
    [
      'snug above the preload',
      'fasteners.angle-from-preload',
      { snugPreload: '40 kN' },
      /preload must be at least 40 kN/,
    ],
    [
      'an adapter that reaches behind the hand',
      'fasteners.adapter-setting',
      { adapter: '20 in', angle: '180 deg' },
      /behind the hand/,
    ],
    [
      'an adapter that reaches behind the hand',
      'fasteners.adapter-torque',
      { adapter: '12 in', angle: '180 deg' },
      /behind the hand/,
    ],
    ['stages that fall', 'fasteners.stages', { shares: ['60 %', '30 %', '100 %'] }, /lower than the one before/],
    ['a wrench too coarse', 'fasteners.stages', { step: '50 lbf·ft' }, /step is larger than a stage/],
    ['a fastener without place', 'fasteners.centre-outward-order', { y: ['0 mm'] }, /each fastener needs/],
    ['a bolt that does not reach', 'fasteners.bolt-depth', { length: '2 in' }, /does not reach/],
    [
      'a tightened bolt that is shorter',
      'fasteners.preload-from-stretch',
      { loadedLength: '2.94 in' },
      /loadedLength must be at least 2.95 in/,
    ],
    ['a band reversed', 'fasteners.preload-from-stretch', { torqueLow: '9500 lbf' }, /low end is above/],
    ['a count without its limit', 'fasteners.permanent-set', { tightened: 2 }, /belong together/],
    ['a turn too far', 'fasteners.remaining-angle', { turned: ['100 deg', '100 deg'] }, /farther than all stages/],
    ['a rod without inside', 'valvetrain.pushrod-buckling', { wall: undefined }, /one of inside and wall/],
    ['a rod with both', 'valvetrain.pushrod-buckling', { inside: '0.15 in' }, /and not both/],
    [
      'a rod without wall',
      'valvetrain.pushrod-buckling',
      { wall: undefined, inside: '0.3125 in' },
      /inside must be below/,
    ],
    ['two walls too thick', 'valvetrain.pushrod-buckling', { wall: '0.2 in' }, /wall must be at most/],
  ])('%s (%s)', (_, id, change, words) => {
    expect(runChanged(id, change).refused).toMatch(words);
  });
});

describe('what a fastener entry answers', () => {
  it.each<[string, string, Change, string, string]>([
    [
      'diameters for sections',
      'fasteners.stretch',
      { areas: undefined, diameters: ['0.320 in', '0.33435 in'] },
      'stretch',
      '0.004520 in',
    ],
    [
      'a unified bolt by its stress area',
      'fasteners.bolt-resilience',
      {
        thread: '3/8-24',
        into: 'none',
        tappedModulus: undefined,
        head: 'none',
        shankLengths: ['1.10 in'],
        shankDiameters: ['0.320 in'],
        freeThread: '0.50 in',
        modulus: '30000000 psi',
        preload: '7000 lbf',
      },
      'stretch',
      '0.004520 in',
    ],
    [
      'a bolt of thread alone',
      'fasteners.bolt-resilience',
      { shankLengths: undefined, shankDiameters: undefined },
      'shankCompliance',
      '0.0000 µm/kN',
    ],
    [
      'a metric bolt by its stress area',
      'fasteners.bolt-resilience',
      { threadArea: 'stress' },
      'freeThreadCompliance',
      '2.1030 µm/kN',
    ],
    [
      'a nut',
      'fasteners.bolt-resilience',
      { into: 'nut', tappedModulus: undefined },
      'partnerCompliance',
      '0.2484 µm/kN',
    ],
    [
      'layers of their own',
      'fasteners.member-stiffness',
      { thicknesses: ['0.5 in', '0.595 in'], moduli: ['30000000 psi', '30000000 psi'] },
      'compliance',
      '0.06261 µin/lbf',
    ],
    ['a turn from snug', 'fasteners.angle-from-preload', { snugPreload: '10 kN' }, 'angle', '47.7 deg'],
    ['a preload from snug', 'fasteners.preload-from-angle', { snugPreload: '10 kN' }, 'preload', '47.772 kN'],
    ['a bolt hotter than its parts', 'fasteners.preload-temperature', { boltRise: '147 K' }, 'change', '0.001 kN'],
    ['a preload in the heat', 'fasteners.preload-temperature', { preload: '40 kN' }, 'preload', '46.227 kN'],
    ['what bedding in leaves', 'fasteners.embedding-loss', { preload: '30 kN' }, 'left', '29.194 kN'],
    ['a nut as well', 'fasteners.embedding-loss', { faces: 2, interfaces: 0, load: 'shear' }, 'amount', '12.0 µm'],
    ['a joint that rested', 'fasteners.retorque-dwell', { elapsed: '5 h' }, 'verdict', 'rested'],
    ['enough thread', 'fasteners.thread-engagement', { engaged: '20 mm' }, 'verdict', 'in'],
    ['too little thread', 'fasteners.thread-engagement', { engaged: '19.9 mm' }, 'verdict', 'below'],
    ['no thread measured', 'fasteners.thread-engagement', {}, 'verdict', 'no data'],
    ['a bolt too short', 'fasteners.bolt-depth', { length: '2.80 in' }, 'verdict', 'too short'],
    ['a bolt too long', 'fasteners.bolt-depth', { length: '3.20 in' }, 'verdict', 'bottoms'],
    [
      'a method without a preload',
      'fasteners.scatter-of-method',
      { method: 'power driver', most: undefined },
      'factorHigh',
      '2.509',
    ],
    [
      'a stretch without a torque',
      'fasteners.preload-from-stretch',
      { torqueLow: undefined, torqueHigh: undefined },
      'verdict',
      'no data',
    ],
    ['a bolt that kept its length', 'fasteners.permanent-set', { now: '2.9504 in' }, 'verdict', 'use again'],
    ['a bolt without limits', 'fasteners.permanent-set', { limit: undefined }, 'verdict', 'no data'],
    [
      'a bolt used up by count',
      'fasteners.permanent-set',
      { now: '2.95 in', tightened: 3, allowed: 3 },
      'verdict',
      'discard',
    ],
    [
      'a bolt with turns left',
      'fasteners.permanent-set',
      { limit: undefined, tightened: 2, allowed: 3 },
      'verdict',
      'use again',
    ],
    ['an angle not begun', 'fasteners.remaining-angle', { turned: undefined }, 'stageRemaining', '90.0 deg'],
    ['an angle all done', 'fasteners.remaining-angle', { turned: ['180 deg'] }, 'stage', '0'],
    ['an angle at the end of a stage', 'fasteners.remaining-angle', { turned: ['90 deg'] }, 'stage', '2'],
    ['a slender rod', 'valvetrain.pushrod-buckling', { length: '10 in' }, 'formula', 'Euler'],
    ['an end constant of one’s own', 'valvetrain.pushrod-buckling', { endConstant: 4 }, 'transition', '184.0'],
    ['a rod under load', 'valvetrain.pushrod-buckling', { load: '1072 lbf' }, 'margin', '2.00'],
  ])('%s (%s)', (_, id, change, name, text) => {
    const { outputs, refused } = runChanged(id, change);
    expect(refused).toBe('');
    expect(outputs[name]?.text).toBe(text);
  });

  it.each<[string, string, Change, readonly string[]]>([
    ['a turn past yield', 'fasteners.angle-from-preload', { yieldPreload: '29 kN' }, ['past-yield']],
    ['a turn below yield', 'fasteners.angle-from-preload', { yieldPreload: '30 kN' }, []],
    ['a preload past yield', 'fasteners.preload-from-angle', { yieldPreload: '37 kN' }, ['past-yield']],
    ['a preload below yield', 'fasteners.preload-from-angle', { yieldPreload: '40 kN' }, []],
    ['a joint that opens', 'fasteners.preload-temperature', { preload: '5 kN', partRise: '-80 K' }, ['no-preload']],
    ['a joint that stays', 'fasteners.preload-temperature', { preload: '5 kN' }, []],
    ['bedding in of all', 'fasteners.embedding-loss', { preload: '0.8 kN' }, ['no-preload']],
    ['bedding in of a part', 'fasteners.embedding-loss', { preload: '8 kN' }, []],
    ['a bolt that bottoms', 'fasteners.bolt-depth', { length: '3.20 in' }, ['bottoms']],
    [
      'a stretch that contradicts its torque',
      'fasteners.preload-from-stretch',
      { torqueLow: '8000 lbf' },
      ['stretch-and-torque-apart'],
    ],
    [
      'a stretch above its torque',
      'fasteners.preload-from-stretch',
      { torqueHigh: '6000 lbf' },
      ['stretch-and-torque-apart'],
    ],
    ['a rod that buckles', 'valvetrain.pushrod-buckling', { load: '2200 lbf' }, ['buckles']],
    ['a rod that holds', 'valvetrain.pushrod-buckling', { load: '2000 lbf' }, []],
  ])('%s (%s)', (_, id, change, codes) => {
    expect(runChanged(id, change)).toMatchObject({ refused: '', cautions: codes });
  });

  it('leaves out what it does not know', () => {
    expect(runChanged('fasteners.bolt-resilience', { preload: undefined }).outputs).not.toHaveProperty('stretch');
    expect(runChanged('fasteners.scatter-of-method', { most: undefined }).outputs).not.toHaveProperty('leastRough');
    expect(runChanged('valvetrain.pushrod-buckling', { length: '10 in' }).outputs).not.toHaveProperty('johnsonLoad');
    expect(runChanged('valvetrain.pushrod-buckling').outputs).not.toHaveProperty('margin');
  });
});

describe('orders of tightening, properties', () => {
  it('visit each fastener of a ring once, and never a neighbour in a ring of 8 or more', () => {
    for (const count of [8, 9, 10, 12, 14, 16, 20, 24]) {
      const order = outputOf('fasteners.cross-pattern', 'order', { count }) as number[];
      expect(order.toSorted((a, b) => a - b)).toEqual(Array.from({ length: count }, (_, at) => at + 1));
      for (let at = 1; at < count; at += 1) {
        const apart = Math.abs(order[at]! - order[at - 1]!);
        expect(Math.min(apart, count - apart), `${count}: ${order}`).toBeGreaterThan(1);
      }
    }
  });

  it('go from the central pair to the ends of two rows of five, and loosen in the exact reverse (O-29)', () => {
    const x = [0, 100, 200, 300, 400, 0, 100, 200, 300, 400].map((one) => `${one} mm`);
    const y = [...Array(5).fill('0 mm'), ...Array(5).fill('110 mm')];
    const order = outputOf('fasteners.centre-outward-order', 'order', { x, y }) as number[];
    const places = (from: number, to: number) => order.slice(from, to).toSorted((a, b) => a - b);
    expect(places(0, 2)).toEqual([3, 8]);
    expect(places(2, 6)).toEqual([2, 4, 7, 9]);
    expect(places(6, 10)).toEqual([1, 5, 6, 10]);
    expect(outputOf('fasteners.centre-outward-order', 'loosening', { x, y })).toEqual(order.toReversed());
  });
});
