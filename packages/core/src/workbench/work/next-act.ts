import type { ActStand, WorkAct, WorkStanding } from '../../plan/index.js';

/**
 * The act that comes next once this one is done: what it alone holds up, or what is ready beside it; of the same operation first, then in
 * the order of the plan. Undefined where nothing follows before another thing is settled.
 */
export function actAfter({ plan, stands, ready }: WorkStanding, act: WorkAct): WorkAct | undefined {
  const freed = (plan.after.get(act.id) ?? []).flatMap(({ to }) => {
    const stand = stands.get(to);
    return stand !== undefined && waitsOnlyFor(stand, act) ? [stand] : [];
  });
  const open = [...freed, ...ready].filter((stand) => stand.act.id !== act.id).map((stand) => stand.act);
  const here = open.filter(({ operation }) => operation === act.operation);
  const first = new Set(here.length > 0 ? here : open);
  return plan.acts.find((one) => first.has(one));
}

/** A closing act also waits for the second look that this one will owe. */
function waitsOnlyFor({ act, state, waitsFor }: ActStand, done: WorkAct): boolean {
  if (state !== 'waiting' || act.awaits !== undefined) return false;
  if (act.closes === true && done.critical === true) return false;
  return waitsFor.every((blocker) => blocker.kind === 'act' && blocker.act === done.id);
}
