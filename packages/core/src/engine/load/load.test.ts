import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { toUnit } from '../../quantity/index.js';
import type { Engine } from '../model.js';
import { loadSheet, type SheetFault } from './index.js';

const ROOT = new URL('../../../../../', import.meta.url);
const read = (path: string) => readFileSync(new URL(path, ROOT), 'utf8');
const sheetsIn = (folder: string) =>
  readdirSync(new URL(folder, ROOT))
    .filter((name) => name.endsWith('.yaml'))
    .map((name) => `${folder}${name}`);
const SHEETS = ['sheets/', 'sheets/transcribed/', 'cases/recipes/'].flatMap(sheetsIn);

function engineOf(text: string): Engine {
  const loaded = loadSheet(text);
  expect(loaded.ok ? [] : loaded.fault).toEqual([]);
  return (loaded as { value: Engine }).value;
}
const cautionCodes = (path: string) => engineOf(read(path)).cautions.map((each) => `${each.path} ${each.code}`);

describe('the sheets of the project', () => {
  it('are three invented engines, four transcribed ones and thirteen recipes', () => {
    expect([
      sheetsIn('sheets/').length,
      sheetsIn('sheets/transcribed/').length,
      sheetsIn('cases/recipes/').length,
    ]).toEqual([3, 4, 13]);
  });

  it.each(SHEETS)('%s loads without a fault and survives being written as JSON', (path) => {
    const engine = engineOf(read(path));
    expect(JSON.parse(JSON.stringify(engine))).toEqual(engine);
  });

  it.each(sheetsIn('sheets/'))('%s is marked as invented, figure by figure, and has no caution', (path) => {
    const engine = engineOf(read(path));
    expect(engine.invented).toBe(true);
    expect(engine.cautions).toEqual([]);
    const standings = JSON.stringify(engine).match(/"standing":"[a-z-]+"/g) ?? [];
    expect(new Set(standings)).toEqual(new Set(['"standing":"invented"']));
  });

  it.each(sheetsIn('sheets/transcribed/'))('%s names the page or says "memory" beside every figure', (path) => {
    const engine = engineOf(read(path));
    expect(engine.invented).toBe(false);
    const froms = [
      ...engine.limits.map((each) => each.from),
      ...engine.joints.flatMap((joint) => joint.stages.map((stage) => stage.from)),
    ];
    expect(froms.length).toBeGreaterThan(10);
    for (const from of froms)
      expect(from.standing === 'memory' || Object.hasOwn(engine.sources, from.source ?? ''), from.text).toBe(true);
    expect(engine.gaps.length).toBeGreaterThan(0);
  });
});

describe('misprints found in the manuals (traps of the reference files engine-*.json)', () => {
  it('TM 9-2815-237-34: bore of another displacement, 1.80 in as 46.0 mm, two stem clearances, seat widths of two pages', () => {
    expect(cautionCodes('sheets/transcribed/tm9-2815-237-34.yaml')).toEqual([
      'limits[41].whenNew units-disagree',
      'crankTrain.displacement displacement-disagrees',
      'limits[43] worn-when-new',
      'limits[44] stated-twice',
      'limits[45] stated-twice',
      'limits[47] stated-twice',
    ]);
  });

  it('TM 9-2815-237-34: the stem clearance caution gives both figures', () => {
    const engine = engineOf(read('sheets/transcribed/tm9-2815-237-34.yaml'));
    const [stem] = engine.cautions.filter((each) => each.code === 'worn-when-new');
    expect(stem?.message).toContain('0.001..0.003 in');
    expect(stem?.message).toContain('<= 0.0027 in');
    expect(stem?.line).toBeGreaterThan(100);
  });

  it('4.25 x 4.00 in V8: two service limits in millimetres do not match their inches', () => {
    expect(cautionCodes('sheets/transcribed/sm-ohv-v8-425x400.yaml')).toEqual([
      'limits[5].wear.clearance units-disagree',
      'limits[6].wear.clearance units-disagree',
    ]);
  });

  it.each(['tm5-6115-400-35', 'sm-ohv-v8-99x92'])('%s has none on the pages read', (name) => {
    expect(cautionCodes(`sheets/transcribed/${name}.yaml`)).toEqual([]);
  });

  it('the 6.0 L sister: 101.618 x 92.0 mm and eight cylinders are 5969 cc, not the printed 5697', () => {
    const engine = engineOf(`gudgeon: 1
name: Sister
layout: { form: vee, banks: { left: 45 deg, right: -45 deg }, cylinders: { left: [1, 3, 5, 7], right: [2, 4, 6, 8] } }
crankTrain: { bore: 101.618 mm, stroke: 92.0 mm, displacement: 5697 cm3 }
`);
    expect(engine.cautions).toHaveLength(1);
    expect(engine.cautions[0]?.message).toContain('5969 cm3');
    expect(engine.crankTrain.displacement?.text).toBe('5697 cm3');
  });

  it('printed displacements that agree raise no caution (5665 cm3; 454 cu in)', () => {
    const eight = (train: string) =>
      engineOf(`gudgeon: 1
name: Eight
layout: { form: vee, banks: { left: 45 deg, right: -45 deg }, cylinders: { left: [1, 3, 5, 7], right: [2, 4, 6, 8] } }
crankTrain: { ${train} }
`);
    expect(eight('bore: 99.0 mm, stroke: 92.0 mm, displacement: 5665 cm3').cautions).toEqual([]);
    expect(eight('bore: 4.25 in, stroke: 4.00 in, displacement: 454 cu in').cautions).toEqual([]);
  });
});

describe('what a sheet says', () => {
  it('keeps the printed text and its page, with the value in SI beside it', () => {
    const engine = engineOf(read('sheets/transcribed/sm-ohv-v8-99x92.yaml'));
    expect(engine.crankTrain.stroke).toMatchObject({
      text: '92.0 mm',
      value: 0.092,
      from: { standing: 'manual', text: 'manual SM3', source: 'SM3' },
    });
    expect(engine.crankTrain.bore).toMatchObject({ text: '99.000..99.018 mm', window: { low: 0.099, high: 0.099018 } });
    expect(engine.crankTrain.bore?.value).toBeCloseTo(0.099009, 9);
  });

  it('reads every form of the printed recipes (reference engine-cases-head-torque.json)', () => {
    const acts = (recipe: string) => {
      const name = readdirSync(new URL('cases/recipes/', ROOT)).find((each) => each.startsWith(recipe))!;
      return engineOf(read(`cases/recipes/${name}`)).joints[0]!.stages.map((stage) =>
        [
          stage.holes === 'all' ? 'all' : `${stage.holes[0]}..${stage.holes.at(-1)}`,
          stage.act.kind,
          stage.act.text,
          ...(stage.direction === 'in-order' ? [] : [stage.direction]),
        ].join(' '),
      );
    };
    expect(acts('01')).toEqual([
      '1..10 torque 95 N·m',
      '1..10 loosen fully',
      '1..10 torque 156 N·m',
      '1..10 angle 90 deg',
      '1..10 angle 90 deg',
      '11..15 torque 24 N·m',
      '11..15 torque 31 N·m',
    ]);
    expect(acts('03')).toContain('all loosen at least 1 turn');
    expect(acts('04')).toContain('1..8 verify 27 N·m');
    expect(acts('06')).toContain('all loosen fully reverse');
    expect(acts('07').at(-1)).toBe('A..H torque 11 N·m (95 lb-in)');
    expect(acts('11')).toContain('all stretch 0.0135..0.0185 in');
  });

  it('gives a torque window in newton metres and a loosening in turns', () => {
    const engine = engineOf(read('cases/recipes/03-windows-single-use.yaml'));
    const [torque, , loosen] = engine.joints[0]!.stages.map((stage) => stage.act);
    expect(torque).toMatchObject({ kind: 'torque', target: { low: 37, high: 43 } });
    expect(loosen).toMatchObject({ kind: 'loosen', amount: 2 * Math.PI });
    expect(engine.joints[0]!.fasteners[0]?.use).toBe('once');
  });

  it('keeps what is not stated as not stated', () => {
    const [joint] = engineOf(read('cases/recipes/02-loosen-one-turn.yaml')).joints;
    expect(joint?.holes[0]).toEqual({
      id: '1',
      fastener: 'bolt',
      opensInto: 'not-stated',
      onThread: 'not-stated',
      underHead: 'not-stated',
    });
    expect(joint?.fasteners[0]).toEqual({ id: 'bolt', name: 'head bolt', thread: 'not stated', use: 'not-stated' });
    expect(joint).not.toHaveProperty('order');
  });

  it('holds the three forms of a wear limit apart, and the scope in parts', () => {
    const { limits } = engineOf(read('sheets/quernside-51-v8.yaml'));
    const named = (what: string) => limits.find((each) => `${each.part} ${each.what}` === what);
    expect(named('cylinder bore diameter')?.wear).toMatchObject({ form: 'change-from-new', text: '0.15 mm' });
    expect(named('cylinder bore taper')?.wear).toMatchObject({ form: 'absolute', window: { high: 0.00006 } });
    expect(named('lifter clearance in bore')?.wear).toMatchObject({ form: 'clearance' });
    const pistons = limits.filter((each) => `${each.part} ${each.what}` === 'piston clearance');
    expect(pistons.map((each) => each.applies?.cylinders)).toEqual([
      [1, 2, 3, 4, 5, 6],
      [7, 8],
    ]);
    expect(named('ring gap, top')).toMatchObject({ scope: 'at 25 mm', applies: { depth: { value: 0.025 } } });
  });

  it('takes cam events from either side of their dead centre', () => {
    const { cam } = engineOf(read('sheets/pellgarth-t4-twin-cam.yaml'));
    const degrees = Object.values(cam?.events ?? {}).map((angle) => Math.round(toUnit('angle', angle, 'deg')));
    expect(degrees).toEqual([-2, 34, 38, -4]);
    expect(cam).toMatchObject({ basis: 'at-lift', checkingLift: { text: '1.00 mm' } });
  });
});

const BASE = `gudgeon: 1
name: Four
layout:
  form: inline
  cylinders: [1, 2, 3, 4]
  firingOrder: 1-3-4-2
`;
function faultsOf(text: string): readonly SheetFault[] {
  const loaded = loadSheet(text);
  return loaded.ok ? [] : loaded.fault;
}
/** One row: what is wrong, the sheet, and the one line that says so. */
const REFUSED: readonly (readonly [string, string, string, number | undefined])[] = [
  ['empty text', '', 'the sheet is empty; it begins with a line such as "gudgeon: 1"', undefined],
  ['blank lines', '\n \n', 'the sheet is empty; it begins with a line such as "gudgeon: 1"', undefined],
  [
    'a sentence',
    'a sentence',
    'the sheet holds a single value; a sheet is a mapping of keys, beginning with a line such as "gudgeon: 1"',
    1,
  ],
  [
    'a list',
    '- 1\n- 2\n',
    'the sheet holds a list; a sheet is a mapping of keys, beginning with a line such as "gudgeon: 1"',
    1,
  ],
  [
    'only a comment',
    '# nothing\n',
    'the sheet holds nothing; a sheet is a mapping of keys, beginning with a line such as "gudgeon: 1"',
    1,
  ],
  [
    'a key without colon',
    `${BASE}nonsense\n`,
    'line 7: something is missing here: a colon after a key, a comma, or a closing bracket or quote',
    7,
  ],
  ['a key given twice', `${BASE}name: Five\n`, 'name: the key "name" stands twice (first on line 2); keep one', 7],
  ['an unknown key', `${BASE}limitz: []\n`, 'the sheet: the key "limitz" is not known; did you mean "limits"?', 7],
  [
    'an unknown key that is like none',
    `${BASE}cam: { basis: seat, colour: blue }\n`,
    'cam: the key "colour" is not known; known here: basis, checkingLift, events, advertisedDuration, lobeLift, from',
    7,
  ],
  ['a missing key', 'gudgeon: 1\nname: Four\n', 'layout: is missing', 1],
  ['a blank value', `${BASE}description:\n`, 'description: is left blank; write a value or take the key out', 7],
  ['another version', BASE.replace('gudgeon: 1', 'gudgeon: 2'), 'gudgeon: 2 is not known; one of: 1', 1],
  [
    'an unknown word',
    BASE.replace('inline', 'in-line'),
    'layout.form: "in-line" is not known; one of: inline, vee, opposed; did you mean "inline"?',
    4,
  ],
  [
    'a bare number',
    `${BASE}crankTrain: { bore: 83.40 }\n`,
    'crankTrain.bore: 83.40 has no unit; write the length with its unit, for example "83.40 mm"',
    7,
  ],
  [
    'a number as text without unit',
    `${BASE}crankTrain: { bore: "83.4" }\n`,
    'crankTrain.bore: "83.4" has no unit: a length needs one, such as mm, in, thou, µm.',
    7,
  ],
  [
    'an unknown unit',
    `${BASE}crankTrain: { bore: 3 furlongs }\n`,
    'crankTrain.bore: "furlongs" is not a unit of length: use mm, in, thou, µm.',
    7,
  ],
  [
    'a unit of another kind',
    `${BASE}crankTrain: { bore: 3 N·m }\n`,
    'crankTrain.bore: "N·m" is a unit of torque, but a length is needed: use mm, in, thou, µm.',
    7,
  ],
  [
    'a list for a text',
    `${BASE}crankTrain: { bore: [1, 2] }\n`,
    'crankTrain.bore: must be text or a number or a mapping of keys, not a list of 2',
    7,
  ],
  [
    'an origin without standing',
    `${BASE}defaultFrom: a friend\n`,
    'defaultFrom: "a friend" does not say how far to trust the figure; begin with manual, part maker, measured, rule of thumb, memory or invented',
    7,
  ],
  [
    'a cylinder that fires twice',
    BASE.replace('1-3-4-2', '1-3-4-3'),
    'layout.firingOrder: cylinder 3 stands twice, cylinder 2 is missing; each of the 4 cylinders fires once',
    6,
  ],
  [
    'a cylinder that is not there',
    BASE.replace('1-3-4-2', '1-3-4-2-5'),
    'layout.firingOrder: there is no cylinder 5; each of the 4 cylinders fires once',
    6,
  ],
  [
    'words for an order',
    BASE.replace('1-3-4-2', 'one-three'),
    'layout.firingOrder: "one" is not a cylinder; write the order as 1-3-4-2',
    6,
  ],
  [
    'cylinders with a gap',
    BASE.replace('[1, 2, 3, 4]', '[1, 2, 3, 5]'),
    'layout.cylinders: 4 cylinders are numbered 1 to 4, but 4 is missing',
    5,
  ],
  [
    'a thousand million cylinders',
    BASE.replace('[1, 2, 3, 4]', '1000000000'),
    'layout.cylinders: must be a mapping of keys or a list, not 1000000000',
    5,
  ],
  [
    'a cylinder of a thousand million',
    BASE.replace('[1, 2, 3, 4]', '[1000000000]'),
    'layout.cylinders[0]: 1000000000 is too big; at most 24',
    5,
  ],
  [
    'intervals that do not fill two turns',
    `${BASE}  firingIntervals: [90 deg, 180 deg, 180 deg, 180 deg]\n`,
    'layout.firingIntervals: the intervals add up to 630°; a four-stroke engine needs 720°',
    7,
  ],
  [
    'intervals for another count',
    `${BASE}  firingIntervals: [360 deg, 360 deg]\n`,
    'layout.firingIntervals: 2 intervals are given for 4 cylinders',
    7,
  ],
  [
    'a rod shorter than the throw',
    `${BASE}crankTrain:\n  stroke: 100 mm\n  rodLength: 50 mm\n`,
    'crankTrain.rodLength: "50 mm" is shorter than the throw (half of 100 mm): the crank could not turn',
    9,
  ],
  [
    'a bore of another world',
    `${BASE}crankTrain: { bore: 83.4 in }\n`,
    'crankTrain.bore: "83.4 in" is outside 20 mm to 600 mm; is the unit right?',
    7,
  ],
  [
    'an event of another dead centre',
    `${BASE}cam: { basis: seat, events: { io: 10 deg ABDC, ic: 50 deg, eo: 50 deg, ec: 10 deg } }\n`,
    'cam.events.io: this event is counted from BTDC or ATDC, not ABDC',
    7,
  ],
  [
    'an impossible event',
    `${BASE}cam: { basis: seat, events: { io: 190 deg, ic: 50 deg, eo: 50 deg, ec: 10 deg } }\n`,
    'cam.events.io: 190° is outside -40° to 100°; events are crank degrees, counted from the usual side of the dead centre',
    7,
  ],
  [
    'a crank that cannot fire so',
    `${BASE}  crankpins: [{ cylinders: [1], at: 0 deg }, { cylinders: [2], at: 90 deg }]\n`,
    'layout.firingOrder: this crank cannot fire so: cylinder 2 (its pin is at 90°, the order needs 180°)',
    6,
  ],
  [
    'a force or a mass',
    `${BASE}limits: [{ part: spring, what: load, whenNew: 80 lb }]\n`,
    'limits[0].whenNew: "80 lb" may be force or mass; say which with quantity: force',
    7,
  ],
  [
    'an alias',
    `${BASE}description: &a words\ngaps: [*a]\n`,
    'gaps[0]: aliases ("*a") are not used in sheets; write the value out',
    8,
  ],
  [
    'a control character',
    `${BASE}description: a\u0000b\n`,
    'line 7: character U+0000 does not belong in a text file; a sheet is plain text in UTF-8',
    7,
  ],
  ['two documents', `${BASE}---\n${BASE}`, 'line 7: a second sheet begins here ("---"); one file holds one sheet', 7],
];

const JOINT = `${BASE}joints:
  - id: head
    fasteners: [{ id: bolt, name: head bolt, thread: M10 }]
    holes: [{ ids: 1-4, fastener: bolt }]
    order: 1-4
    stages:
      - { torque: 20 N·m }
      - { holes: 1-4, angle: 90 deg }
`;
const REFUSED_JOINTS: readonly (readonly [string, string, string, string, number])[] = [
  ['a hole listed twice', 'ids: 1-4', 'ids: "1-4, 2"', 'joints[0].holes: hole 2 is listed twice', 10],
  [
    'a hole twice in the order',
    'order: 1-4',
    'order: 1, 2, 3, 4, 3',
    'joints[0].order: hole 3 stands twice in the order',
    11,
  ],
  ['a hole left out of the order', 'order: 1-4', 'order: 1-3', 'joints[0].order: the order leaves out hole 4', 11],
  [
    'an unknown hole in the order',
    'order: 1-4',
    'order: 1-5',
    'joints[0].order: hole 5 is in the order, but the joint has no such hole',
    11,
  ],
  [
    'a stage that names an unknown hole',
    'holes: 1-4, angle',
    'holes: 1-6, angle',
    'joints[0].stages[1].holes: the joint has no holes 5, 6',
    14,
  ],
  [
    'a hole twice in a stage',
    'holes: 1-4, angle',
    'holes: "1-4, 4", angle',
    'joints[0].stages[1].holes: hole 4 is listed twice in this stage',
    14,
  ],
  [
    'a selection that is none',
    'ids: 1-4',
    'ids: all of them',
    'joints[0].holes[0].ids: "them" is not a list of ids; write 1-10, A-H or 1-8, 11',
    10,
  ],
  [
    'an unknown fastener',
    'fastener: bolt }',
    'fastener: stud }',
    'joints[0].holes[0].fastener: there is no fastener "stud"; fasteners: bolt',
    10,
  ],
  [
    'two acts in one entry',
    '{ torque: 20 N·m }',
    '{ torque: 20 N·m, angle: 90 deg }',
    'joints[0].stages[0]: this entry asks for torque and angle; an entry asks for exactly one of torque, angle, loosen, verify, stretch, renew, instruct (give several entries one label)',
    13,
  ],
  [
    'no act',
    '{ torque: 20 N·m }',
    '{ label: 1 }',
    'joints[0].stages[0]: this entry asks for nothing; an entry asks for exactly one of torque, angle, loosen, verify, stretch, renew, instruct (give several entries one label)',
    13,
  ],
  ['a torque of nothing', '20 N·m', '0 N·m', 'joints[0].stages[0].torque: "0 N·m" is not more than zero', 13],
  [
    'a bare torque',
    '20 N·m',
    '20',
    'joints[0].stages[0].torque: 20 has no unit; write the torque with its unit, for example "20 N·m"',
    13,
  ],
  [
    'a head that is not there',
    '  - id: head\n',
    '  - id: head\n    head: left\n',
    'joints[0].head: there is no head "left"; heads: none is described',
    9,
  ],
  [
    'a length limit left out',
    'thread: M10',
    'thread: M10, use: reuse-to-length',
    'joints[0].fasteners[0]: use: reuse-to-length needs lengthLimit, the longest length for another use',
    9,
  ],
];

describe('a sheet that cannot be used', () => {
  it.each(REFUSED)('with %s is refused in one line', (_, text, message, line) => {
    const faults = faultsOf(text);
    expect(faults.map((each) => each.message)).toEqual([message]);
    expect(faults[0]?.line).toBe(line);
  });

  it('loads again when nothing is wrong', () => {
    expect(faultsOf(BASE)).toEqual([]);
    expect(faultsOf(JOINT)).toEqual([]);
  });

  it.each(REFUSED_JOINTS)('with %s is refused in one line', (_, from, to, message, line) => {
    expect(JOINT).toContain(from);
    const faults = faultsOf(JOINT.replace(from, to));
    expect(faults.map((each) => each.message)).toEqual([message]);
    expect(faults[0]?.line).toBe(line);
  });

  it('shows every fault at once, in the order of the text', () => {
    const lines = faultsOf(
      `${BASE}crankTrain:\n  bore: 3 furlongs\n  stroke: 80\ncam: { basis: seat, from: hearsay }\n`,
    ).map((each) => each.line);
    expect(lines).toEqual([8, 9, 10]);
  });
});

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

describe('firing order against crank (reference row MO-36)', () => {
  const eight = (order: string, more: string) => `gudgeon: 1
name: Eight
layout:
  form: vee
  banks: { left: 45 deg, right: -45 deg }
  cylinders: { left: [1, 3, 5, 7], right: [2, 4, 6, 8] }
  firingOrder: ${order}
${more}`;
  const PINS =
    '  crankpins: [{ cylinders: [1, 2] }, { cylinders: [3, 4] }, { cylinders: [5, 6] }, { cylinders: [7, 8] }]\n';
  const printed = [1, 8, 4, 3, 6, 5, 7, 2];
  const swaps = printed.flatMap((_, i) => printed.slice(i + 1).map((__, j) => [i, i + 1 + j] as const));
  const swapped = ([i, j]: readonly [number, number]) => {
    const order = [...printed];
    [order[i], order[j]] = [order[j]!, order[i]!];
    return order.join('-');
  };
  /** Half an order apart: both pistons rise together, so the same crank fires either order. */
  const together = ([i, j]: readonly [number, number]) => j - i === 4;

  it.each(['1-8-4-3-6-5-7-2', '1-8-7-2-6-5-4-3'])('%s runs on the shared pins', (order) => {
    expect(faultsOf(eight(order, PINS))).toEqual([]);
    expect(engineOf(eight(order, '')).cautions).toEqual([]);
  });

  it('an order with two cylinders exchanged is refused, except where both pistons rise together', () => {
    expect(swaps).toHaveLength(28);
    for (const swap of swaps) {
      const codes = faultsOf(eight(swapped(swap), PINS)).map((each) => each.code);
      expect(codes, swapped(swap)).toEqual(together(swap) ? [] : ['order-against-crank']);
    }
  });

  it('without crankpins the same orders are doubtful only, because pins can be split', () => {
    for (const swap of swaps) {
      const codes = engineOf(eight(swapped(swap), '')).cautions.map((each) => each.code);
      expect(codes, swapped(swap)).toEqual(together(swap) ? [] : ['pairs-not-on-one-pin']);
    }
  });

  it('banks seen from the wrong end are suspected when every pair disagrees', () => {
    const mirrored = eight('1-8-4-3-6-5-7-2', PINS).replace(
      'left: 45 deg, right: -45 deg',
      'left: -45 deg, right: 45 deg',
    );
    expect(faultsOf(mirrored)[0]?.message).toMatch(
      /cylinders 1 and 2 .* 180° apart.*are the bank angles those seen from the front/,
    );
  });

  it('a common-pin V6 of 90 degrees is refused as even and passes at 150 and 90 (row MO-37)', () => {
    const six = (intervals: string) => `gudgeon: 1
name: Six
layout:
  form: vee
  banks: { left: 45 deg, right: -45 deg }
  cylinders: { left: [1, 3, 5], right: [2, 4, 6] }
  crankpins: [{ cylinders: [1, 2] }, { cylinders: [3, 4] }, { cylinders: [5, 6] }]
  firingOrder: 1-6-5-4-3-2
  firingIntervals: ${intervals}
`;
    expect(faultsOf(six('even')).map((each) => each.code)).toEqual(['order-against-crank']);
    expect(faultsOf(six('[150 deg, 90 deg, 150 deg, 90 deg, 150 deg, 90 deg]'))).toEqual([]);
  });
});

describe('the folder', () => {
  it('has every file that the docs name', () => {
    for (const path of ['docs/sheet.md', 'docs/schema/sheet.schema.json'])
      expect(existsSync(new URL(path, ROOT)), path).toBe(true);
  });
});
