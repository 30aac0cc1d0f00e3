import type { WorkAct, WorkPlan } from './model.js';

/** A plan does not change: what lies behind its closing acts is found once. */
const FOUND = new WeakMap<WorkPlan, Map<string, readonly WorkAct[]>>();

/** The critical acts that lie behind an act, however far back, in the order of the plan. */
export function criticalBefore(plan: WorkPlan, act: string): readonly WorkAct[] {
  const found = FOUND.get(plan) ?? new Map<string, readonly WorkAct[]>();
  FOUND.set(plan, found);
  const known = found.get(act) ?? search(plan, act);
  found.set(act, known);
  return known;
}

function search(plan: WorkPlan, act: string): readonly WorkAct[] {
  const behind = new Set<string>();
  const open = [act];
  for (let id = open.pop(); id !== undefined; id = open.pop()) {
    for (const { from } of plan.before.get(id) ?? []) {
      if (behind.has(from)) continue;
      behind.add(from);
      open.push(from);
    }
  }
  return plan.acts.filter(({ id, critical }) => critical === true && behind.has(id));
}
