/** The shape of what is recorded about the whole work, version 1. */
import type { Asked, WorkAnswer, WorkFactData } from '../../plan/index.js';
import {
  count,
  either,
  filledText,
  finite,
  type Guard,
  listOf,
  object,
  oneOf,
  optional,
  text,
  truth,
} from './guards.js';
import { NAME, name, reason, WORDS } from './pieces.js';

/** An act's id holds its rule and its place. */
const act = filledText(2 * NAME);
const words = text(WORDS);
const mark = text(NAME);
const ACTS = 2_000;

const result = optional(oneOf('good', 'bad'));
const asked: Guard<Asked> = oneOf(
  'length',
  'angle',
  'torque',
  'pressure',
  'mass',
  'force',
  'volume',
  'ratio',
  'time',
  'speed',
  'temperature',
  'count',
);
type Of<K extends WorkAnswer['kind']> = Extract<WorkAnswer, { readonly kind: K }>;
type Told = Exclude<WorkAnswer, Of<'value'> | Of<'felt-or-seen'> | Of<'photo'> | Of<'register'>>;
const value: Guard<Of<'value'>> = object<Of<'value'>>({ kind: oneOf('value'), text: filledText(NAME), result });
const felt: Guard<Of<'felt-or-seen'>> = object<Of<'felt-or-seen'>>({
  kind: oneOf('felt-or-seen'),
  words: reason,
  result: oneOf('good', 'bad'),
});
const photo: Guard<Of<'photo'>> = object<Of<'photo'>>({
  kind: oneOf('photo'),
  photo: name,
  words: optional(words),
  result,
});
const register: Guard<Of<'register'>> = object<Of<'register'>>({
  kind: oneOf('register'),
  words: reason,
  marks: optional(object({ position: mark, end: mark, face: mark, condition: mark })),
  result,
});
const told: Guard<Told> = object<Told>({
  kind: oneOf('worksheet', 'joint-walk', 'list'),
  words: reason,
  result,
});
const answer: Guard<WorkAnswer> = either(either(value, felt), either(photo, either(register, told)));

export const WORK_SHAPES: { readonly [K in keyof WorkFactData]: Guard<WorkFactData[K]> } = {
  'work-act-done': object<WorkFactData['work-act-done']>({ act, answer, method: words }),
  'work-act-skipped': object<WorkFactData['work-act-skipped']>({ act, reason }),
  'work-reopened': object<WorkFactData['work-reopened']>({ rule: name, place: optional(act), why: reason }),
  'second-look': object<WorkFactData['second-look']>({
    act,
    looker: name,
    method: reason,
    result: oneOf('good', 'bad'),
    seen: reason,
  }),
  'mock-up-aid-out': object<WorkFactData['mock-up-aid-out']>({ aid: name, count, where: words }),
  'mock-up-aid-returned': object<WorkFactData['mock-up-aid-returned']>({ aid: name, count }),
  'work-begun': object<WorkFactData['work-begun']>({ operation: name, why: reason }),
  'work-act-added': object<WorkFactData['work-act-added']>({
    id: act,
    after: act,
    before: optional(act),
    does: reason,
    ask: reason,
    answer: oneOf('value', 'felt-or-seen', 'photo', 'list'),
    asked: optional(asked),
    minutes: finite,
    critical: truth,
    why: reason,
  }),
  'work-act-critical': object<WorkFactData['work-act-critical']>({ act, why: reason }),
  'work-left': object<WorkFactData['work-left']>({
    halfDone: words,
    loose: words,
    missing: words,
    uncovered: words,
    doubt: words,
  }),
  'work-resumed': object<WorkFactData['work-resumed']>({
    why: oneOf('opened-again', 'paused', 'other-person'),
    verified: listOf(act, ACTS),
  }),
  'work-signed-off': object<WorkFactData['work-signed-off']>({ words: reason, skips: listOf(act, ACTS) }),
};
