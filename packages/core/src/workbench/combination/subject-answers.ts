/** What each subject answers, for the overview and for what is recorded with a decision. */
import { type Answered, balanceOf, compressionOf, preloadOf, springsOf } from '../../assess/index.js';
import type { Bench } from '../bench.js';
import type { SubjectId } from '../combination-views.js';
import { degreeingOf } from './cam-as-read.js';
import type { Tried } from './tried.js';
import { valveRoomAnswer } from './valve-room-answer.js';

type SubjectAnswer = (tried: Tried, bench: Bench) => Answered;

/** Subjects that answer numbers; the others lead to their screen only. */
export const SUBJECT_ANSWERS: Partial<Readonly<Record<SubjectId, SubjectAnswer>>> = {
  compression: (tried) => compressionOf(tried),
  degreeing: (tried, bench) => degreeingOf(bench, tried),
  'valve-room': (tried, bench) => valveRoomAnswer(bench, tried).answered,
  springs: (tried) => springsOf(tried),
  rockers: (tried) => preloadOf(tried),
  balance: (tried) => balanceOf(tried),
};

const kept = new WeakMap<Tried, Map<SubjectId, Answered | undefined>>();

/** The answer of a subject, worked out once for each state of the figures. */
export function answerOfSubject(bench: Bench, tried: Tried, id: SubjectId): Answered | undefined {
  const known = kept.get(tried) ?? new Map<SubjectId, Answered | undefined>();
  kept.set(tried, known);
  if (!known.has(id)) known.set(id, SUBJECT_ANSWERS[id]?.(tried, bench));
  return known.get(id);
}
