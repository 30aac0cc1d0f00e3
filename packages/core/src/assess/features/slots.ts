import type { Feature, InspectionPlan, Place, Slot, Station } from '../model.js';

/** `cylinder-bore/3/top-thrust`. */
export function slotOf(feature: string, place: string, station: string): Slot {
  return `${feature}/${place}/${station}`;
}

export interface SlotParts {
  readonly feature: string;
  readonly place: string;
  readonly station: string;
}
/** The three parts of a slot; undefined for a text that is none. */
export function parseSlot(slot: Slot): SlotParts | undefined {
  const [feature, place, station, ...rest] = slot.split('/');
  if (!feature || !place || !station || rest.length > 0) return undefined;
  return { feature, place, station };
}

/** The feature of a slot, or of a bare feature id; undefined where the engine has none of that name. */
export function featureOf(plan: InspectionPlan, slot: Slot): Feature | undefined {
  const id = slot.split('/')[0];
  return plan.features.find(({ kind }) => kind.id === id);
}

export function placeOf(plan: InspectionPlan, slot: Slot): Place | undefined {
  const parts = parseSlot(slot);
  return parts && featureOf(plan, slot)?.places.find(({ id }) => id === parts.place);
}

export function stationOf(plan: InspectionPlan, slot: Slot): Station | undefined {
  const parts = parseSlot(slot);
  return parts && placeOf(plan, slot)?.stations.find(({ id }) => id === parts.station);
}

/** "cylinder 3, top, thrust direction"; where a place has one station only its name: "cylinder 3". Undefined off the plan. */
export function slotName(plan: InspectionPlan, slot: Slot): string | undefined {
  const place = placeOf(plan, slot);
  const station = stationOf(plan, slot);
  if (place === undefined || station === undefined) return undefined;
  return place.stations.length === 1 ? place.name : `${place.name}, ${station.name}`;
}

/** All slots of the plan in the order of the walk. */
export function slotsOf(plan: InspectionPlan): readonly Slot[] {
  return plan.features.flatMap(({ kind, places }) =>
    places.flatMap((place) => place.stations.map((station) => slotOf(kind.id, place.id, station.id))),
  );
}
