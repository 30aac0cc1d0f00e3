/** What the machine shop is told about the bores. */
import { boredSize } from '../../calc/cylinder/index.js';
import { inch, type Length } from '../../quantity/index.js';
import type { Assessment, OrderLine } from '../model.js';
import type { BoreTarget } from './bore-targets.js';
import { byText } from './decision.js';
import { middle, sameWindow } from './judged.js';
import type { LengthWords } from './length-words.js';

/** Middle of the 0.002 to 0.005 in that shops leave for the hone. Common practice, no source. */
const USUAL_HONE = inch(0.003);

/** Left for honing on diameter [m], and where that comes from. */
export function honeAllowance({ engine }: Assessment): { readonly value: number; readonly from: string } {
  const stated = engine.machining?.honeAllowance;
  if (stated !== undefined) return { value: stated.value, from: stated.from.text };
  return { value: USUAL_HONE, from: 'common practice, no source' };
}
/** What must come off the worn diameter for a clean wall, boring and honing together [m]. */
export function cleanUpAllowance(assessment: Assessment): { readonly value: number; readonly from: string } {
  const stated = assessment.engine.machining?.boreCleanUp;
  return stated === undefined ? honeAllowance(assessment) : { value: stated.value, from: stated.from.text };
}

export interface BoreWork {
  /** `bore/all`, `bore/3`. */
  readonly id: string;
  readonly operation: string;
  readonly targets: readonly BoreTarget[];
  readonly notes: readonly string[];
}

/** One line for all bores that are cut to the same oversize, each with the size of its own piston. */
export function boreOrder(assessment: Assessment, work: BoreWork, words: LengthWords): OrderLine {
  const { machining, crankTrain } = assessment.engine;
  const shared = sameWindow(work.targets.map(({ window }) => window));
  return {
    id: work.id,
    operation: work.operation,
    part: crankTrain.wetLiners === true ? 'liners' : 'cylinder block',
    property: 'cylinder-bore.diameter',
    places: work.targets.map(({ place }) => place.id),
    measured: 'length',
    ...(shared && { target: shared }),
    targets: work.targets.map(({ place, window, fittedTo }) => ({
      place: place.id,
      window,
      ...(fittedTo === undefined ? {} : { fittedTo }),
    })),
    ...(machining?.boreFinish === undefined ? {} : { finish: machining.boreFinish }),
    ...(machining?.torquePlate === undefined ? {} : { with: machining.torquePlate }),
    notes: [boredNote(assessment, work.targets, words), ...work.notes],
  };
}

/** Bored sizes leave the honing allowance; they are said because the bar is set to them. */
function boredNote(assessment: Assessment, targets: readonly BoreTarget[], words: LengthWords): string {
  const { value: hone, from } = honeAllowance(assessment);
  const sizes = targets.map(({ place, window }) => {
    const { bored } = boredSize(middle(window) as Length, 0 as Length, hone as Length);
    return { place, text: words.length(bored) };
  });
  return `Bore to ${byText(sizes)}: ${words.length(hone)} is left for the hone (${from}).`;
}
