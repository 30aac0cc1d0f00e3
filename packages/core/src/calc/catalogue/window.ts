/** Windows of accepted values: whether their ends are in order, and where a value lies. */
import type { Outcome } from '../../quantity/index.js';
import { type AnyValues, type Conflict, conflict } from './calculation.js';

export type WindowVerdict = 'in' | 'below' | 'above' | 'no data';

/** A tenth of a nanometre: a clearance is a difference of nearly equal sizes, and its rounding must not decide. */
const NOISE = 1e-10;

/**
 * Where a value, such as a length or a difference of lengths, lies in a window whose ends belong to it. All in SI; an end
 * that is not known is left out. Without any end there is no data, which is not "in".
 */
export function verdictOf(value: number, low: number | undefined, high: number | undefined): WindowVerdict {
  if (low === undefined && high === undefined) return 'no data';
  if (low !== undefined && value < low - NOISE) return 'below';
  return high !== undefined && value > high + NOISE ? 'above' : 'in';
}

/** Refuses the first pair of inputs whose low end is above the high end; undefined when all are in order. */
export function reversedEnds(
  values: AnyValues,
  ...pairs: readonly (readonly [low: string, high: string])[]
): Outcome<never, Conflict> | undefined {
  for (const [low, high] of pairs) {
    const [from, to] = [values[low], values[high]];
    if (typeof from === 'number' && typeof to === 'number' && from > to) {
      return conflict([low, high], 'the low end is above the high end', { input: high, from });
    }
  }
  return undefined;
}
