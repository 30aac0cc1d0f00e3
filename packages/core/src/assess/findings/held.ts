/** A size held against the printed limits: as new, and for use. */
import { conformance, judge } from '../../calc/metrology/index.js';
import type { InspectionLimit, Window } from '../../engine/index.js';
import { newWindow, wearWindow } from '../limits/index.js';
import type { Held, VerdictWord } from '../model.js';
import type { SizeEntry, SureSize } from '../sizes/index.js';

/** A size that is known, with what its repeats say. */
export interface Known extends Pick<SizeEntry, 'sense' | 'disagreement'> {
  readonly size: SureSize;
}
const COVERAGE = 2;

interface Judged {
  readonly verdict: VerdictWord;
  readonly distance?: number;
  readonly nearEnd?: 'low' | 'high';
}

/**
 * Verdict of a size in a window by the guarded rule: in where the expanded uncertainty (k = 2) still fits, near inside of it, out
 * beyond the limit; repeats that disagree are to be read again before anything is said.
 * Source: calc/metrology/judge.
 */
function judged({ size, disagreement }: Known, { low, high }: Window<number>, guardFactor: number): Judged {
  const found = judge({
    rule: 'guarded',
    readings: disagreement?.readings ?? [size.value],
    agreement: disagreement?.allowed,
    expanded: COVERAGE * size.u,
    guardFactor,
    low,
    high,
  });
  const nearest = found?.nearest;
  if (found === undefined || nearest === undefined) return { verdict: 'no data' };
  return { verdict: found.verdict, distance: nearest.distance, nearEnd: nearest.side };
}

export interface HeldAll {
  readonly held: readonly Held[];
  /** Whether it is as new; absent where no new size is printed. */
  readonly asNew?: VerdictWord;
  /** Whether it may be used, and by which limit that was decided. */
  readonly use?: { readonly verdict: VerdictWord; readonly by: 'new' | 'wear'; readonly worn: boolean };
}

/** Worst first. */
const GRAVEST: readonly VerdictWord[] = ['out', 'check again', 'near', 'in', 'no data'];
export const worstOf = (verdicts: readonly VerdictWord[]): VerdictWord | undefined =>
  GRAVEST.find((word) => verdicts.includes(word));

/**
 * All that the rows say about a size. Where a wear limit is printed it decides about use, together with that end of the new window which
 * the wear limit leaves open: a clearance below the smallest new one is not worn, but too tight all the same.
 */
export function heldAgainst(known: Known, limits: readonly InspectionLimit[], guardFactor: number): HeldAll {
  const held: Held[] = [];
  const news: VerdictWord[] = [];
  const uses: { verdict: VerdictWord; worn: boolean }[] = [];
  const anyNew = limits.map(newWindow).find((window) => window !== undefined);
  for (const limit of limits) {
    const fresh = newWindow(limit);
    if (fresh !== undefined) {
      const one = judged(known, fresh, guardFactor);
      news.push(one.verdict);
      held.push(heldOf('new', limit, fresh, one, known.size));
    }
    const worn = wearWindow(limit, known.sense, fresh ?? anyNew);
    if (worn === undefined) continue;
    const one = judged(known, worn, guardFactor);
    held.push(heldOf('wear', limit, worn, one, known.size));
    uses.push({ verdict: one.verdict, worn: one.verdict === 'out' && isWorn(known, one) });
    const other = openEnd(worn, fresh ?? anyNew);
    if (other !== undefined) uses.push({ verdict: judged(known, other, guardFactor).verdict, worn: false });
  }
  const asNew = worstOf(news);
  const decided = uses.length > 0 ? uses : news.map((verdict) => ({ verdict, worn: false }));
  const verdict = worstOf(decided.map((one) => one.verdict));
  return {
    held,
    ...(asNew !== undefined && { asNew }),
    ...(verdict !== undefined && {
      use: {
        verdict,
        by: uses.length > 0 ? ('wear' as const) : ('new' as const),
        worn: decided.some(({ worn }) => worn),
      },
    }),
  };
}

/** Whether it went out at the end toward which it wears. */
const isWorn = ({ sense }: Known, { nearEnd }: Judged): boolean =>
  sense === 'neither' || nearEnd === (sense === 'hole' ? 'high' : 'low');

/** That end of the new window which a wear limit says nothing about. */
function openEnd(worn: Window<number>, fresh: Window<number> | undefined): Window<number> | undefined {
  if (fresh === undefined) return undefined;
  const low = worn.low === undefined ? fresh.low : undefined;
  const high = worn.high === undefined ? fresh.high : undefined;
  if (low === undefined && high === undefined) return undefined;
  return { ...(low !== undefined && { low }), ...(high !== undefined && { high }) };
}

function heldOf(
  against: Held['against'],
  limit: InspectionLimit,
  window: Window<number>,
  one: Judged,
  size: SureSize,
): Held {
  let inside: number | undefined;
  return {
    against,
    verdict: one.verdict,
    limit,
    window,
    ...(one.distance !== undefined && { distance: one.distance }),
    ...(one.nearEnd !== undefined && { nearEnd: one.nearEnd }),
    get inside() {
      inside ??= conformance(size.value, size.u, window).inside;
      return inside;
    },
  };
}
