/** Engine and readings judged together, once for each moment of the log however many views ask. */
import { type Assessment, assess, type Finding, type InspectionPlan } from '../assess/index.js';
import type { Bench } from './bench.js';
import { readingsOf } from './readings.js';

const kept = new WeakMap<Bench, Assessment>();

/** The assessment of a bench. It depends on engine and log alone, so the same bench always has the same one. */
export function assessmentOf(bench: Bench): Assessment {
  const before = kept.get(bench);
  if (before !== undefined) return before;
  const made = assess(bench.engine, readingsOf(bench));
  kept.set(bench, made);
  return made;
}

/** Where the findings of a property at a place stand in the list; the same for every moment of one plan. */
type Index = ReadonlyMap<string, ReadonlyMap<string, readonly number[]>>;
const indexed = new WeakMap<InspectionPlan, { readonly count: number; readonly index: Index }>();

function indexOf({ plan, findings }: Assessment): Index {
  const known = indexed.get(plan);
  if (known?.count === findings.length) return known.index;
  const index = new Map<string, Map<string, number[]>>();
  for (const [at, { property, place }] of findings.entries()) {
    const places = index.get(property) ?? new Map<string, number[]>();
    index.set(property, places.set(place, [...(places.get(place) ?? []), at]));
  }
  indexed.set(plan, { count: findings.length, index });
  return index;
}

/** Findings of one property at one place. */
export const findingsAt = (assessment: Assessment, property: string, place: string): readonly Finding[] =>
  indexOf(assessment)
    .get(property)
    ?.get(place)
    ?.map((at) => assessment.findings[at]!) ?? [];
