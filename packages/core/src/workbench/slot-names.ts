/** The slots of an engine, found by their names, and what a person calls them. */
import { type Feature, inspectionPlan, type Place, type Slot, type Station } from '../assess/index.js';
import type { Engine } from '../engine/index.js';

export interface SlotPlace {
  readonly slot: Slot;
  readonly feature: Feature;
  readonly place: Place;
  readonly station: Station;
}
export const slotAt = (feature: Feature, place: Place, station: Station): Slot =>
  `${feature.kind.id}/${place.id}/${station.id}`;

const named = new WeakMap<Feature, ReadonlyMap<Place, readonly Slot[]>>();
/** Slots of each place of a feature, as its stations stand; worked out once for each plan. */
export function slotsByPlace(feature: Feature): ReadonlyMap<Place, readonly Slot[]> {
  const known = named.get(feature);
  if (known !== undefined) return known;
  const slots = new Map(
    feature.places.map((place) => [place, place.stations.map((station) => slotAt(feature, place, station))]),
  );
  named.set(feature, slots);
  return slots;
}

const indexed = new WeakMap<Engine, ReadonlyMap<Slot, SlotPlace>>();
/** Every slot of the engine's inspection plan in the order of walking round; worked out once for each engine. */
export function slotsOf(engine: Engine): ReadonlyMap<Slot, SlotPlace> {
  const known = indexed.get(engine);
  if (known !== undefined) return known;
  const slots = inspectionPlan(engine).features.flatMap((feature) =>
    feature.places.flatMap((place) =>
      place.stations.map((station) => ({ slot: slotAt(feature, place, station), feature, place, station })),
    ),
  );
  const index = new Map(slots.map((one) => [one.slot, one]));
  indexed.set(engine, index);
  return index;
}

/** "bore of cylinder 3". */
export const placeWords = ({ feature, place }: Pick<SlotPlace, 'feature' | 'place'>): string =>
  `${feature.kind.one} of ${place.name}`;

/** "bore of cylinder 3, top, thrust direction"; the only station of a place is not spoken. */
export function slotName(engine: Engine, slot: Slot): string {
  const found = slotsOf(engine).get(slot);
  if (found === undefined) return slot.replaceAll('/', ' ').replaceAll('-', ' ');
  return found.place.stations.length === 1 ? placeWords(found) : `${placeWords(found)}, ${found.station.name}`;
}
