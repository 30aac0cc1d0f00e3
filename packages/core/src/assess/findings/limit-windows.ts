/** The windows in which a size is held, from the rows of the sheet; they change with the sheet only. */
import type { Engine, InspectionLimit, Window } from '../../engine/index.js';
import { limitsOf, newWindow, wearWindow } from '../limits/index.js';
import type { Held } from '../model.js';
import type { PlannedSize } from '../sizes/index.js';

export interface LimitWindow {
  readonly against: Held['against'];
  readonly limit: InspectionLimit;
  readonly window: Window<number>;
  /** That end of the new window which a wear limit says nothing about. */
  readonly openEnd: Window<number> | undefined;
}

function windowsOf(limits: readonly InspectionLimit[], sense: PlannedSize['sense']): readonly LimitWindow[] {
  const anyNew = limits.map(newWindow).find((window) => window !== undefined);
  return limits.flatMap((limit) => {
    const fresh = newWindow(limit);
    const worn = wearWindow(limit, sense, fresh ?? anyNew);
    const windows: LimitWindow[] = [];
    if (fresh !== undefined) windows.push({ against: 'new', limit, window: fresh, openEnd: undefined });
    if (worn !== undefined)
      windows.push({ against: 'wear', limit, window: worn, openEnd: openEnd(worn, fresh ?? anyNew) });
    return windows;
  });
}

function openEnd(worn: Window<number>, fresh: Window<number> | undefined): LimitWindow['openEnd'] {
  const low = worn.low === undefined ? fresh?.low : undefined;
  const high = worn.high === undefined ? fresh?.high : undefined;
  if (low === undefined && high === undefined) return undefined;
  return { ...(low !== undefined && { low }), ...(high !== undefined && { high }) };
}

/** The windows in which a size is held. */
export interface Windows {
  readonly all: readonly LimitWindow[];
  /** Grades that the size may be of, where the sheet has grades and nobody noted which one the part is. */
  readonly grades: readonly string[];
}
const UNGRADED: readonly string[] = [];
const sameWindow = ({ window: one }: LimitWindow, { window: other }: LimitWindow): boolean =>
  one.low === other.low && one.high === other.high;

/** Windows of every size of a sheet, found once each; where the sheet has grades, by the size of the part. */
export class LimitWindows {
  readonly #engine: Engine;
  readonly #plain = new Map<PlannedSize, Windows>();
  readonly #ahead = new Map<PlannedSize, readonly LimitWindow[]>();
  readonly #graded = new Map<string, readonly LimitWindow[]>();

  constructor(engine: Engine) {
    this.#engine = engine;
  }
  /** For a size with its expanded uncertainty. */
  of(planned: PlannedSize, size: number, expanded: number): Windows {
    const before = this.#plain.get(planned);
    if (before !== undefined) return before;
    const graded = planned.limits.filter(isGraded);
    if (graded.length > 1) return this.#byGrade(planned, graded, size, expanded);
    const plain = { all: windowsOf(planned.limits, planned.sense), grades: UNGRADED };
    this.#plain.set(planned, plain);
    return plain;
  }
  /** Before there is a size. Grades that touch are one range; where they leave gaps, it hangs on the grade of the part. */
  ahead(planned: PlannedSize): readonly LimitWindow[] {
    const graded = planned.limits.filter(isGraded);
    if (graded.length < 2) return this.of(planned, 0, 0).all;
    const known = this.#ahead.get(planned);
    if (known !== undefined) return known;
    const all = windowsOf(planned.limits, planned.sense).map((one) => withNeighbours(one, graded));
    const sure = all.filter((one) => all.every((other) => other.against !== one.against || sameWindow(one, other)));
    this.#ahead.set(planned, sure);
    return sure;
  }
  #byGrade(planned: PlannedSize, graded: readonly InspectionLimit[], size: number, expanded: number): Windows {
    const { limits, sense, property, place, key } = planned;
    const own = limitsOf(this.#engine, property, place, { size });
    const name = `${key} ${limits.map((limit) => (own.includes(limit) ? 1 : 0)).join('')}`;
    const all = this.#graded.get(name) ?? windowsOf(own, sense).map((one) => withNeighbours(one, graded));
    this.#graded.set(name, all);
    return { all, grades: gradesOf(own.filter(isGraded), graded, { low: size - expanded, high: size + expanded }) };
  }
}
const isGraded = ({ applies }: InspectionLimit): boolean => applies?.grade !== undefined;

/**
 * A part of unknown grade must fit one of them. Grades whose new windows touch are one range to it: at their common end it is of
 * the one or of the other, and never outside.
 */
function withNeighbours(one: LimitWindow, graded: readonly InspectionLimit[]): LimitWindow {
  if (one.against !== 'new' || !isGraded(one.limit)) return one;
  let { low = Number.NEGATIVE_INFINITY, high = Number.POSITIVE_INFINITY } = one.window;
  for (const { low: next = low, high: last = high } of graded.flatMap((row) => newWindow(row) ?? []).toSorted(byLow))
    if (next <= high + NANOMETRE && last >= low - NANOMETRE) [low, high] = [Math.min(low, next), Math.max(high, last)];
  return { ...one, window: { ...(Number.isFinite(low) && { low }), ...(Number.isFinite(high) && { high }) } };
}
const NANOMETRE = 1e-9;
const byLow = (one: Window<number>, other: Window<number>): number =>
  (one.low ?? Number.NEGATIVE_INFINITY) - (other.low ?? Number.NEGATIVE_INFINITY);

/** Grades that a size may be of, its doubt included; the nearest one where it lies in none. */
function gradesOf(
  nearest: readonly InspectionLimit[],
  graded: readonly InspectionLimit[],
  { low, high }: { readonly low: number; readonly high: number },
): readonly string[] {
  const reached = graded.filter((row) => {
    const window = newWindow(row);
    return window !== undefined && (window.low ?? low) <= high && (window.high ?? high) >= low;
  });
  const rows = reached.length > 0 ? reached : nearest;
  return [...new Set(rows.flatMap(({ applies }) => applies?.grade ?? []))];
}
