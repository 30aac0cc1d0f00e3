/** A size held against the printed limits: as new, and for use. */
import { conformance, type Distance, judge, nearestLimit, verdictOf } from '../../calc/metrology/index.js';
import type { InspectionLimit, Window } from '../../engine/index.js';
import type { Held, VerdictWord } from '../model.js';
import type { Disagreement, FormedSize, Judged, SizeEntry } from '../sizes/index.js';
import type { LimitWindow } from './limit-windows.js';

/** A size that is known, with what its repeats say. */
export interface KnownSize extends SizeEntry {
  readonly size: FormedSize;
}
/** Expanded uncertainty is this many standard ones. */
export const COVERAGE = 2;

/** A verdict with the value that was judged. */
interface Found {
  readonly of: Judged;
  readonly verdict: VerdictWord;
  readonly nearest: Distance | undefined;
}

/**
 * Judgement of a size in a window by the guarded rule: in where the expanded uncertainty (k = 2) still fits, near inside of that, out
 * beyond the limit; repeats that disagree are to be read again before anything is said. Of the ends of a part the worse one counts.
 * Source: calc/metrology/decision and judge.
 */
function judged(
  { size, disagreement }: KnownSize,
  ends: readonly Judged[],
  window: Window<number>,
  guardFactor: number,
): Found {
  if (disagreement !== undefined) return disagreed(size, disagreement, window, guardFactor);
  const of = worseOf(ends, window.low, window.high);
  const nearest = nearestLimit(of.value, window);
  const verdict = nearest === undefined ? 'no data' : guarded(nearest.distance, guardFactor * COVERAGE * of.u);
  return { of, verdict, nearest };
}
const guarded = (distance: number, guard: number): VerdictWord =>
  verdictOf(distance, { rule: 'guarded', guard, near: 0 });

function disagreed(of: FormedSize, by: Disagreement, window: Window<number>, guardFactor: number): Found {
  // Undefined only where the doubt is not known, and here it always is.
  const { verdict, nearest } = judge({
    rule: 'guarded',
    readings: by.readings,
    agreement: by.allowed,
    expanded: COVERAGE * of.u,
    guardFactor,
    ...window,
  })!;
  return { of, verdict, nearest };
}
/** The end that has less room to a limit. */
function worseOf(ends: readonly Judged[], low = Number.NEGATIVE_INFINITY, high = Number.POSITIVE_INFINITY): Judged {
  let worse = ends[0]!;
  for (let at = 1; at < ends.length; at += 1) {
    const { value } = ends[at]!;
    if (Math.min(value - low, high - value) < Math.min(worse.value - low, high - worse.value)) worse = ends[at]!;
  }
  return worse;
}
const farther = (one: Found, other: Found): boolean => (one.nearest?.distance ?? 0) < (other.nearest?.distance ?? 0);

/** One row of the sheet with what it says about the size. */
class HeldSize implements Held {
  readonly against: Held['against'];
  readonly limit: InspectionLimit;
  readonly window: Window<number>;
  readonly verdict: VerdictWord;
  readonly distance?: number;
  readonly nearEnd?: 'low' | 'high';
  readonly #of: Judged;

  constructor({ against, limit, window }: LimitWindow, { of, verdict, nearest }: Found) {
    this.against = against;
    this.limit = limit;
    this.window = window;
    this.verdict = verdict;
    this.#of = of;
    if (nearest === undefined) return;
    this.distance = nearest.distance;
    this.nearEnd = nearest.side;
  }
  /** Chance that the true size is inside. */
  get inside(): number {
    return conformance(this.#of.value, this.#of.u, this.window).inside;
  }
}

export interface HeldAll {
  readonly held: readonly Held[];
  /** Whether it is as new; absent where no new size is printed. */
  readonly asNew?: VerdictWord | undefined;
  /** Whether it may be used; absent where no limit is printed. */
  readonly use?: VerdictWord | undefined;
  /** Whether a wear limit decided about use, and whether it was passed by wear. */
  readonly byWear: boolean;
  readonly worn: boolean;
  /** The value that stands nearest to a limit inside its guard band. */
  readonly near?: Judged | undefined;
}

const NONE: readonly Judged[] = [];
const GRAVITY: Readonly<Record<VerdictWord, number>> = { 'no data': 0, in: 1, near: 2, 'check again': 3, out: 4 };
const graver = (one: VerdictWord | undefined, other: VerdictWord): VerdictWord =>
  one === undefined || GRAVITY[other] > GRAVITY[one] ? other : one;

/**
 * All that the rows say about a size. Where a wear limit is printed it decides about use, together with that end of the new window which
 * the wear limit leaves open: a clearance below the smallest new one is not worn, but too tight all the same.
 */
export function heldAgainst(known: KnownSize, windows: readonly LimitWindow[], guardFactor: number): HeldAll {
  const ends = windows.length === 0 ? NONE : known.size.judged;
  const held = new Array<Held>(windows.length);
  let at = 0;
  let asNew: VerdictWord | undefined;
  let use: VerdictWord | undefined;
  let worn = false;
  let nearNew: Found | undefined;
  let nearUse: Found | undefined;
  for (const one of windows) {
    const found = judged(known, ends, one.window, guardFactor);
    const row = new HeldSize(one, found);
    held[at] = row;
    at += 1;
    if (one.against === 'new') {
      asNew = graver(asNew, row.verdict);
      nearNew = nearer(nearNew, found);
      continue;
    }
    use = graver(use, row.verdict);
    worn ||= row.verdict === 'out' && isWorn(known, row);
    nearUse = nearer(nearUse, found);
    if (one.openEnd === undefined) continue;
    const other = judged(known, ends, one.openEnd, guardFactor);
    use = graver(use, other.verdict);
    nearUse = nearer(nearUse, other);
  }
  const byWear = use !== undefined;
  return { held, asNew, use: use ?? asNew, byWear, worn, near: (byWear ? nearUse : nearNew)?.of };
}

/** Of values in their guard bands the one nearer to its limit. */
function nearer(before: Found | undefined, found: Found): Found | undefined {
  if (found.verdict !== 'near') return before;
  return before === undefined || farther(found, before) ? found : before;
}

/** Whether it went out at the end toward which it wears. */
const isWorn = ({ planned: { sense } }: KnownSize, { nearEnd }: Held): boolean =>
  sense === 'neither' || nearEnd === (sense === 'hole' ? 'high' : 'low');
