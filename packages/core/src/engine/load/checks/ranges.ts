import type { BuiltLimit } from '../build/limits.js';

/**
 * Arithmetic of printed ranges: what parts from them give, and how that lies to a printed window, in SI. Subtraction of ranges only: the
 * trade's own clearances are in `calc`, which the sheet's room may not use.
 */
export interface Range {
  readonly low: number;
  readonly high: number;
}
/** The window for new parts, where the row prints both ends. */
export function rangeOf({ limit }: BuiltLimit): Range | undefined {
  const { low, high } = limit.whenNew?.window ?? {};
  return low === undefined || high === undefined ? undefined : { low, high };
}
/** Its middle: the size that is meant. */
export function middleOf(row: BuiltLimit): number | undefined {
  const range = rangeOf(row);
  return range === undefined ? undefined : (range.low + range.high) / 2;
}

export interface Taken {
  readonly range: Range;
  /** A pair of shells is taken off twice. */
  readonly times: number;
}

/** Least and most that is left when every part is at the end that closes or opens it: worst case by interval arithmetic. */
export function leftOver(whole: Range, taken: readonly Taken[]): Range {
  const sum = (end: 'low' | 'high') => taken.reduce((total, each) => total + each.times * each.range[end], 0);
  return { low: whole.low - sum('high'), high: whole.high - sum('low') };
}

/**
 * How what the parts give lies to what is printed, ends equal within `allowed`: `agrees`: whatever parts are taken, the printed
 * window is kept; `selective`: the printed window lies within what they give, so parts must be matched to each other;
 * `disagrees`: neither, so a figure is misprinted or counts something else.
 */
export type FitVerdict = 'agrees' | 'selective' | 'disagrees';
export function fitVerdict(found: Range, printed: Range, allowed: number): FitVerdict {
  if (lies(found, printed, allowed)) return 'agrees';
  return lies(printed, found, allowed) ? 'selective' : 'disagrees';
}

const lies = (inner: Range, outer: Range, allowed: number) =>
  inner.low >= outer.low - allowed && inner.high <= outer.high + allowed;
const equal = (a: Range, b: Range, allowed: number) =>
  Math.abs(a.low - b.low) <= allowed && Math.abs(a.high - b.high) <= allowed;

/** A slip of the decimal point in one end or both: the factors that bring the print back to what the parts give. */
export interface PointSlip {
  readonly low: number;
  readonly high: number;
}
const FACTORS = [1, 0.1, 10] as const;
/** Narrower than this share of what the parts give, a window lies within it by chance. From memory. */
const LEAST_SHARE = 0.25;

/** Whether a tenth or ten times of the print, in one end or both, would agree; undefined where it would not. */
export function pointSlip(found: Range, printed: Range, allowed: number): PointSlip | undefined {
  const slips = FACTORS.flatMap((low) => FACTORS.map((high) => ({ low, high }))).filter(
    (each) => each.low !== 1 || each.high !== 1,
  );
  return slips.find((slip) => {
    const moved = { low: printed.low * slip.low, high: printed.high * slip.high };
    const fine = allowed * Math.max(slip.low, slip.high, 1);
    if (moved.low > moved.high) return false;
    if (equal(found, moved, fine)) return true;
    const share = (moved.high - moved.low) / (found.high - found.low);
    return slip.low === slip.high && lies(moved, found, allowed) && share >= LEAST_SHARE && share <= 1;
  });
}
