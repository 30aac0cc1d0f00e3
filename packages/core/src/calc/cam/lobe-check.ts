import type { Verdict } from './lobe-verdict.js';
import { verdictOf } from './lobe-verdict.js';

/** One lobe against what was sold. */
export interface LobeCheck {
  /** Measured minus card. */
  readonly difference: number;
  readonly verdict: Verdict;
}

/**
 * Measured lobes against their card.
 *
 * `measured` values, one a lobe; `card` one for all or one a lobe; `tolerance` allowed on either side; `doubt` expanded
 * uncertainty of one measured value, in one unit. A lobe whose difference lies within the doubt of the tolerance is `near`: it can be
 * called neither in nor out. Source: ISO 14253-1, zones, from memory.
 */
export function lobesAgainstCard(
  measured: readonly number[],
  card: readonly number[],
  tolerance: number,
  doubt: number,
): readonly LobeCheck[] {
  return measured.map((one, at) => {
    const difference = one - (card[at] ?? card[0]!);
    return { difference, verdict: verdictOf(Math.abs(difference), tolerance, doubt) };
  });
}
