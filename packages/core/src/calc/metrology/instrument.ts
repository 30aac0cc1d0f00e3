/** What a gauge reads against what is true. */
import type { Length } from '../../quantity/index.js';

export interface Session {
  /** True size of the setting standard. */
  readonly standard: Length;
  /** Reading of the standard before the session. */
  readonly atStart: Length;
  /** Reading of the standard after the session; the same as at the start when it was not checked. */
  readonly atEnd: Length;
  /** When the part was measured, as a share of the session: 0 at its start, 1 at its end. */
  readonly share: number;
}

/**
 * Error of the gauge at the time of a reading [m], taken to drift evenly: e = (start − S) + f·(end − start).
 * Source: derived.
 */
export const gaugeError = ({ standard, atStart, atEnd, share }: Session): Length =>
  (atStart - standard + share * (atEnd - atStart)) as Length;

/** True size between two standards by a straight line through both [m]: scale error and zero error together. */
export const betweenStandards = (
  reading: Length,
  low: { readonly size: Length; readonly read: Length },
  high: { readonly size: Length; readonly read: Length },
): Length => (low.size + ((reading - low.read) * (high.size - low.size)) / (high.read - low.read)) as Length;
