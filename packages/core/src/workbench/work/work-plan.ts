/** The plan of the whole work on a bench: that of its engine, with the acts that the person put in. */
import { inspectionPlan } from '../../assess/index.js';
import type { Engine } from '../../engine/index.js';
import { type WorkFact, type WorkPlan, withOwnActs, workPlan } from '../../plan/index.js';
import type { Bench } from '../bench.js';
import { ownFacts } from './own-facts.js';

const ofEngine = new WeakMap<Engine, WorkPlan>();
/** What the sheet alone asks for; worked out once for each engine. */
export function planOfEngine(engine: Engine): WorkPlan {
  const known = ofEngine.get(engine);
  if (known !== undefined) return known;
  const worksheets = inspectionPlan(engine).features.map(({ kind, places }) => ({
    feature: kind.id,
    title: kind.title,
    vanishes: kind.vanishes === true,
    places,
  }));
  const plan = workPlan(engine, worksheets);
  ofEngine.set(engine, plan);
  return plan;
}

interface Owned {
  readonly key: string;
  readonly plan: WorkPlan;
}
/** Own acts are few and stay: the plan with them is made once, not at each entry. */
const owned = new WeakMap<WorkPlan, Owned>();
const keyOf = (facts: readonly WorkFact[]) => facts.map(({ entry }) => entry).join(' ');

/** The plan that holds now. */
export function planAt(bench: Bench): WorkPlan {
  const plan = planOfEngine(bench.engine);
  const facts = ownFacts(bench);
  if (facts.length === 0) return plan;
  const known = owned.get(plan);
  const key = keyOf(facts);
  if (known?.key === key) return known.plan;
  const made = withOwnActs(plan, facts);
  owned.set(plan, { key, plan: made });
  return made;
}
