/** What may be seen when an act is done, and whether that finishes it. */
import type { StageAct } from '../../engine/model.js';
import type { Seen } from '../facts.js';

const ANSWERS: Readonly<Record<StageAct['kind'], readonly Seen[]>> = {
  torque: ['reached'],
  angle: ['turned-and-marked', 'beyond', 'mark-found'],
  loosen: ['loosened', 'mark-found'],
  verify: ['held', 'moved'],
  stretch: ['within', 'short', 'beyond', 'mark-found'],
  renew: ['renewed'],
  instruct: ['followed'],
  feel: ['free', 'stiff'],
};
/** Seen, but the act is not finished: it is done again, or the fastener comes out. */
const UNFINISHED: readonly Seen[] = ['moved', 'short', 'beyond', 'stiff'];

/** The answers that fit an act, the usual one first. `mark-found` is an answer to a look on return only. */
export const answersFor = (kind: StageAct['kind']): readonly Seen[] => ANSWERS[kind];
/** Whether the act is finished when this was seen. */
export const finishes = (seen: Seen): boolean => !UNFINISHED.includes(seen);
