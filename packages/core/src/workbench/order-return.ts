/** Where work of the order is measured again when it comes back. */
import { type OrderLine, PROPERTIES } from '../assess/index.js';
import { assessmentOf } from './assessment.js';
import type { Bench } from './bench.js';
import { slotAt } from './slot-names.js';

export interface OrderReturn {
  readonly feature: string;
  /** Name of the worksheet. */
  readonly title: string;
  readonly places: readonly string[];
  /** Where the new readings begin. */
  readonly slot: string;
  /** True when the shop's work was taken back before and the places wait for their readings. */
  readonly waits: boolean;
}

/** The line as it was decided; the newest decision that has it counts. */
const lineOf = (bench: Bench, id: string): OrderLine | undefined =>
  assessmentOf(bench)
    .readings.choices.flatMap(({ orders }) => orders)
    .findLast((line) => line.id === id);

/** Worksheet and places of an order line; undefined for work that no worksheet reads. */
export function orderReturn(bench: Bench, id: string): OrderReturn | undefined {
  const line = lineOf(bench, id);
  const property = line?.property === undefined ? undefined : PROPERTIES.get(line.property);
  const { plan, readings } = assessmentOf(bench);
  const feature = plan.features.find(({ kind }) => kind.id === property?.needs[0]);
  if (line === undefined || feature === undefined) return undefined;
  const places = feature.places.filter((place) => line.places.includes(place.id));
  const slots = places.flatMap((place) => place.stations.map((station) => slotAt(feature, place, station)));
  const [first] = slots;
  if (first === undefined) return undefined;
  const empty = slots.find((slot) => !readings.bySlot.has(slot));
  const again = places.some((place) => (readings.occasions.get(`${feature.kind.id}/${place.id}`) ?? 1) > 1);
  return {
    feature: feature.kind.id,
    title: feature.kind.title,
    places: places.map((place) => place.id),
    slot: empty ?? first,
    waits: again && empty !== undefined,
  };
}
