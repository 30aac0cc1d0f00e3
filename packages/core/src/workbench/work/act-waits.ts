/** What an act waits for, in words; the same wait at many places is told once. */
import type { ActStand, Blocker, WorkAct, WorkPlan } from '../../plan/index.js';
import type { WorkWait } from '../work-views.js';
import { actWords } from './act-words.js';

interface Alike {
  readonly wait: WorkWait;
  count: number;
}

/** "Tighten the main caps, main 2: it is the step before (and 3 more like it)". */
export function waitsOf(plan: WorkPlan, { waitsFor }: ActStand): readonly WorkWait[] {
  const groups = new Map<string, Alike>();
  for (const blocker of waitsFor) {
    const act = blocker.kind === 'aid' ? undefined : plan.byId.get(blocker.act);
    const key = `${blocker.kind} ${act?.rule ?? (blocker.kind === 'aid' ? blocker.aid : blocker.act)} ${blocker.why}`;
    const group = groups.get(key);
    if (group === undefined) groups.set(key, { wait: waitOf(blocker, act), count: 1 });
    else group.count += 1;
  }
  return [...groups.values()].map(({ wait, count }) =>
    count === 1 ? wait : { ...wait, words: `${wait.words} (and ${count - 1} more like it)` },
  );
}

function waitOf(blocker: Blocker, act: WorkAct | undefined): WorkWait {
  if (blocker.kind === 'aid')
    return { kind: 'aid', words: `${blocker.count} × ${blocker.aid} not returned: ${blocker.why}` };
  const name = act === undefined ? blocker.act : actWords(act);
  const words = blocker.kind === 'act' ? `${name}: ${blocker.why}` : `Second look: ${name}: ${blocker.why}`;
  return { kind: blocker.kind, words, act: blocker.act };
}
