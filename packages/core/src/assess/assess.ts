/** Engine and readings seen together: sizes, and what is found about them. */
import type { Engine } from '../engine/index.js';
import { inspectionPlan } from './features/index.js';
import { findingsOf, LimitsAt } from './findings/index.js';
import type { Assessment, InspectionPlan, Readings, Size } from './model.js';
import { benchOf, type Habits, sizesOf, USUAL_HABITS } from './sizes/index.js';

/** What follows from the sheet alone is worked out once for it. */
interface OfSheet {
  readonly plan: InspectionPlan;
  readonly limits: LimitsAt;
}
const SHEETS = new WeakMap<Engine, OfSheet>();
function ofSheet(engine: Engine): OfSheet {
  let known = SHEETS.get(engine);
  if (known === undefined) {
    known = { plan: inspectionPlan(engine), limits: new LimitsAt(engine) };
    SHEETS.set(engine, known);
  }
  return known;
}

/**
 * Sizes with their doubt, and the verdict on each, from the readings that stand. Pure: the same sheet and readings give the same
 * assessment, whatever the order in which independent readings arrived. Nothing that was not read is in.
 */
export function assess(engine: Engine, readings: Readings, habits: Habits = USUAL_HABITS): Assessment {
  const { plan, limits } = ofSheet(engine);
  const bench = benchOf(engine, readings, habits);
  const entries = sizesOf(bench, plan, (property, place) => limits.all(property, place));
  const sizes = new Map<string, Size>();
  for (const { key, size } of entries) if (size !== undefined) sizes.set(key, size);
  const findings = findingsOf({ engine, plan, limits, guardFactor: habits.guardFactor }, entries);
  return { engine, plan, readings, sizes, findings };
}
