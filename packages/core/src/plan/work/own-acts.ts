import { SIGNED_OFF } from './build-plan.js';
import type { WorkFact, WorkFactData } from './facts.js';
import type { Edge, WorkAct, WorkPlan } from './model.js';

type Added = WorkFactData['work-act-added'];

/**
 * The plan of the engine with what the person made of it: acts put in, and acts held for critical. An own act is done where the act is done that
 * it follows; redoing it opens what was made to wait for it. One that names acts which the plan has not, or an id that it has, is left out; whether
 * it may be recorded is for `judgeWork`. Without such facts it is the same plan.
 */
export function withOwnActs(plan: WorkPlan, facts: readonly WorkFact[]): WorkPlan {
  return facts.reduce((made, fact) => {
    if (fact.kind === 'work-act-added') return withAct(made, fact.data);
    return fact.kind === 'work-act-critical' ? withCritical(made, fact.data.act) : made;
  }, plan);
}

function withAct(plan: WorkPlan, added: Added): WorkPlan {
  const { id, after, before = SIGNED_OFF } = added;
  const [place, end] = [after, before].map((name) => plan.acts.findIndex((act) => act.id === name)) as [number, number];
  const earlier = plan.acts[place];
  if (earlier === undefined || end <= place || plan.byId.has(id)) return plan;
  const act = ownAct(added, earlier);
  const edges: readonly Edge[] = [
    { from: after, to: id, kind: 'order', why: 'the person put it after this' },
    { from: id, to: before, kind: 'built-on', why: 'the person put it before this' },
  ];
  return {
    ...plan,
    acts: [...plan.acts.slice(0, place + 1), act, ...plan.acts.slice(place + 1)],
    byId: new Map([...plan.byId, [id, act]]),
    before: edges.reduce((map, edge) => withEdge(map, edge.to, edge), plan.before),
    after: edges.reduce((map, edge) => withEdge(map, edge.from, edge), plan.after),
  };
}

function ownAct({ id, does, ask, answer, asked, minutes, critical, why }: Added, earlier: WorkAct): WorkAct {
  const { operation, place, chunk } = earlier;
  return {
    id,
    rule: id,
    operation,
    place,
    chunk,
    does,
    ask,
    answer,
    minutes,
    own: why,
    ...(asked && { asked }),
    ...(critical && { critical }),
  };
}

const withEdge = (map: WorkPlan['before'], key: string, edge: Edge): WorkPlan['before'] =>
  new Map([...map, [key, [...(map.get(key) ?? []), edge]]]);

function withCritical(plan: WorkPlan, id: string): WorkPlan {
  const act = plan.byId.get(id);
  if (act === undefined || act.critical === true) return plan;
  const critical: WorkAct = { ...act, critical: true };
  return {
    ...plan,
    acts: plan.acts.map((one) => (one === act ? critical : one)),
    byId: new Map([...plan.byId, [id, critical]]),
  };
}
