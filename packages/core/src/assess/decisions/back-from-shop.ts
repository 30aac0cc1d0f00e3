/** One rule of when work is back: its place counts as back when it has a newer occasion than at the decision. */
import type { Assessment, Choice, Place } from '../model.js';
import { featureOf } from './decision.js';

/**
 * Occasion of a place when a choice was made: the newest among its readings up to then, 1 where there was none. What came back later
 * has a higher one; a reading of the worn part can so never pass for the finished work.
 */
export function occasionAt(assessment: Assessment, feature: string, place: string, choice: Choice): number {
  const { readings } = assessment;
  const decided = Date.parse(choice.at);
  const stations = featureOf(assessment, feature)?.places.find(({ id }) => id === place)?.stations ?? [];
  const slots = stations.map(({ id }) => `${feature}/${place}/${id}`);
  const taken = slots.flatMap((slot) => [...(readings.before.get(slot) ?? []), ...(readings.bySlot.get(slot) ?? [])]);
  return Math.max(1, ...taken.filter(({ at }) => Date.parse(at) <= decided).map(({ occasion }) => occasion));
}

/** Whether a place has come back from the work that a choice ordered. */
export const isBack = (assessment: Assessment, feature: string, place: string, choice: Choice): boolean =>
  (assessment.readings.occasions.get(`${feature}/${place}`) ?? 1) > occasionAt(assessment, feature, place, choice);

/**
 * Places of a feature for which work was decided and that are not back: what was read before the work, or is read again at the worn
 * part, says nothing about the part that comes back.
 */
export function stillAtShop(assessment: Assessment, feature: string): readonly Place[] {
  const ordered = new Map<string, Choice>();
  for (const choice of assessment.readings.choices)
    for (const { property, places } of choice.orders)
      if (property?.startsWith(`${feature}.`)) for (const place of places) ordered.set(place, choice);
  return (featureOf(assessment, feature)?.places ?? []).filter(({ id }) => {
    const choice = ordered.get(id);
    return choice !== undefined && !isBack(assessment, feature, id, choice);
  });
}

/** "bore of cylinder 3: measure it when it comes back from the shop". */
export function awaited(assessment: Assessment, feature: string): readonly string[] {
  const one = featureOf(assessment, feature)?.kind.one ?? feature;
  return stillAtShop(assessment, feature).map(
    ({ name }) => `${one} of ${name}: measure it when it comes back from the shop`,
  );
}
