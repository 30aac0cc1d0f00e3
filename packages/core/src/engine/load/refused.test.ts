import { describe, expect, it } from 'vitest';
import { BASE, faultsOf, JOINT } from './try-sheets.suite.js';

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
  ['a version in quotes', BASE.replace('gudgeon: 1', 'gudgeon: "1"'), 'gudgeon: write 1 without quotes', 1],
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
  [
    'a control character that is written as an escape',
    `${BASE}description: "a \\u001b[31m b"\n`,
    'description: character U+001B does not belong in a sheet',
    7,
  ],
  ['two documents', `${BASE}---\n${BASE}`, 'line 7: a second sheet begins here ("---"); one file holds one sheet', 7],
];

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
    'joints[0].stages[0]: this entry asks for torque and angle; an entry asks for exactly one of torque, angle, loosen, verify, stretch, renew, instruct, feel (give several entries one label)',
    13,
  ],
  [
    'no act',
    '{ torque: 20 N·m }',
    '{ label: 1 }',
    'joints[0].stages[0]: this entry asks for nothing; an entry asks for exactly one of torque, angle, loosen, verify, stretch, renew, instruct, feel (give several entries one label)',
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
