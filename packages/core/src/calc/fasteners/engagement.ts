import type { Length } from '../../quantity/index.js';
import type { Thread } from './thread.js';

/** Least engaged thread in nominal diameters, by what it is tapped into. Source: bibliography key `thread-engagement`. */
const LEAST = { aluminium: 2, 'steel or cast iron': 1.25 } as const;
export type Tapped = keyof typeof LEAST;
export const tappedMaterials = Object.keys(LEAST) as readonly Tapped[];

/**
 * Least thread engagement by rule: 2·d in aluminium, 1.25·d in steel or cast iron [m].
 * Example: M10: 20 mm and 12.5 mm. Source: see `LEAST`.
 */
export function leastEngagement(thread: Thread, tapped: Tapped): Length {
  return (LEAST[tapped] * thread.diameter) as Length;
}

/** Where the end of a bolt comes in a blind hole. */
export interface BoltDepth {
  /** How far the bolt reaches below the face of the tapped part. */
  readonly reach: Length;
  /** Thread in engagement: what reaches in, less the unthreaded start, no more than the thread that is there. */
  readonly engaged: Length;
  /** Left between the bolt and the end of the usable hole; negative: it bottoms. */
  readonly spare: Length;
}

/**
 * Reach, engagement and room of a bolt: reach = l − Σt; engaged = min(reach, depth) − start; spare = depth − reach [m].
 *
 * l `length` under the head, t `stack` of what lies under it (washer, parts, gasket compressed), `depth` of usable
 * thread from the face, `start` countersink or counterbore without thread. Engagement is never below 0.
 * Source: sum of lengths.
 */
export function boltDepth(length: Length, stack: readonly Length[], depth: Length, start: Length): BoltDepth {
  const reach = length - stack.reduce((sum, one) => sum + one, 0);
  return {
    reach: reach as Length,
    engaged: Math.max(0, Math.min(reach, depth) - start) as Length,
    spare: (depth - reach) as Length,
  };
}
