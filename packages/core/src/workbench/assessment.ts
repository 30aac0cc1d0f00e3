/** Engine and readings judged together, once for each moment of the log however many views ask. */
import { type Assessment, assess, type Finding } from '../assess/index.js';
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

const indexed = new WeakMap<Assessment, ReadonlyMap<string, readonly Finding[]>>();
const keyOf = (property: string, place: string): string => `${property}@${place}`;

/** Findings of one property at one place. */
export function findingsAt(assessment: Assessment, property: string, place: string): readonly Finding[] {
  let index = indexed.get(assessment);
  if (index === undefined) {
    const made = new Map<string, Finding[]>();
    for (const finding of assessment.findings) {
      const key = keyOf(finding.property, finding.place);
      const list = made.get(key);
      if (list === undefined) made.set(key, [finding]);
      else list.push(finding);
    }
    index = made;
    indexed.set(assessment, index);
  }
  return index.get(keyOf(property, place)) ?? [];
}
