/** Rules for what happens around tightening: gasket, fasteners, doubts, interruptions, opening again. */
import type { Joint } from '../../engine/index.js';
import {
  fastenerMap,
  gasketItems,
  judgePlaced,
  type MapRow,
  skipName,
  tighteningActs,
  walk,
} from '../../plan/index.js';
import { done, type Outcome, refused } from '../../quantity/outcome.js';
import { canonicalText } from '../canonical.js';
import type { EntryData } from '../entry.js';
import type { RecordState } from '../state.js';
import { type Decision, engineOf, jointOf, nothingToAdd, record } from './lookup.js';
import type { Refusal } from './refusal.js';

/** The last answer to an item counts; the same answer again adds nothing. */
export function decideGasket(state: RecordState, data: EntryData['gasket-checked']): Decision {
  const engine = engineOf(state);
  if (!engine.ok) return engine;
  const head = engine.value.heads.find((one) => one.id === data.head);
  if (head === undefined) {
    return refused({ code: 'unknown-head', head: data.head, valid: engine.value.heads.map((one) => one.id) });
  }
  const valid = gasketItems(head);
  if (!valid.includes(data.item)) return refused({ code: 'unknown-item', item: data.item, valid });
  const last = lastAbout(state, data);
  return last !== undefined && canonicalText(last) === canonicalText(data)
    ? nothingToAdd
    : record({ kind: 'gasket-checked', data });
}

/** The last answer to the item, unless a joint was opened since: then the same answer is news. */
function lastAbout(state: RecordState, { head, item }: EntryData['gasket-checked']) {
  const joints = state.engine?.joints.filter((joint) => joint.head === head).map((joint) => joint.id) ?? [];
  let last: EntryData['gasket-checked'] | undefined;
  for (const fact of state.facts) {
    if (fact.kind === 'gasket-checked' && fact.data.head === head && fact.data.item === item) last = fact.data;
    if (fact.kind === 'joint-opened' && joints.includes(fact.data.joint)) last = undefined;
  }
  return last;
}

/** The joint and the row of its fastener map that an entry speaks of. */
function holeOf(
  state: RecordState,
  data: { readonly joint: string; readonly hole: string },
): Outcome<{ readonly joint: Joint; readonly row: MapRow }, Refusal> {
  const found = jointOf(state, data.joint);
  if (!found.ok) return found;
  const { joint } = found.value;
  const row = fastenerMap(joint, state.facts).rows.find((one) => one.hole.id === data.hole);
  const valid = joint.holes.map((hole) => hole.id);
  return row === undefined ? refused({ code: 'unknown-hole', hole: data.hole, valid }) : done({ joint, row });
}

export function decidePlaced(state: RecordState, data: EntryData['fastener-placed']): Decision {
  const found = holeOf(state, data);
  if (!found.ok) return found;
  const { joint, row } = found.value;
  const { placed } = row.fastener;
  if (placed !== undefined && canonicalText(placed) === canonicalText(data)) return nothingToAdd;
  const judgement = judgePlaced(joint, data);
  if (judgement.verdict !== 'right') return refused({ code: 'wrong-fastener', judgement });
  const refusal = notHere(row, data);
  return refusal === undefined ? record({ kind: 'fastener-placed', data }) : refused(refusal);
}

function notHere({ fastener }: MapRow, data: EntryData['fastener-placed']): Refusal | undefined {
  const { hole, instance, mustBeNew, mustMeasure, placed } = fastener;
  if (placed !== undefined) return { code: 'already-placed', hole, instance };
  if (data.instance !== instance) return otherInstance(hole, instance, data.instance);
  if (data.condition === 'new') return undefined;
  if (mustBeNew) return { code: 'must-be-new', hole, instance };
  return mustMeasure && data.length === undefined ? { code: 'must-be-measured', hole, instance } : undefined;
}

const otherInstance = (hole: string, expected: number, given: number): Refusal => ({
  code: 'other-fastener',
  hole,
  expected: { instance: expected, round: 1 },
  given: { instance: given, round: 1 },
});

/** A fastener already taken out of service is not doubted twice. */
export function decideDoubted(state: RecordState, data: EntryData['fastener-doubted']): Decision {
  const found = holeOf(state, data);
  if (!found.ok) return found;
  const { row } = found.value;
  const { instance, waits } = row.fastener;
  if (waits === 'doubted' && data.instance === instance - 1) return nothingToAdd;
  if (waits !== undefined || data.instance !== instance) {
    return refused(otherInstance(data.hole, instance, data.instance));
  }
  return record({ kind: 'fastener-doubted', data });
}

export function decideResumed(state: RecordState, data: EntryData['walk-resumed']): Decision {
  const found = jointOf(state, data.joint);
  return found.ok ? record({ kind: 'walk-resumed', data }) : found;
}

/** A joint in which nothing was placed or tightened since it was last opened is open already. */
export function decideOpened(state: RecordState, data: EntryData['joint-opened']): Decision {
  const found = jointOf(state, data.joint);
  if (!found.ok) return found;
  const { rows } = fastenerMap(found.value.joint, state.facts);
  const untouched = !walk(found.value.joint, state.facts).started && rows.every((row) => row.state === 'empty');
  return untouched ? nothingToAdd : record({ kind: 'joint-opened', data });
}

/** A tightening act can be skipped while it is open; other skips are free words. */
export function decideSkipped(state: RecordState, data: EntryData['skipped']): Decision {
  if (state.facts.some((fact) => fact.kind === 'skipped' && fact.data.what === data.what) && !reopened(state, data)) {
    return nothingToAdd;
  }
  if (!data.what.startsWith('act:')) return record({ kind: 'skipped', data });
  const engine = engineOf(state);
  if (!engine.ok) return engine;
  const named = engine.value.joints.some((joint) =>
    tighteningActs(joint).acts.some((act) => skipName(joint.id, act) === data.what),
  );
  return named ? record({ kind: 'skipped', data }) : refused({ code: 'unknown-item', item: data.what, valid: [] });
}

/** A skip from before the joint was opened does not hold any more. */
function reopened(state: RecordState, { what }: EntryData['skipped']): boolean {
  const skippedAt = state.facts.findLastIndex((fact) => fact.kind === 'skipped' && fact.data.what === what);
  const opened = (joint: string) => what.startsWith(`act:${joint}/`);
  return state.facts.slice(skippedAt).some((fact) => fact.kind === 'joint-opened' && opened(fact.data.joint));
}
