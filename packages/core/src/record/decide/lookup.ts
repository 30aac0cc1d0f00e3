import { type Engine, type Joint, jointById } from '../../engine/index.js';
import { done, type Outcome, refused } from '../../quantity/outcome.js';
import type { RecordState } from '../state.js';
import type { NewEntry, Refusal } from './refusal.js';

export type Decision = Outcome<readonly NewEntry[], Refusal>;

/** What is asked for is in the record already. */
export const nothingToAdd: Decision = done([]);
export const record = (...entries: readonly NewEntry[]): Decision => done(entries);

export function engineOf(state: RecordState): Outcome<Engine, Refusal> {
  return state.engine === undefined ? refused({ code: 'no-sheet' }) : done(state.engine);
}

export function jointOf(state: RecordState, id: string): Outcome<{ engine: Engine; joint: Joint }, Refusal> {
  const engine = engineOf(state);
  if (!engine.ok) return engine;
  const joint = jointById(engine.value, id);
  const valid = engine.value.joints.map((one) => one.id);
  return joint === undefined
    ? refused({ code: 'unknown-joint', joint: id, valid })
    : done({ engine: engine.value, joint });
}
