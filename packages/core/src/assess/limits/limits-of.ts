import type { Engine, InspectionLimit } from '../../engine/index.js';
import { camJournals, mainJournals } from '../features/journals.js';
import type { Place } from '../model.js';
import { indexOfLimits } from './index-of-limits.js';
import { journalsNamed, kindsNamed } from './scope-words.js';
import { newWindow } from './windows.js';

/** What of a place narrows a limit. */
export type LimitPlace = Partial<Pick<Place, 'cylinder' | 'bank' | 'journal' | 'valve'>>;
/** What is known of the part itself: its size picks its grade where the place does not say. */
export interface KnownPart {
  readonly size?: number;
  readonly grade?: string;
}

/**
 * Rows of the sheet that limit a size at a place, narrowed by cylinder, bank, journal and kind of valve; rows for just this place
 * stand before, and instead of, rows for all. Where the sheet has grades, the part's own grade counts; unknown, it
 * is the grade whose new window holds `size`, else the nearest; without a size all grades come back, and the part must fit one of them.
 */
export function limitsOf(
  engine: Engine,
  property: string,
  place: LimitPlace,
  known: KnownPart = {},
): readonly InspectionLimit[] {
  const rows = (indexOfLimits(engine).get(property) ?? []).map((limit) => ({
    limit,
    told: toldBy(engine, property, limit, place),
  }));
  const fitting = rows.filter(({ told }) => told.every((each) => each.fits));
  const depth = Math.max(0, ...fitting.map(({ told }) => told.length));
  const closest = fitting.filter(({ told }) => told.length === depth).map(({ limit }) => limit);
  return ofGrade(closest, known);
}

/** Each narrowing that the row makes and that the place can answer. */
function toldBy(
  engine: Engine,
  property: string,
  limit: InspectionLimit,
  place: LimitPlace,
): readonly { readonly fits: boolean }[] {
  const told: { readonly fits: boolean }[] = [];
  const { cylinders, bank } = limit.applies ?? {};
  if (cylinders !== undefined && place.cylinder !== undefined) told.push({ fits: cylinders.includes(place.cylinder) });
  if (bank !== undefined && place.bank !== undefined) told.push({ fits: bank === place.bank });
  if (place.valve !== undefined) {
    const kinds = kindsNamed(limit);
    if (kinds.length === 1) told.push({ fits: kinds.includes(place.valve.kind) });
  }
  if (place.journal !== undefined) {
    const journals = journalsNamed(limit, lastJournal(engine, property));
    if (journals !== undefined) told.push({ fits: journals.includes(place.journal) });
  }
  return told;
}

function lastJournal(engine: Engine, property: string): number {
  return property.startsWith('cam-') ? camJournals(engine).count : mainJournals(engine).count;
}

function ofGrade(rows: readonly InspectionLimit[], known: KnownPart): readonly InspectionLimit[] {
  const graded = rows.filter((each) => each.applies?.grade !== undefined);
  if (graded.length < 2) return rows;
  const plain = rows.filter((each) => each.applies?.grade === undefined);
  if (known.grade !== undefined) return [...graded.filter((each) => each.applies?.grade === known.grade), ...plain];
  if (known.size === undefined) return rows;
  const { size } = known;
  const nearest = [...graded].sort((a, b) => away(a, size) - away(b, size))[0];
  return nearest === undefined ? plain : [nearest, ...plain];
}

/** How far a size lies outside a row's new window. */
function away(limit: InspectionLimit, size: number): number {
  const { low = size, high = size } = newWindow(limit) ?? {};
  return Math.max(0, low - size, size - high);
}
