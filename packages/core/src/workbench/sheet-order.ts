/** Worksheets in the order of walking round the engine, how far each is, and which comes next. */
import type { Assessment, Feature, Slot } from '../assess/index.js';
import { slotsByPlace } from './slot-names.js';
import type { Progress } from './views.js';

const orders = new WeakMap<Feature, readonly Slot[]>();
/** Every slot in the order of walking round the engine. */
export function slotsOf(feature: Feature): readonly Slot[] {
  const known = orders.get(feature);
  if (known !== undefined) return known;
  const order = [...slotsByPlace(feature).values()].flat();
  orders.set(feature, order);
  return order;
}

/** Slots that have a reading, of all that the feature has. */
export function sheetProgress({ readings }: Assessment, feature: Feature): Progress {
  const slots = slotsOf(feature);
  const done = slots.filter((slot) => readings.bySlot.has(slot)).length;
  return { done, of: slots.length, words: `${done} of ${slots.length} read` };
}

/**
 * The next worksheet with something to read after this one, from the beginning again at the end of the walk. Cross-checks and looks
 * come when everything that is decided by has been read.
 */
export function sheetAfter(assessment: Assessment, feature: Feature): Feature | undefined {
  const { features } = assessment.plan;
  const from = features.indexOf(feature) + 1;
  const open = [...features.slice(from), ...features.slice(0, from)].filter((one) => {
    const { done, of } = sheetProgress(assessment, one);
    return one !== feature && done < of;
  });
  return open.find(({ kind }) => !kind.optional) ?? open[0];
}
