/** The shape of every entry's data, version 1, and of the envelope around it. */
import type { MarkAnswer, PartKind, Seen } from '../../plan/index.js';
import type { EntryData, EntryKind, Envelope } from '../entry.js';
import { COMBINATION_SHAPES } from './combination-shapes.js';
import {
  count,
  either,
  filledText,
  finite,
  type Guard,
  guard,
  listOf,
  object,
  oneOf,
  optional,
  text,
  truth,
} from './guards.js';
import { MEASURING_SHAPES } from './measuring-shapes.js';
import { PHOTO_SHAPES } from './photo-shapes.js';
import { hash, matches, NAME, name, reading, reason, valve, WORDS } from './pieces.js';
import { RUNNING_SHAPES } from './running-shapes.js';
import { WORK_SHAPES } from './work-shapes.js';

/** A sheet with its comments; the largest transcribed one has a few hundred kilobytes of room. */
const SHEET = 2_000_000;
const ACTS = 2_000;

const words = text(WORDS);

const part: Guard<PartKind> = oneOf('lifter', 'pushrod', 'rocker', 'follower', 'shim');
const seen: Guard<Seen> = oneOf(
  'reached',
  'turned-and-marked',
  'loosened',
  'held',
  'moved',
  'within',
  'short',
  'beyond',
  'renewed',
  'followed',
  'free',
  'stiff',
  'mark-found',
);
const markAnswer: Guard<MarkAnswer> = oneOf('found', 'clean', 'unknown');
const mark: Guard<NonNullable<EntryData['walk-resumed']['mark']>> = object({
  stage: count,
  hole: name,
  instance: count,
  answer: markAnswer,
});

export const SHAPES: { readonly [K in EntryKind]: Guard<EntryData[K]> } = {
  'sheet-adopted': object<EntryData['sheet-adopted']>({ name, text: filledText(SHEET), reason: words }),
  'gasket-checked': object<EntryData['gasket-checked']>({
    head: name,
    item: name,
    result: oneOf('good', 'bad'),
    seen: words,
  }),
  'fastener-placed': object<EntryData['fastener-placed']>({
    joint: name,
    hole: name,
    instance: count,
    fastener: name,
    condition: optional(oneOf('new', 'used')),
    length: optional(reading),
    onThread: text(NAME),
    underHead: text(NAME),
  }),
  'act-done': object<EntryData['act-done']>({
    joint: name,
    stage: count,
    hole: name,
    instance: count,
    round: count,
    target: words,
    seen,
    reading: optional(reading),
  }),
  'walk-resumed': object<EntryData['walk-resumed']>({
    joint: name,
    stage: count,
    why: oneOf('opened-again', 'paused', 'other-person', 'struck-out'),
    verified: listOf(name, ACTS),
    roundAgain: truth,
    mark: optional(mark),
  }),
  'fastener-doubted': object<EntryData['fastener-doubted']>({
    joint: name,
    stage: count,
    hole: name,
    instance: count,
    why: reason,
  }),
  'joint-opened': object<EntryData['joint-opened']>({ joint: name, reason }),
  'part-tagged': object<EntryData['part-tagged']>({
    part,
    valve,
    end: optional(text(NAME)),
    face: optional(text(NAME)),
    condition: words,
  }),
  'part-fitted': object<EntryData['part-fitted']>({
    part,
    to: valve,
    from: either(oneOf('new'), valve),
    end: optional(text(NAME)),
    face: optional(text(NAME)),
    lubricant: optional(text(NAME)),
  }),
  'valve-set': object<EntryData['valve-set']>({
    valve,
    method: oneOf('stop', 'crank-here', 'neighbour'),
    crankDegrees: optional(finite),
    adjustment: oneOf('preload', 'lash', 'shim', 'fixed'),
    turns: optional(finite),
    plungerTravel: optional(reading),
    lash: optional(reading),
    shim: optional(reading),
    condition: oneOf('cold', 'hot'),
  }),
  'valve-rechecked': object<EntryData['valve-rechecked']>({
    valve,
    result: oneOf('good', 'bad'),
    lash: optional(reading),
    seen: words,
  }),
  'spare-shim': object<EntryData['spare-shim']>({ shim: reading }),
  'shim-measured': object<EntryData['shim-measured']>({ valve, lash: reading, shim: reading }),
  ...MEASURING_SHAPES,
  ...COMBINATION_SHAPES,
  ...RUNNING_SHAPES,
  ...WORK_SHAPES,
  ...PHOTO_SHAPES,
  note: object<EntryData['note']>({ about: text(NAME), text: reason }),
  skipped: object<EntryData['skipped']>({ what: filledText(NAME * 3), reason }),
  'struck-out': object<EntryData['struck-out']>({ entry: name, reason }),
};

const UUID_V7 = /^[0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/;
const MOMENT = /^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d(\.\d+)?(Z|[+-]\d\d:\d\d)$/;

/** Any data: what it holds is judged by its kind. */
const anything: Guard<unknown> = guard('some data', (value) => value !== undefined);

export const ENVELOPE: Guard<Envelope> = object<Envelope>({
  id: matches('a UUID of version 7 in small letters', UUID_V7),
  job: name,
  device: name,
  counter: count,
  at: matches('a local time with offset, as 2026-03-01T18:20:00+01:00', MOMENT),
  person: name,
  instrument: optional(text(NAME)),
  kind: name,
  version: count,
  raw: optional(words),
  data: anything,
  previous: hash,
  hash,
});
