/** Where work of the order is measured again when it comes back. */
import { type OrderLine, orderLines, PROPERTIES, returnedWork } from '../assess/index.js';
import { assessmentOf } from './assessment.js';
import type { Bench } from './bench.js';
import { slotAt } from './slot-names.js';
import type { Standing } from './standings.js';

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

/** The line as it was decided. */
const lineOf = (bench: Bench, id: string): OrderLine | undefined =>
  orderLines(assessmentOf(bench).readings).find(({ line }) => line.id === id)?.line;

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

/** How much of the order has come back and was found in, for the list of ways. */
export function orderStanding(bench: Bench): Standing {
  const assessment = assessmentOf(bench);
  const lines = orderLines(assessment.readings);
  const of = lines.length;
  const done = lines.filter(({ line, choice }) => returnedWork(assessment, line, choice)?.verdict === 'in').length;
  const words =
    of === 0 ? 'nothing ordered yet' : `${of} ${of === 1 ? 'piece' : 'pieces'} of work, ${done} back and in`;
  return { progress: { done, of, words }, finished: of > 0 && done === of };
}
