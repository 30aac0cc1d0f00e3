/**
 * The walk through a joint: where the person stands, what comes next, and what every hole looks like. A pure fold of the
 * joint's facts; nothing is done because it was shown, because time passed, or because the next thing was opened.
 */
import type { Joint } from '../../engine/model.js';
import type { Fact } from '../facts.js';
import { judgePlaced } from '../fastening/judge.js';
import { type Act, actKey, type VisitingOrder } from './acts.js';
import type { HoleFastener } from './fastener-now.js';
import { foldJoint, type Ledger, type RecordedAct } from './ledger.js';
import { type Offer, offerNow } from './offer.js';
import { type Standing, standingOf } from './standing.js';

export type HoleMark = 'idle' | 'lit' | 'next' | 'done' | 'missing' | 'wrong' | 'doubt';
export interface HoleStand {
  readonly hole: string;
  readonly mark: HoleMark;
  readonly instance: number;
  /** Acts of this hole that are recorded for the fastener now in it, of all its acts. */
  readonly done: number;
  readonly of: number;
  /** Every act of this hole is recorded; the fastener carries its final mark. */
  readonly final: boolean;
}
export interface WalkProgress {
  /** Place of the current act in its stage, from 1; equal to `of` when the walk is finished. */
  readonly at: number;
  readonly of: number;
  readonly stage: number;
  readonly stages: number;
  readonly label?: string;
  /** Acts recorded and acts in all, over the joint. */
  readonly done: number;
  readonly acts: number;
  /** "7 of 10, stage 2 of 3" */
  readonly words: string;
}
export interface SkippedAct {
  readonly act: Act;
  readonly reason: string;
}
export interface Walk {
  readonly joint: string;
  readonly order: VisitingOrder;
  /** Something has been tightened since the joint was last opened. */
  readonly started: boolean;
  /** Nothing is left to offer. With `skipped` not empty the joint is finished but not complete. */
  readonly finished: boolean;
  readonly current?: Offer;
  /** The act after the current one, to be shown greyed. */
  readonly next?: Act;
  readonly progress: WalkProgress;
  readonly holes: readonly HoleStand[];
  readonly skipped: readonly SkippedAct[];
  /** Acts recorded since the joint was last opened, in order. */
  readonly recorded: readonly RecordedAct[];
}

/**
 * Folds the facts of a joint into the walk.
 *
 * The current act is the first of the printed list that is not recorded for the fastener now in its hole. A fastener that
 * replaced a doubted one has no acts recorded, so it goes through all stages so far by itself, in stage order, before
 * the walk goes on. A hole that waits for its fastener comes before any act.
 *
 * Assumes a loaded joint and facts in the record's order, struck-out ones left out (see `ActStruck`).
 * Source: the sheet for acts and order; common practice, no source, for the rest.
 */
export function walk(joint: Joint, facts: readonly Fact[]): Walk {
  const ledger = foldJoint(joint, facts);
  const standing = standingOf(ledger);
  const current = offerNow(standing);
  const next = current?.kind === 'place' ? standing.open[0] : standing.open[1];
  return {
    joint: joint.id,
    order: ledger.order,
    started: ledger.recorded.length > 0,
    finished: current === undefined,
    ...(current && { current }),
    ...(next && { next }),
    progress: progressOf(standing),
    holes: joint.holes.map((hole) => standOf(standing, hole.id, current, next)),
    skipped: skippedActs(standing),
    recorded: ledger.recorded,
  };
}

function progressOf({ ledger, open, finished }: Standing): WalkProgress {
  const act = open[0] ?? ledger.acts.at(-1);
  const stages = ledger.joint.stages.length;
  const inStage = ledger.acts.filter((one) => one.stage === act?.stage);
  const at = open[0] === undefined ? inStage.length : inStage.indexOf(open[0]) + 1;
  const stage = ledger.joint.stages.findIndex((one) => one.number === act?.stage) + 1;
  return {
    at,
    of: inStage.length,
    stage,
    stages,
    ...(act?.label !== undefined && { label: act.label }),
    done: finished.size,
    acts: ledger.acts.length,
    words: `${at} of ${inStage.length}, stage ${stage} of ${stages}`,
  };
}

function standOf(standing: Standing, hole: string, current: Offer | undefined, next: Act | undefined): HoleStand {
  const { ledger, fasteners, finished } = standing;
  const fastener = fasteners.get(hole);
  const its = ledger.acts.filter((act) => act.hole === hole);
  const done = its.filter((act) => finished.has(act)).length;
  const final = done === its.length && fastener?.waits === undefined;
  const marked = fastener && markOf(ledger, fastener, current, next);
  const mark = marked ?? (final || doneHere(standing, its, current) ? 'done' : 'idle');
  return { hole, mark, instance: fastener?.instance ?? 1, done, of: its.length, final };
}

function markOf(ledger: Ledger, fastener: HoleFastener, current: Offer | undefined, next: Act | undefined) {
  if (fastener.waits === 'missing' || fastener.waits === 'opened') return 'missing';
  if (fastener.waits !== undefined) return 'doubt';
  if (fastener.placed !== undefined && judgePlaced(ledger.joint, fastener.placed).verdict !== 'right') return 'wrong';
  if (current !== undefined && current.kind !== 'place' && current.act.hole === fastener.hole) {
    return current.kind === 'look' ? 'doubt' : 'lit';
  }
  return next?.hole === fastener.hole ? 'next' : undefined;
}

/** Recorded for the stage that the walk stands in; other holes count only when all their acts are recorded. */
function doneHere({ frontier, finished }: Standing, its: readonly Act[], current: Offer | undefined): boolean {
  const stage = current === undefined || current.kind === 'place' ? frontier : current.act.stage;
  const here = its.filter((act) => act.stage === stage);
  return here.length > 0 && here.every((act) => finished.has(act));
}

function skippedActs({ ledger, finished }: Standing): readonly SkippedAct[] {
  return ledger.acts.flatMap((act) => {
    const reason = ledger.skipped.get(actKey(act));
    return reason === undefined || finished.has(act) ? [] : [{ act, reason }];
  });
}
