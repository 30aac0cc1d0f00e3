import { type Outcome, refused } from '../../quantity/index.js';
import type { CalcFault } from './fault.js';

/** One value as read: `value` is what `compute` gets, the rest is for people. */
export interface ReadValue {
  readonly value: unknown;
  readonly text: string;
  readonly unit?: string;
  readonly places?: number;
  /** Standard uncertainty in SI, when the text states one. */
  readonly standard?: number;
}

/** The input by name, and the place in a list, from 1. */
export interface Place {
  readonly input: string;
  readonly at?: number;
}

export const wrongShape = (place: Place, raw: unknown, expected: string): Outcome<never, CalcFault> =>
  refused({ ...place, code: 'wrong-shape', given: shown(raw), expected });

/** Anything that came in, as text for a fault. */
export function shown(raw: unknown): string {
  if (typeof raw === 'string') return raw;
  if (typeof raw === 'number') return String(raw);
  try {
    return JSON.stringify(raw) ?? String(raw);
  } catch {
    return 'something that is not JSON';
  }
}
