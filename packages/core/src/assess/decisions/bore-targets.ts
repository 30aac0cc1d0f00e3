/** To which size a bore must be finished for the piston that will run in it. */

import type { PistonStock } from '../../engine/index.js';
import type { Assessment, Place } from '../model.js';
import { limitAt, origin } from './decision.js';
import { clearedBore } from './fitted-size.js';
import { type Closed, closed, moved } from './judged.js';
import type { LengthWords } from './length-words.js';
import type { PistonSet } from './piston-sets.js';

export interface BoreTarget {
  readonly place: Place;
  /** Honed size. */
  readonly window: Closed;
  /** The measured piston; absent where only printed sizes are known. */
  readonly fittedTo?: string;
  readonly how: string;
  /** The one grade that suits, where not every grade of the set does. */
  readonly grade?: PistonStock;
}
type Piston = { readonly value: number };

/**
 * Finished size of one bore [m] for a set of pistons, from the best that is known: the measured piston and the clearance asked for;
 * else the printed skirts and that clearance, so that each piston of the set fits; else the printed new bore, larger by the oversize.
 * Undefined where none of these is known, or no bore fits every printed skirt: then the pistons are measured first.
 */
export function boreTarget(
  assessment: Assessment,
  place: Place,
  set: PistonSet,
  piston: Piston | undefined,
  words: LengthWords,
): BoreTarget | undefined {
  const asked = limitAt(assessment, 'piston.clearance', place.id, 'new');
  const clearance = asked && closed(asked.window);
  if (asked && clearance && piston) {
    const window = clearedBore({ low: piston.value, high: piston.value }, clearance);
    const fittedTo = `piston of ${place.name}, ${words.length(piston.value)}`;
    return window && { place, window, fittedTo, how: `measured piston + clearance (${origin(asked.limit)})` };
  }
  if (asked && clearance && set.skirt) return printedTarget(place, set, clearance, origin(asked.limit));
  const printed = limitAt(assessment, 'cylinder-bore.diameter', place.id, 'new');
  const bore = printed && closed(printed.window);
  if (!printed || !bore) return undefined;
  return { place, window: moved(bore, set.oversize), how: `printed bore (${origin(printed.limit)}) + oversize` };
}

/** Bore for every skirt of the set, else for one grade of it. */
function printedTarget(place: Place, set: PistonSet, clearance: Closed, from: string): BoreTarget | undefined {
  const all = set.skirt && clearedBore(set.skirt, clearance);
  if (all) return { place, window: all, how: `printed skirt + clearance (${from})` };
  for (const grade of set.grades) {
    const skirt = grade.skirt && closed(grade.skirt);
    const window = skirt && clearedBore(skirt, clearance);
    if (window) return { place, window, grade, how: `printed skirt of ${gradeText(grade)} + clearance (${from})` };
  }
  return undefined;
}

const gradeText = ({ grade, name }: PistonStock): string => (grade === undefined ? name : `grade ${grade}`);
