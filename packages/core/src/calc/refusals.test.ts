/** What a person may get wrong, entry by entry: each change of the printed example is refused with a line that says why. */
import { describe, expect, it } from 'vitest';
import { describeCalcFault, findCalculation, runCalculation } from './index.js';

type Change = Readonly<Record<string, unknown>>;

function refusal(id: string, change: Change): string {
  const calc = findCalculation(id);
  if (!calc) throw new Error(`no calculation ${id}`);
  const run = runCalculation(id, { ...calc.example.inputs, ...change });
  return run.ok ? '' : run.fault.map(describeCalcFault).join('\n');
}
const textsOf = (id: string, change: Change) => {
  const calc = findCalculation(id);
  const run = runCalculation(id, { ...calc?.example.inputs, ...change });
  if (!run.ok) throw new Error(run.fault.map(describeCalcFault).join('\n'));
  return {
    outputs: Object.fromEntries(Object.entries(run.value.outputs).map(([name, { text }]) => [name, text])),
    cautions: run.value.cautions.map(({ code }) => code),
  };
};

describe('inputs that cannot stand together are refused:', () => {
  it.each<[string, string, Change, RegExp]>([
    ['a rod shorter than the throw', 'crank.motion', { rodLength: '1 in' }, /could not turn; rodLength must be above/],
    ['a rod shorter than the throw', 'crank.dead-centres', { rodLength: '1 in' }, /could not turn/],
    ['a rod shorter than the throw', 'crank.peak-speed', { rodLength: '1 in' }, /could not turn/],
    ['a vee with an odd number of cylinders', 'crank.fire-intervals', { cylinders: 5 }, /even number of them/],
    [
      'an order that names a cylinder twice and forgets one',
      'crank.firing-tops',
      { firingOrder: [1, 3, 3, 2, 5] },
      /cylinder 3 stands more than once.*cylinder 4 is missing/,
    ],
    [
      'intervals that do not fill two turns',
      'crank.firing-tops',
      { firingOrder: [1, 2], intervals: ['360 deg', '270 deg'] },
      /add up to 630 degrees; 720 is needed/,
    ],
    ['an order that forgets a cylinder', 'crank.shared-pins', { firingOrder: [1, 3] }, /cylinder 2 is missing/],
    ['a crankpin with one cylinder', 'crank.shared-pins', { firstOfPin: [1, 3, 5, 7, 8] }, /needs two cylinders/],
    ['a crankpin with a stranger', 'crank.shared-pins', { secondOfPin: [2, 4, 6, 9] }, /must be in the firing order/],
    ['an order that forgets a cylinder', 'crank.throw-check', { firingOrder: [1, 3, 4] }, /cylinder 2 is missing/],
    ['a crank with a throw too few', 'crank.throw-check', { throwAngles: ['0 deg', '180 deg'] }, /cylinders 1 to 4/],
    [
      'a lobe without duration',
      'cam.lobes-from-events',
      { intakeOpens: '-90 deg', intakeCloses: '-90 deg' },
      /leave the intake valve no open time/,
    ],
    ['flanks taken in the wrong order', 'cam.centreline', { opening: '150 deg' }, /closing must be above 150 deg/],
    ['a washer face inside its hole', 'fasteners.torque-from-preload', { bearingOutside: '10 mm' }, /bear on/],
    ['a washer face inside its hole', 'fasteners.preload-from-torque', { bearingOutside: '10 mm' }, /bear on/],
    ['a washer face inside its hole', 'fasteners.preload-band', { bearingOutside: '10 mm' }, /bear on/],
    [
      'a washer face inside its hole',
      'fasteners.assembly-preload',
      { headFriction: '0.12', bearingOutside: '10 mm', bearingHole: '11 mm' },
      /bear on; bearingOutside must be above 11 mm/,
    ],
    [
      'half of what the torque needs',
      'fasteners.assembly-preload',
      { headFriction: '0.12', bearingOutside: undefined, bearingHole: undefined },
      /headFriction, bearingOutside and bearingHole together/,
    ],
    [
      'a friction band upside down',
      'fasteners.preload-band',
      { lowFriction: '0.16', highFriction: '0.10' },
      /low end is above the high end; highFriction must be at least 0.16/,
    ],
    ['a lubricant that is only blanks', 'fasteners.nut-factor-torque', { lubricant: '  ' }, /name of the lubricant/],
    ['a lift longer than the rocker arm', 'valvetrain.rocker-sweep', { arm: '0.2 in' }, /cannot reach that lift/],
    [
      'more valves than can be planned at once',
      'selection.shim-pool',
      { measured: Array(101).fill('0.2 mm'), old: Array(101).fill('2.5 mm') },
      /101 valves; up to 100 is valid/,
    ],
    ['a window with its ends exchanged', 'selection.shim-pool', { lowest: ['0.4 mm'] }, /lower end is above/],
    ['two wanted gaps for three valves', 'selection.shim-pool', { wanted: ['0.2 mm', '0.3 mm'] }, /one for all/],
    [
      'a card without its exhaust side',
      'valve-setting.crank-stops',
      { intakeOpens: '10 deg', intakeCloses: '50 deg' },
      /all four events/,
    ],
    [
      'a valve that never opens',
      'valve-setting.base-circle-windows',
      { intakeOpens: '-90 deg', intakeCloses: '-90 deg' },
      /intake valve would be open for 0 degrees/,
    ],
    [
      'limits with their ends exchanged',
      'bearings.thread-gauge',
      { lowest: '0.06 mm' },
      /highest must be at least 0.06/,
    ],
    [
      'a stop that rounds to the next cycle',
      'valve-setting.crank-stops',
      { stops: ['719.9999999999 deg'] },
      /0 to below 720/,
    ],
  ])('%s (%s)', (_, id, change, line) => {
    expect(refusal(id, change)).toMatch(line);
  });
});

describe('an entry answers', () => {
  it('which throws do not fit an order with two cylinders exchanged', () => {
    const { verdict, wrongCylinders } = textsOf('crank.throw-check', { firingOrder: [1, 4, 3, 2] }).outputs;
    expect(verdict).toBe(
      'does not agree: cylinder 4 is up at 0 deg by its throw, at 180 deg by the order; cylinder 3 is up at 180 deg by its throw, at 0 deg by the order',
    );
    expect(wrongCylinders).toBe('4, 3');
  });

  it('which crankpins do not fit, in whichever sense most of them do', () => {
    // Cylinders 2 and 7 exchanged in 1-8-4-3-6-5-7-2: seen from the other bank the same two pins are wrong.
    const exchanged = { firingOrder: [1, 8, 4, 3, 6, 5, 2, 7] };
    expect(textsOf('crank.shared-pins', exchanged).outputs.verdict).toMatch(/crankpin 1-2, 7-8$/);
    const sides = { firstOfPin: [2, 4, 6, 8], secondOfPin: [1, 3, 5, 7] };
    expect(textsOf('crank.shared-pins', { ...exchanged, ...sides }).outputs.verdict).toMatch(/crankpin 2-1, 8-7$/);
    expect(textsOf('crank.shared-pins', sides).outputs.verdict).toBe('agrees');
  });

  it('with a caution when the bolt yields while it is tightened', () => {
    const { cautions } = textsOf('fasteners.tightening-stress', { preload: '60 kN', yieldStrength: '640 MPa' });
    expect(cautions).toEqual(['past-yield']);
  });

  it('no data, and not "in", for a clearance without limits', () => {
    const without = { lowest: undefined, highest: undefined };
    expect(textsOf('bearings.thread-gauge', without).outputs.verdict).toBe('no data');
  });

  it('that one end of a bearing is below its limits and the other above them', () => {
    const readings = ['0.020 mm', '0.055 mm'];
    expect(textsOf('bearings.thread-gauge', { readings }).outputs.verdict).toBe('below and above');
  });

  it('with a caution when no lash is left hot', () => {
    expect(textsOf('valvetrain.hot-lash', { tipRise: '2 mm' }).cautions).toEqual(['held-open']);
  });

  it('how far to turn for a change of lash: 0.1 in at 2.5/24 in a turn is 0.96 turn (hand arithmetic)', () => {
    expect(textsOf('valvetrain.lash-per-turn', { change: '0.100 in' }).outputs.turned).toBe('0.960 turn');
  });

  it('with no smallest margin for a cylinder whose valves rock at the only stop', () => {
    const { smallestMargin, lists } = textsOf('valve-setting.crank-stops', {
      firingOrder: [1],
      stops: ['360 deg'],
    }).outputs;
    expect(smallestMargin).toBeUndefined();
    expect(lists).toBe('360°: intake none / exhaust none');
  });

  it('which shim is a valve’s own, and which lay in the box', () => {
    const { assignments } = textsOf('selection.shim-pool', {
      measured: ['0.20 mm', '0.25 mm'],
      old: ['2.70 mm', '2.70 mm'],
      wanted: ['0.20 mm', '0.20 mm'],
      spares: ['2.75 mm'],
    }).outputs;
    expect(assignments).toBe(
      'valve 1: 2.700 mm (its own) leaves 0.200 mm, valve 2: 2.750 mm (spare 1) leaves 0.200 mm',
    );
  });
});
