/**
 * Sample entries of every kind and version that was ever written. A sample is never changed: a new version adds one.
 * They fold to the same state for ever. Used by tests; not part of the built package.
 */
import type { EntryData, EntryKind } from './entry.js';
import type { LogEntry } from './order.js';
import { type EntryDraft, NO_PREVIOUS, sealEntry } from './seal.js';

const intake = { cylinder: 1, kind: 'intake', index: 1 } as const;
const metres = (text: string, value: number) => ({ text, value, unit: 'm' }) as const;

export const SAMPLES_V1: { readonly [K in EntryKind]: EntryData[K] } = {
  'sheet-adopted': { name: 'two-cylinder test engine', text: 'gudgeon: 1\n', reason: 'first sheet' },
  'gasket-checked': { head: 'top', item: 'opening:w1', result: 'good', seen: 'open through head and block' },
  'fastener-placed': {
    joint: 'head',
    hole: '1',
    instance: 1,
    fastener: 'bolt',
    condition: 'used',
    length: metres('95.0 mm', 0.095),
    onThread: 'oil',
    underHead: 'oil',
  },
  'act-done': { joint: 'head', stage: 1, hole: '2', instance: 1, round: 1, target: '30 N·m', seen: 'reached' },
  'walk-resumed': {
    joint: 'head',
    stage: 1,
    why: 'opened-again',
    verified: ['1/2'],
    roundAgain: true,
    mark: { stage: 2, hole: '1', instance: 1, answer: 'clean' },
  },
  'fastener-doubted': { joint: 'head', stage: 2, hole: '1', instance: 1, why: 'nobody knows' },
  'joint-opened': { joint: 'head', reason: 'gasket leaked' },
  'part-tagged': { part: 'lifter', valve: intake, end: 'cup up', face: 'dot to the front', condition: 'good' },
  'part-fitted': { part: 'lifter', to: intake, from: intake, lubricant: 'paste' },
  'valve-set': {
    valve: intake,
    method: 'stop',
    crankDegrees: 0,
    adjustment: 'lash',
    turns: 0.25,
    plungerTravel: metres('0.040 in', 0.001016),
    lash: metres('0.20 mm', 0.0002),
    shim: metres('2.75 mm', 0.00275),
    condition: 'cold',
  },
  'valve-rechecked': { valve: intake, result: 'good', lash: metres('0.20 mm', 0.0002), seen: 'feeler drags' },
  'spare-shim': { shim: metres('2.80 mm', 0.0028) },
  'shim-measured': { valve: intake, lash: metres('0.20 mm', 0.0002), shim: metres('2.75 mm', 0.00275) },
  measured: {
    slot: 'cylinder-bore/3/top-thrust',
    occasion: 1,
    reading: metres('4.0302 in', 0.10236708),
    repeat: false,
    source: 'keyed',
    instrument: 'bore-gauge-1',
    temperature: { text: '22.5 °C', value: 295.65, unit: 'K' },
    answered: ['4.0302 in? the other cylinders read about 4.0260 in'],
  },
  'instrument-kept': {
    id: 'bore-gauge-1',
    name: 'dial bore gauge, old box',
    kind: 'bore-gauge',
    measured: 'length',
    unit: 'in',
    resolution: metres('0.0001 in', 0.00000254),
    low: metres('2 in', 0.0508),
    high: metres('6 in', 0.1524),
    expanded: metres('0.0003 in', 0.00000762),
  },
  'instrument-checked': {
    instrument: 'bore-gauge-1',
    moment: 'start',
    standard: metres('4.0000 in', 0.1016),
    reading: metres('4.0001 in', 0.10160254),
  },
  'temperature-noted': {
    room: { text: '18 °C', value: 291.15, unit: 'K' },
    part: { text: '17 °C', value: 290.15, unit: 'K' },
    about: 'cylinder-bore',
  },
  'work-returned': { feature: 'cylinder-bore', places: ['1', '3'], why: 'bored and honed' },
  decided: {
    decision: 'bore-oversize',
    scope: 'all',
    alternative: 'oversize-0030',
    words: 'bore all cylinders 0.030 in over',
    figures: [{ name: 'largest bore', text: '4.0082 in' }],
    orders: [
      {
        id: 'bore/all',
        operation: 'bore and hone',
        part: 'cylinders',
        property: 'cylinder-bore.diameter',
        places: ['1', '3'],
        target: { low: 0.1023366, high: 0.102362 },
        measured: 'length',
        targets: [{ place: '1', window: { low: 0.10234 }, fittedTo: 'piston A' }],
        finish: 'plateau, 45 degrees of crosshatch',
        fittedTo: 'its own piston',
        with: 'torque plate',
        notes: ['deburr the lower edge'],
      },
    ],
    buys: [{ part: 'piston', partNumber: 'invented-30', size: '0.030 in over', count: 8, for: 'cylinders 1 to 8' }],
    reason: 'smallest that cleans up cylinder 3',
  },
  'dead-centre-read': {
    cylinder: 1,
    first: { text: '-36.75 deg', value: -0.6414085001079161, unit: 'rad' },
    second: { text: '35.25 deg', value: 0.6152285613280012, unit: 'rad' },
  },
  'cam-read': {
    lobe: intake,
    wheel: { text: '60 deg', value: 1.0471975511965976, unit: 'rad' },
    lift: metres('0.050 in', 0.00127),
    at: 'lifter',
    sense: 'opening',
  },
  'pushrod-tried': {
    valve: intake,
    length: metres('198.00 mm', 0.198),
    width: metres('1.9 mm', 0.0019),
    offset: metres('-0.4 mm', -0.0004),
  },
  'valve-room-read': {
    valve: intake,
    room: metres('2.41 mm', 0.00241),
    method: 'drop',
    wheel: { text: '10 deg', value: 0.17453292519943295, unit: 'rad' },
  },
  'figure-stated': { key: 'valve-drop@intake', reading: metres('4.6 mm', 0.0046), why: 'clay on the crown' },
  'work-act-done': {
    act: 'rod-marked@3',
    answer: {
      kind: 'register',
      words: '3 on both, boss to the rear',
      marks: { position: '3', end: '', face: 'boss to the rear', condition: 'good' },
      result: 'good',
    },
    method: 'by eye',
  },
  'work-act-skipped': { act: 'mains-honed', reason: 'not needed' },
  'work-reopened': { rule: 'rod-cap-removed', place: '3', why: 'shell was in doubt' },
  'second-look': {
    act: 'mains-tightened@3',
    looker: 'B. Fitter',
    method: 'paint mark',
    result: 'good',
    seen: 'line straight',
  },
  'mock-up-aid-out': { aid: 'checking spring', count: 2, where: 'cylinder 1' },
  'mock-up-aid-returned': { aid: 'checking spring', count: 2 },
  'work-begun': { operation: 'heads-on', why: 'short engine came built' },
  'work-act-added': {
    id: 'own-1',
    after: 'crank-spins',
    before: 'crank-float',
    does: 'Turn it by the spring balance',
    ask: 'Pull',
    answer: 'value',
    asked: 'force',
    minutes: 5,
    critical: false,
    why: 'to compare with last year',
  },
  'work-act-critical': { act: 'crank-spins', why: 'it was tight last time' },
  'work-left': { halfDone: 'cap 3', loose: 'all rods', missing: '', uncovered: 'bores', doubt: '' },
  'work-resumed': { why: 'paused', verified: ['crank-spins'] },
  'work-signed-off': { words: 'all of it read', skips: ['mains-honed'] },
  'photo-taken': {
    photo: '9f86d081884c7d659a2feaa0c55ad015a3bf4f1b2b0b822cd15d6c15b0f00a08',
    type: 'image/jpeg',
    bytes: 214_530,
    width: 1600,
    height: 1200,
    about: 'hole:head/2',
    words: 'thread after the tap, no chip left',
  },
  'oil-seen': { valve: intake },
  'start-tried': {
    crankedSeconds: 6,
    pressureAfterSeconds: 3,
    pressure: { text: '3.1 bar', value: 310000, unit: 'Pa' },
    outcome: 'runs',
  },
  'run-in-begun': { step: 1 },
  'run-in-stopped': { why: 'leak of fuel, oil or coolant' },
  'running-read': { what: 'oil-temperature', reading: { text: '82 °C', value: 355.15, unit: 'K' } },
  'compression-read': {
    cylinder: 1,
    reading: { text: '150 psi', value: 1034213.5939753945, unit: 'Pa' },
    wet: false,
    strokes: 5,
    gauge: 'screw-in gauge',
  },
  'leakage-read': {
    cylinder: 1,
    supply: { text: '80 psi', value: 551580.5834535437, unit: 'Pa' },
    held: { text: '68 psi', value: 468843.4959355121, unit: 'Pa' },
    heard: 'crankcase',
    tester: 'two-gauge tester',
  },
  'service-planned': { what: 'oil and filter', dueHours: 25, dueDate: '2027-03-01', from: 'own rule' },
  'service-done': { what: 'oil and filter', hours: 24.5 },
  'hours-noted': { hours: 12.5 },
  note: { about: 'head', text: 'dowel replaced' },
  skipped: { what: 'act:head/1/2', reason: 'pipe in the way' },
  'struck-out': { entry: '01890000-0000-7000-8000-000000000001', reason: 'wrong hole' },
};

/** A well-formed UUIDv7 for each number. */
export const idOf = (number: number): string => `01890000-0000-7000-8000-${String(number).padStart(12, '0')}`;

export interface Wish {
  readonly kind: string;
  readonly data: unknown;
  readonly version?: number;
}
export const draftOf = (wish: Wish, counter: number, over: Partial<EntryDraft> = {}): EntryDraft => ({
  id: idOf(counter),
  job: 'job-1',
  device: 'bench-phone',
  counter,
  at: '2026-03-01T18:20:00+01:00',
  person: 'A. Fitter',
  version: 1,
  ...wish,
  ...over,
});

/** Sealed entries of one device, in order, with the sequence that a server would give them. */
export function chainOf(wishes: readonly Wish[], device = 'bench-phone', from = 0): LogEntry[] {
  let previous = NO_PREVIOUS;
  return wishes.map((wish, index) => {
    const entry = sealEntry(draftOf(wish, index + 1, { device, id: idOf(from + index + 1) }), previous);
    previous = entry.hash;
    return { ...entry, sequence: from + index + 1, receivedAt: '2026-03-01T17:20:01Z' };
  });
}
