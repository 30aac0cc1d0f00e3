import type { Engine, InspectionLimit } from '../../engine/index.js';
import type { Place } from '../model.js';
import { type Narrowed, narrowedRows } from './narrowed.js';
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
 * stand before, and instead of, rows for all; only a wear limit that the narrower rows do not print is taken from the wider. Where
 * the sheet has grades, the part's own grade counts; unknown, it is the grade whose new window holds `size`, else the nearest;
 * without a size all grades come back, and the part must fit one of them.
 */
export function limitsOf(
  engine: Engine,
  property: string,
  place: LimitPlace,
  known: KnownPart = {},
): readonly InspectionLimit[] {
  const fitting = narrowedRows(engine, property).flatMap((row) => {
    const told = toldBy(row, place);
    return told === undefined ? [] : [{ limit: row.limit, told }];
  });
  const closest = deepest(fitting);
  const own = ofGrade(closest, known);
  if (own.some(({ wear }) => wear !== undefined)) return own;
  return [...own, ...deepest(fitting.filter(({ limit }) => limit.wear !== undefined && !closest.includes(limit)))];
}

interface Told {
  readonly limit: InspectionLimit;
  readonly told: number;
}
/** Rows that are narrowed most. */
function deepest(rows: readonly Told[]): readonly InspectionLimit[] {
  const depth = Math.max(0, ...rows.map(({ told }) => told));
  return rows.filter(({ told }) => told === depth).map(({ limit }) => limit);
}

/** How many of the row's narrowings the place answers, all with yes; undefined where one says no. */
function toldBy(row: Narrowed, { cylinder, bank, valve, journal }: LimitPlace): number | undefined {
  let told = 0;
  const answered = (asked: boolean, yes: boolean): boolean => {
    if (asked) told += 1;
    return !asked || yes;
  };
  const fits = [
    answered(row.cylinders !== undefined && cylinder !== undefined, row.cylinders?.includes(cylinder ?? 0) ?? true),
    answered(row.bank !== undefined && bank !== undefined, row.bank === bank),
    answered(row.kind !== undefined && valve !== undefined, row.kind === valve?.kind),
    answered(row.journals !== undefined && journal !== undefined, row.journals?.includes(journal ?? 0) ?? true),
  ];
  return fits.every((yes) => yes) ? told : undefined;
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
