/** A joint that somebody has begun to tighten and not finished: the worst place to leave. */
import type { Joint } from '../../engine/index.js';
import type { ActStand, WorkStanding } from '../../plan/index.js';
import type { Bench } from '../bench.js';
import { tighteningStanding } from '../standings.js';

export interface JointUnderWay {
  readonly joint: Joint;
  /** Where its walk stands. */
  readonly words: string;
}

/** The first such joint of the sheet; undefined where none is half tightened. */
export function jointUnderWay(bench: Bench): JointUnderWay | undefined {
  const touched = new Set(bench.facts.flatMap((fact) => (fact.kind === 'act-done' ? [fact.data.joint] : [])));
  for (const joint of bench.engine.joints) {
    if (!touched.has(joint.id)) continue;
    const { begun, finished, progress } = tighteningStanding(bench, joint);
    if (begun && !finished) return { joint, words: progress.words };
  }
  return undefined;
}

/** The act of the plan that tightens it, where that still stands open. */
export function actUnderWay({ stands }: WorkStanding, { joint }: JointUnderWay): ActStand | undefined {
  for (const stand of stands.values()) {
    const { subject } = stand.act;
    if (subject?.kind === 'joint' && subject.joint === joint.id)
      return stand.state === 'done' || stand.state === 'skipped' ? undefined : stand;
  }
  return undefined;
}
export const underWayWords = ({ joint, words }: JointUnderWay): string =>
  `${joint.name} is half tightened (${words}): finish it first`;
