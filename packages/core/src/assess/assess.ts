/** Engine and readings seen together: sizes, and what is found about them. */
import type { Engine } from '../engine/index.js';
import { inspectionPlan } from './features/index.js';
import { findingsOf, LimitWindows } from './findings/index.js';
import { limitsOf } from './limits/index.js';
import type { Assessment, InspectionPlan, Readings, Size } from './model.js';
import { benchOf, type Habits, type PlannedSizes, plannedSizes, sizesOf, USUAL_HABITS } from './sizes/index.js';

/** What follows from the sheet alone is worked out once for it. */
interface OfSheet {
  readonly plan: InspectionPlan;
  readonly planned: PlannedSizes;
  readonly limits: LimitWindows;
}
const SHEETS = new WeakMap<Engine, OfSheet>();
function ofSheet(engine: Engine): OfSheet {
  const known = SHEETS.get(engine);
  if (known !== undefined) return known;
  const plan = inspectionPlan(engine);
  const made = {
    plan,
    planned: plannedSizes(engine, plan, (property, place) => limitsOf(engine, property, place)),
    limits: new LimitWindows(engine),
  };
  SHEETS.set(engine, made);
  return made;
}

/**
 * Sizes with their doubt, and the verdict on each, from the readings that stand. Pure: the same sheet and readings give the same
 * assessment, whatever the order in which independent readings arrived. Nothing that was not read is in.
 */
export function assess(engine: Engine, readings: Readings, habits: Habits = USUAL_HABITS): Assessment {
  const { plan, planned, limits } = ofSheet(engine);
  const entries = sizesOf(benchOf(engine, readings, habits), planned);
  const sizes = new Map<string, Size>();
  for (const { size } of entries) if (size !== undefined) sizes.set(size.key, size);
  const findings = findingsOf({ engine, limits, sizes, guardFactor: habits.guardFactor }, entries);
  return { engine, plan, readings, sizes, findings };
}
