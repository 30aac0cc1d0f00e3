import { done, type Length, type Outcome, refused } from '../../quantity/index.js';
import { toNm } from './nanometres.js';
import type { ClearanceWindow, ShimFault, ShimRounding, ShimSizes } from './types.js';

/** No shim of an engine is thicker than this; it keeps the sums of the search exact. */
export const THICKEST = 0.02 as Length;
const MOST_SIZES = 1000;

function row(thinnest: number, thickest: number, step: number): Outcome<readonly number[], ShimFault> {
  if (!(thickest >= thinnest)) return refused({ code: 'sizes-unusable', reason: 'ends' });
  if (!(step > 0)) return refused({ code: 'sizes-unusable', reason: 'step' });
  const count = Math.floor((thickest - thinnest) / step) + 1;
  if (count > MOST_SIZES) return refused({ code: 'sizes-unusable', reason: 'too-many' });
  return done(Array.from({ length: count }, (_, i) => thinnest + i * step));
}

/** A thickness that a shim can have, or the fault that says it cannot. */
export function thicknessFault(what: string, length: number): ShimFault | undefined {
  if (length > 0 && length <= THICKEST) return undefined;
  return { code: 'length-out-of-range', what, given: length, low: 0 as Length, high: THICKEST };
}

/** A clearance; below zero is possible on paper (a shim that holds the valve open) and is refused only beyond 20 mm. */
export function clearanceFault(what: string, length: number): ShimFault | undefined {
  if (Math.abs(length) <= THICKEST) return undefined;
  return { code: 'length-out-of-range', what, given: length, low: -THICKEST as Length, high: THICKEST };
}

/**
 * All sizes in ascending order, each once, in nanometres. An even row runs from the thinnest by whole steps and never
 * beyond the thickest. Refuses an empty list, a step of 0 or less, ends the wrong way round, more than 1000 sizes, and a
 * thickness that is not above 0 and up to 20 mm.
 */
export function allSizes(sizes: ShimSizes): Outcome<readonly number[], ShimFault> {
  const ends = 'sizes' in sizes ? sizes.sizes : [sizes.thinnest, sizes.thickest];
  const fault = ends.map((size) => thicknessFault('shim size', size)).find((one) => one !== undefined);
  if (fault) return refused(fault);
  if (!('sizes' in sizes)) return row(toNm(sizes.thinnest), toNm(sizes.thickest), toNm(sizes.step));
  const list = [...new Set(sizes.sizes.map(toNm))].sort((a, b) => a - b);
  if (list.length === 0) return refused({ code: 'sizes-unusable', reason: 'none' });
  return list.length > MOST_SIZES ? refused({ code: 'sizes-unusable', reason: 'too-many' }) : done(list);
}

/** Whether the policy lets a size stand for an ideal thickness. */
export function policyAllows(rounding: ShimRounding, size: number, ideal: number): boolean {
  if (rounding === 'next-thinner') return size <= ideal;
  return rounding === 'nearest' || size >= ideal;
}

/** The size nearest to the ideal one among those that the policy allows; of two equally near the thinner one. */
export function roundTo(sizes: readonly number[], ideal: number, rounding: ShimRounding): number | undefined {
  const allowed = sizes.filter((size) => policyAllows(rounding, size, ideal));
  if (allowed.length === 0) return undefined;
  return allowed.reduce((best, size) => (Math.abs(size - ideal) < Math.abs(best - ideal) ? size : best));
}

/** Ends included. */
export function inside(window: ClearanceWindow, clearance: number): boolean {
  const { low, high } = window;
  return (low === undefined || clearance >= toNm(low)) && (high === undefined || clearance <= toNm(high));
}

export function windowFault(what: string, window: ClearanceWindow): ShimFault | undefined {
  const { low, high } = window;
  return low !== undefined && high !== undefined && !(low <= high) ? { code: 'window-empty', what } : undefined;
}
