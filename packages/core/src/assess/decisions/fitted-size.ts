/** Size of a hole or a shaft so that every mate out of a range gives a clearance inside its window. */
import { journalForClearance } from '../../calc/bearings/index.js';
import type { Length } from '../../quantity/index.js';
import { type Closed, closed, common } from './judged.js';

/**
 * Hole for a shaft [m]: largest shaft + least clearance to smallest shaft + most clearance; undefined where the shafts differ by more
 * than the clearances: then each needs a hole of its own.
 *
 * Example: pistons 4.0034..4.0039 in, clearance 0.0040..0.0050 in: 4.0079..4.0084 in. Source: interval arithmetic on the definition.
 */
export function clearedBore(shaft: Closed, clearance: Closed): Closed | undefined {
  const window = common([{ low: shaft.high + clearance.low }, { high: shaft.low + clearance.high }]);
  return window && closed(window);
}

/**
 * Journal for a housing and shells whose walls lie in a range [m]: every wall of it gives a clearance inside the window. Undefined
 * where the walls vary by more than the clearance may.
 *
 * Example: H 75.005, walls 2.637, C 0.017..0.017 mm: 69.714 mm (reference row O-14). Source: `journalForClearance` at both ends.
 */
export function clearedJournal(housing: number, wall: Closed, clearance: Closed): Closed | undefined {
  const both = (one: number) => ({ upper: one as Length, lower: one as Length });
  const low = journalForClearance(housing as Length, both(wall.low), clearance.high as Length);
  const high = journalForClearance(housing as Length, both(wall.high), clearance.low as Length);
  const window = common([{ low }, { high }]);
  return window && closed(window);
}
