/** Rules for recording a tightening act. */
import type { Engine, Joint } from '../../engine/index.js';
import {
  type Act,
  actKey,
  answersFor,
  finishes,
  type Offer,
  readiness,
  type Seen,
  tighteningActs,
  type Walk,
  walk,
} from '../../plan/index.js';
import { refused } from '../../quantity/outcome.js';
import type { EntryData } from '../entry.js';
import type { RecordState } from '../state.js';
import { type Decision, jointOf, nothingToAdd, record } from './lookup.js';
import type { Refusal } from './refusal.js';

type ActDone = EntryData['act-done'];

/** Records the act that the walk offers, and no other; the same act again adds nothing. */
export function decideAct(state: RecordState, data: ActDone): Decision {
  const found = jointOf(state, data.joint);
  if (!found.ok) return found;
  const { engine, joint } = found.value;
  const act = tighteningActs(joint).acts.find((one) => actKey(one) === actKey(data));
  if (act === undefined) {
    return refused({ code: 'unknown-act', stage: data.stage, hole: data.hole, stages: joint.stages.length });
  }
  const now = walk(joint, state.facts);
  if (isRecorded(now, data)) return nothingToAdd;
  const refusal = notReady(engine, joint, state, now) ?? notOffered(now, act, data) ?? notSo(act, data);
  return refusal === undefined ? record({ kind: 'act-done', data }) : refused(refusal);
}

/** The act stands recorded for this fastener and round, and the walk does not ask for it again. */
function isRecorded(now: Walk, data: ActDone): boolean {
  if (now.current !== undefined && now.current.kind !== 'place' && actKey(now.current.act) === actKey(data))
    return false;
  return now.recorded.some(
    ({ done }) =>
      actKey(done) === actKey(data) &&
      done.instance === data.instance &&
      done.round === data.round &&
      done.seen === data.seen &&
      finishes(done.seen),
  );
}

/** Before the first act everything must be in place; later a hole that waits for its fastener comes first. */
function notReady(engine: Engine, joint: Joint, state: RecordState, now: Walk): Refusal | undefined {
  if (now.started) return undefined;
  const { blocks } = readiness(engine, joint.id, state.facts);
  return blocks.length > 0 ? { code: 'blocked', blocks } : undefined;
}

function notOffered({ current }: Walk, act: Act, data: ActDone): Refusal | undefined {
  if (current === undefined) return { code: 'joint-finished', joint: data.joint };
  if (current.kind === 'place') {
    return { code: 'place-first', hole: current.hole, instance: current.instance, mustBeNew: current.mustBeNew };
  }
  if (current.act.stage !== act.stage || current.act.hole !== act.hole) return elsewhere(current, data);
  if (current.instance !== data.instance || current.round !== data.round) {
    const expected = { instance: current.instance, round: current.round };
    return { code: 'other-fastener', hole: data.hole, expected, given: { instance: data.instance, round: data.round } };
  }
  const looked = current.kind === 'look' && data.seen !== 'mark-found';
  return looked ? { code: 'look-for-mark', stage: act.stage, hole: act.hole } : undefined;
}

function elsewhere(current: Exclude<Offer, { kind: 'place' }>, data: ActDone): Refusal {
  if (data.stage > current.act.stage) {
    return { code: 'stage-skipped', hole: data.hole, stage: data.stage, missing: current.act.stage };
  }
  return { code: 'out-of-order', given: actKey(data), expected: actKey(current.act) };
}

/** What was seen must be an answer to the act, and agree with the reading where one is taken. */
function notSo(act: Act, data: ActDone): Refusal | undefined {
  const valid = answersFor(act.kind);
  if (!valid.includes(data.seen)) return { code: 'wrong-answer', seen: data.seen, valid };
  if (act.kind !== 'stretch' || data.seen === 'mark-found') return undefined;
  if (data.reading === undefined) return { code: 'reading-needed', hole: data.hole };
  const says = stretchSays(act, data.reading.value);
  return says === data.seen
    ? undefined
    : { code: 'reading-disagrees', reading: data.reading.text, seen: data.seen, says };
}

/** Rounding of a converted reading must not turn a limit into a miss. */
const ROUNDING = 1e-9;

function stretchSays({ target }: Act, stretch: number): Seen {
  if (target.low !== undefined && stretch < target.low - ROUNDING) return 'short';
  return target.high !== undefined && stretch > target.high + ROUNDING ? 'beyond' : 'within';
}
