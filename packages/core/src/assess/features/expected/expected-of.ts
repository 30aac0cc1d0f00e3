import type { Expected, FeatureKind, Place } from '../../model.js';
import type { Anatomy } from '../anatomy.js';
import { fromLimits } from './from-limits.js';
import { reworked } from './reworked.js';
import type { Typical } from './typical.js';
import { TYPICAL_ABOVE } from './typical-above.js';
import { TYPICAL_BELOW } from './typical-below.js';

/** A reading ten times off must fall outside: the window's ends are less than ten times apart. */
const WIDEST = 9.8;
/** Ends closer together than this share belong to a fit. */
const CLOSE = 0.15;

/**
 * What one reading at a place usually is, and what it can be at all [SI].
 *
 * Where the sheet limits the main size of the feature, `usual` goes from the smallest size that is good when new or worn to the largest,
 * and a little past it, because people also measure what is worn out; parts that are made over- or undersize widen it. Where it
 * prints none, a figure of the sheet or a usual share of the bore serves. The ends of `usual` lie less than ten
 * times apart, so that a slip of the decimal point or of the unit falls outside; not so for figures that begin at zero (a run-out, a
 * gap under the straight edge), nor where the sheet itself allows sizes further apart. `possible` is far wider: beyond it no such part exists.
 * Undefined for a feature without a rule.
 */
export function expectedOf(anatomy: Anatomy, kind: FeatureKind, place: Place): Expected | undefined {
  const typical = (TYPICAL_BELOW[kind.id] ?? TYPICAL_ABOVE[kind.id])?.(anatomy, place);
  if (typical === undefined) return undefined;
  const range = reworked(anatomy, kind.id, fromLimits(anatomy, kind, place, typical) ?? typical);
  const usual = lessThanTenTimes(range);
  return {
    nominal: range.nominal ?? (usual.low + usual.high) / 2,
    usual,
    possible: downToNothing(typical, possibleFor(usual)),
    why: range.why,
  };
}

/** Brings the ends together, the lower one first, but cuts nothing off that the sheet allows. */
function lessThanTenTimes({ low, high, allowed }: Typical): { readonly low: number; readonly high: number } {
  if (low <= 0) return { low, high };
  const raised = Math.min(Math.max(low, high / WIDEST), allowed?.low ?? Number.POSITIVE_INFINITY);
  return { low: raised, high: Math.max(Math.min(high, raised * WIDEST), allowed?.high ?? 0) };
}

/** A figure that can begin at zero (a crown that is worn flat) can be zero, whatever the sheet allows: that is for a person to say. */
const downToNothing = (typical: Typical, possible: Expected['possible']): Expected['possible'] =>
  typical.low <= 0 && (possible.low ?? 0) > 0 ? { ...possible, low: 0 } : possible;

/** A size that is known closely cannot be a seventh off; another may be three times as large or small. */
function possibleFor({ low, high }: { readonly low: number; readonly high: number }): Expected['possible'] {
  if (low > 0 && (high - low) / high < CLOSE) return { low: low * (1 - CLOSE), high: high * (1 + CLOSE) };
  if (low > 0) return { low: low / 3, high: high * 3 };
  const span = high - low;
  return { low: low < 0 ? low - 3 * span : 0, high: high + 12 * span };
}
