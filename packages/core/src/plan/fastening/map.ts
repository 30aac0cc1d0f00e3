/** The fastener map: what belongs in every hole, what is there, and what to lay out before the first one goes in. */
import {
  type FastenerKind,
  fastenerOfHole,
  type Hole,
  type Joint,
  type LayOutRow,
  layOut,
  type ThreadTreatment,
} from '../../engine/index.js';
import type { Fact } from '../facts.js';
import { fastenerNow, type HoleFastener } from '../tightening/fastener-now.js';
import { foldJoint } from '../tightening/ledger.js';
import { type FastenerJudgement, judgePlaced } from './judge.js';

export interface MapRow {
  readonly hole: Hole;
  readonly expected?: FastenerKind;
  readonly onThread: ThreadTreatment;
  readonly underHead: ThreadTreatment;
  /** The fastener now in the hole, or the instance that it waits for. */
  readonly fastener: HoleFastener;
  readonly state: 'empty' | 'right' | 'wrong';
  readonly judgement?: FastenerJudgement;
}
export interface FastenerMap {
  readonly joint: string;
  readonly layOut: readonly LayOutRow[];
  readonly rows: readonly MapRow[];
  readonly placed: number;
  readonly finished: boolean;
}

/** Every hole of the joint in the sheet's order, judged by what is recorded; finished when every one is right. */
export function fastenerMap(joint: Joint, facts: readonly Fact[]): FastenerMap {
  const ledger = foldJoint(joint, facts);
  const rows = joint.holes.map((hole) => rowOf(joint, hole, fastenerNow(ledger, hole.id)));
  const placed = rows.filter((row) => row.state === 'right').length;
  return { joint: joint.id, layOut: layOut(joint), rows, placed, finished: placed === rows.length };
}

function rowOf(joint: Joint, hole: Hole, fastener: HoleFastener): MapRow {
  const expected = fastenerOfHole(joint, hole.id);
  const { onThread, underHead } = hole;
  const base = { hole, onThread, underHead, fastener, ...(expected && { expected }) };
  if (fastener.placed === undefined) return { ...base, state: 'empty' };
  const judgement = judgePlaced(joint, fastener.placed);
  return { ...base, state: judgement.verdict === 'right' ? 'right' : 'wrong', judgement };
}
