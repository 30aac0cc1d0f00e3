import type { WorkFact } from './facts.js';
import type { WorkAct, WorkPlan } from './model.js';
import type { Done } from './second-look.js';
import { workStanding } from './standing.js';

/**
 * How an act is verified on return. `touch`: look and feel again. `look`: it cannot be undone; its mark, cut or seat is looked for, and it is
 * never done again. `walk`: its joint asks, fastener by fastener. `read`: what was written is read again.
 */
export type Verify = 'touch' | 'look' | 'walk' | 'read';
export interface ActToVerify {
  readonly act: WorkAct;
  readonly done: Done;
  readonly how: Verify;
  /** Never again what cannot be undone; anything else may be repeated where the look leaves a doubt. */
  readonly mayRepeat: boolean;
  readonly words: string;
}
export interface WorkReturn {
  /** Up to three, the most recent one last. */
  readonly verify: readonly ActToVerify[];
  /** Acts that can be next, cannot be undone, and may have been begun without a record: looked at before they are offered. */
  readonly mayHaveBegun: readonly WorkAct[];
  /** The work was left where nobody should stop, and why. */
  readonly leftBadly?: string;
}

const ACTS_BACK = 3;

/**
 * What to ask of a person who comes back: the last three acts that still stand are verified, not done again. Undefined where nothing was
 * done yet, or all of it is signed.
 *
 * Source: going back three steps after an interruption, maintenance technician handbook, human factors chapter, as quoted in an encyclopedia
 * article on distraction (read); the rest common practice, no source.
 */
export function returnToWork(plan: WorkPlan, facts: readonly WorkFact[]): WorkReturn | undefined {
  const standing = workStanding(plan, facts);
  const last = standing.lately.at(-1);
  if (last === undefined || standing.signedOff) return undefined;
  const badPause = plan.byId.get(last.data.act)?.badPause;
  return {
    verify: standing.lately.slice(-ACTS_BACK).flatMap((done) => toVerify(plan, done)),
    mayHaveBegun: standing.ready.map(({ act }) => act).filter(({ noReturn }) => noReturn !== undefined),
    ...(badPause !== undefined && { leftBadly: badPause }),
  };
}

function toVerify(plan: WorkPlan, done: Done): readonly ActToVerify[] {
  const act = plan.byId.get(done.data.act);
  if (act === undefined) return [];
  const how = howOf(act);
  return [{ act, done, how, mayRepeat: act.noReturn === undefined, words: wordsOf(act, how) }];
}

function howOf({ answer, noReturn }: WorkAct): Verify {
  if (answer === 'joint-walk') return 'walk';
  if (noReturn !== undefined) return 'look';
  return answer === 'value' || answer === 'felt-or-seen' ? 'touch' : 'read';
}

function wordsOf({ ask, noReturn }: WorkAct, how: Verify): string {
  switch (how) {
    case 'walk':
      return noReturn === undefined
        ? 'Go round the marks; the joint itself says where it goes on.'
        : `Look for the mark on each; turn nothing again: ${noReturn}.`;
    case 'look':
      return `Look whether it is as recorded; do not do it again: ${noReturn}.`;
    case 'touch':
      return `Touch it and compare with what was recorded: ${ask}`;
    case 'read':
      return `Read what was recorded and lay a hand on the part: ${ask}`;
  }
}
