/** A size held against the printed limits: as new, and for use. */
import { conformance, type Judgement, judge } from '../../calc/metrology/index.js';
import type { InspectionLimit, Window } from '../../engine/index.js';
import type { Held, VerdictWord } from '../model.js';
import type { FormedSize, SizeEntry } from '../sizes/index.js';
import type { LimitWindow } from './limit-windows.js';

/** A size that is known, with what its repeats say. */
export interface KnownSize extends SizeEntry {
  readonly size: FormedSize;
}
const COVERAGE = 2;

/**
 * Judgement of a size in a window by the guarded rule: in where the expanded uncertainty (k = 2) still fits, near inside of that, out
 * beyond the limit; repeats that disagree are to be read again before anything is said.
 * Source: calc/metrology/judge.
 */
function judged(
  { size, disagreement }: KnownSize,
  { low, high }: Window<number>,
  guardFactor: number,
): Judgement | undefined {
  return judge({
    rule: 'guarded',
    readings: disagreement?.readings ?? [size.value],
    agreement: disagreement?.allowed,
    expanded: COVERAGE * size.u,
    guardFactor,
    low,
    high,
  });
}

/** One row of the sheet with what it says about the size. */
class HeldSize implements Held {
  readonly against: Held['against'];
  readonly limit: InspectionLimit;
  readonly window: Window<number>;
  readonly verdict: VerdictWord;
  readonly distance?: number;
  readonly nearEnd?: 'low' | 'high';
  readonly #size: FormedSize;

  constructor({ against, limit, window }: LimitWindow, size: FormedSize, found: Judgement | undefined) {
    this.against = against;
    this.limit = limit;
    this.window = window;
    this.verdict = found?.verdict ?? 'no data';
    this.#size = size;
    if (found?.nearest === undefined) return;
    this.distance = found.nearest.distance;
    this.nearEnd = found.nearest.side;
  }
  /** Chance that the true size is inside. */
  get inside(): number {
    return conformance(this.#size.value, this.#size.u, this.window).inside;
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
}

const GRAVITY: Readonly<Record<VerdictWord, number>> = { 'no data': 0, in: 1, near: 2, 'check again': 3, out: 4 };
const graver = (one: VerdictWord | undefined, other: VerdictWord): VerdictWord =>
  one === undefined || GRAVITY[other] > GRAVITY[one] ? other : one;

/**
 * All that the rows say about a size. Where a wear limit is printed it decides about use, together with that end of the new window which
 * the wear limit leaves open: a clearance below the smallest new one is not worn, but too tight all the same.
 */
export function heldAgainst(known: KnownSize, windows: readonly LimitWindow[], guardFactor: number): HeldAll {
  const held: Held[] = [];
  let asNew: VerdictWord | undefined;
  let use: VerdictWord | undefined;
  let worn = false;
  for (const one of windows) {
    const found = judged(known, one.window, guardFactor);
    const row = new HeldSize(one, known.size, found);
    held.push(row);
    if (one.against === 'new') {
      asNew = graver(asNew, row.verdict);
      continue;
    }
    use = graver(use, row.verdict);
    worn ||= row.verdict === 'out' && isWorn(known, row);
    if (one.openEnd !== undefined) use = graver(use, judged(known, one.openEnd, guardFactor)?.verdict ?? 'no data');
  }
  return { held, asNew, use: use ?? asNew, byWear: use !== undefined, worn };
}

/** Whether it went out at the end toward which it wears. */
const isWorn = ({ planned: { sense } }: KnownSize, { nearEnd }: Held): boolean =>
  sense === 'neither' || nearEnd === (sense === 'hole' ? 'high' : 'low');
