import type { Assessment, Place } from '../model.js';
import { featureOf } from './decision.js';

/**
 * Places of a feature for which work was decided and that have not been measured since: what was read before the work says nothing
 * about the part that comes back.
 */
export function stillAtShop(assessment: Assessment, feature: string): readonly Place[] {
  const { readings } = assessment;
  const ordered = new Map<string, number>();
  for (const { orders, at } of readings.choices)
    for (const { property, places } of orders)
      if (property?.startsWith(`${feature}.`)) for (const place of places) ordered.set(place, Date.parse(at));
  return (featureOf(assessment, feature)?.places ?? []).filter((place) => {
    const decided = ordered.get(place.id);
    return decided !== undefined && !measuredAfter(assessment, feature, place, decided);
  });
}

const measuredAfter = ({ readings }: Assessment, feature: string, place: Place, decided: number): boolean =>
  place.stations.some(({ id }) =>
    (readings.bySlot.get(`${feature}/${place.id}/${id}`) ?? []).some(({ at }) => Date.parse(at) > decided),
  );

/** "bore of cylinder 3: measure it when it comes back from the shop". */
export function awaited(assessment: Assessment, feature: string): readonly string[] {
  const one = featureOf(assessment, feature)?.kind.one ?? feature;
  return stillAtShop(assessment, feature).map(
    ({ name }) => `${one} of ${name}: measure it when it comes back from the shop`,
  );
}
