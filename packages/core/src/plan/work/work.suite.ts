/** What the tests of the work plan share: every sheet of the project with its worksheets. */
import { inspectionPlan } from '../../assess/features/index.js';
import { SHEETS } from '../../assess/limits/limit.suite.js';
import type { Engine } from '../../engine/model.js';
import { workPlan } from './build-plan.js';
import type { WorkPlan, WorksheetToFill } from './model.js';

export const worksheetsOf = (engine: Engine): readonly WorksheetToFill[] =>
  inspectionPlan(engine).features.map(({ kind, places }) => ({
    feature: kind.id,
    title: kind.title,
    vanishes: kind.vanishes === true,
    places,
  }));
export const planOf = (engine: Engine): WorkPlan => workPlan(engine, worksheetsOf(engine));
export const PLANS: readonly (readonly [string, Engine, WorkPlan])[] = SHEETS.map(([path, engine]) => [
  path,
  engine,
  planOf(engine),
]);
export function planNamed(name: string): WorkPlan {
  const found = PLANS.find(([path]) => path.includes(name));
  if (found === undefined) throw new Error(`no sheet ${name}`);
  return found[2];
}

/** Every act from which this one follows, however far. */
export function allBefore(plan: WorkPlan, act: string): ReadonlySet<string> {
  const found = new Set<string>();
  const open = [act];
  for (let id = open.pop(); id !== undefined; id = open.pop())
    for (const { from } of plan.before.get(id) ?? []) {
      if (found.has(from)) continue;
      found.add(from);
      open.push(from);
    }
  return found;
}
/** Whether the one comes before the other on some way through the plan. */
export const comesBefore = (plan: WorkPlan, first: string, then: string): boolean => allBefore(plan, then).has(first);
