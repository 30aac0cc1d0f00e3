/** Every size that the readings give: of one place, of parts together, and between the places of a feature. */
import type { InspectionLimit } from '../../engine/index.js';
import type { InspectionPlan, Place } from '../model.js';
import { betweenPlaces } from './between.js';
import type { Bench } from './corrected.js';
import { ownSizes } from './own-sizes.js';
import { pairSizes } from './pair-sizes.js';
import { Read } from './place-readings.js';
import type { RuleOf, SizeEntry } from './size.js';

/** Rows of the sheet that limit a size at a place; the rule by which a maker forms it is part of the row. */
export type LimitsFor = (property: string, place: Place) => readonly InspectionLimit[];

/**
 * All sizes of a plan in its order: first those of each place, then the pairs, then the spreads between places. A size appears as
 * soon as the readings that it needs are there; before that its entry says what is missing.
 */
export function sizesOf(bench: Bench, plan: InspectionPlan, limitsFor: LimitsFor): readonly SizeEntry[] {
  const read = new Read(bench, plan);
  const ruleOf: RuleOf = (property, place) => limitsFor(property, place).find(({ rule }) => rule !== undefined)?.rule;
  const known = new Map<string, SizeEntry>();
  for (const entry of ownSizes(bench, read, ruleOf)) known.set(entry.key, entry);
  for (const entry of pairSizes(bench, read, ruleOf)) {
    const same = known.get(entry.key);
    // A clearance that was measured itself counts before one from the sizes of its parts.
    if (same === undefined || (same.size === undefined && entry.size !== undefined)) known.set(entry.key, entry);
  }
  for (const entry of betweenPlaces(read)) known.set(entry.key, entry);
  return [...known.values()];
}
