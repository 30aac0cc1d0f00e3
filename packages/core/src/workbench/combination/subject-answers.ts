/** What each subject answers, for the overview and for what is recorded with a decision. */
import { type Answered, balanceOf, compressionOf, springsOf } from '../../assess/index.js';
import type { Bench } from '../bench.js';
import type { SubjectId } from '../combination-views.js';
import type { Tried } from './tried.js';

type SubjectAnswer = (tried: Tried, bench: Bench) => Answered;

/** Subjects that answer numbers; the others lead to their screen only. */
export const SUBJECT_ANSWERS: Partial<Readonly<Record<SubjectId, SubjectAnswer>>> = {
  compression: (tried) => compressionOf(tried),
  springs: (tried) => springsOf(tried),
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
