/** Comparisons with limits. A limit is inclusive, and the rounding of a sum must not push a value over it. */
const ROUNDING = 1e-9;

/** Whether a value reaches a limit; true as well where either is not known, as nothing can then be said against it. */
export const atLeast = (value: number | undefined, limit: number | undefined): boolean =>
  value === undefined || limit === undefined || value >= limit - ROUNDING * Math.max(1e-3, Math.abs(limit));

/** A value against a window of which either end may be missing. */
export function against(value: number, low: number | undefined, high: number | undefined): string {
  if (low === undefined && high === undefined) return 'no limit given';
  if (!atLeast(value, low)) return 'too small';
  return atLeast(high, value) ? 'within' : 'too large';
}
