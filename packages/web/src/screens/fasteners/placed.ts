import { holeById, type Joint } from '@gudgeon/core/engine';
import type { EntryData, Reading } from '@gudgeon/core/record';
import type { HoleView } from '@gudgeon/core/workbench';

export type DressingPlace = 'onThread' | 'underHead';
/** What the person says went on, where the sheet does not say. */
export type Dressing = Readonly<Partial<Record<DressingPlace, string>>>;

export type Condition = 'new' | 'used';

const places: readonly DressingPlace[] = ['onThread', 'underHead'];

/** Places for which the sheet names no treatment, so that the person has to look it up and say what was used. */
export function dressingAsked(joint: Joint | undefined, hole: string): readonly DressingPlace[] {
  const found = joint && holeById(joint, hole);
  return found ? places.filter((place) => found[place] === 'not-stated') : [];
}

/** The fact of one fastener in its hole, dressed as the sheet says or as the person said. */
export function placedData(
  joint: string,
  hole: HoleView,
  sheet: Joint | undefined,
  dressing: Dressing,
  condition: Condition,
  length: Reading | undefined,
): EntryData['fastener-placed'] {
  const found = sheet && holeById(sheet, hole.hole);
  return {
    joint,
    hole: hole.hole,
    instance: hole.instance,
    fastener: hole.fastener,
    condition,
    onThread: dressing.onThread?.trim() || (found?.onThread ?? 'not-stated'),
    underHead: dressing.underHead?.trim() || (found?.underHead ?? 'not-stated'),
    ...(length && { length }),
  };
}
