/** All readings of the plan by place, corrected once each. */
import { slotOf } from '../features/index.js';
import type { Feature, FeatureKind, InspectionPlan, Place, Slot, Station } from '../model.js';
import { causesOf, type Known } from './causes.js';
import { type Bench, type Corrected, correctedReading, type Spot, spotOf } from './corrected.js';
import { canForm, type Form, formed, stationsNeeded } from './forms.js';

export interface PlaceReadings {
  readonly kind: FeatureKind;
  readonly place: Place;
  /** By station; a station without a standing reading has none. */
  readonly read: ReadonlyMap<string, Corrected>;
}

/** "bore of cylinder 3, top, thrust direction"; a station that is alone is not named. */
const nameOf = ({ one }: FeatureKind, place: Place, station: string): string =>
  `${one} of ${place.name}${place.stations.length === 1 ? '' : `, ${station}`}`;

function readPlace(bench: Bench, kind: FeatureKind, place: Place): PlaceReadings {
  const read = new Map<string, Corrected>();
  let spot: Spot | undefined;
  for (const { id, name } of place.stations) {
    const slot = slotOf(kind.id, place.id, id);
    const taken = bench.readings.bySlot.get(slot);
    if (taken === undefined || taken.length === 0) continue;
    spot ??= spotOf(bench, kind, place);
    read.set(id, correctedReading(bench, spot, slot, nameOf(kind, place, name), taken));
  }
  return { kind, place, read };
}

/** Readings of every place of the plan. */
export class Read {
  readonly plan: InspectionPlan;
  readonly #features = new Map<string, Feature>();
  readonly #places = new Map<string, PlaceReadings>();

  constructor(bench: Bench, plan: InspectionPlan) {
    this.plan = plan;
    for (const feature of plan.features) {
      this.#features.set(feature.kind.id, feature);
      for (const place of feature.places) {
        this.#places.set(`${feature.kind.id}/${place.id}`, readPlace(bench, feature.kind, place));
      }
    }
  }
  feature(id: string): Feature | undefined {
    return this.#features.get(id);
  }
  at(feature: string, place: string): PlaceReadings | undefined {
    return this.#places.get(`${feature}/${place}`);
  }
}

/** A figure of one place: whole, or with the slots that it still lacks. */
export interface PlaceFigure {
  readonly at: PlaceReadings;
  readonly missing: readonly Slot[];
  readonly needed: number;
  readonly known?: Known;
  readonly readings: readonly Corrected[];
  readonly words: string;
}

/**
 * A figure of a form from the readings of a place. Undefined where the place has no stations for it: a taper of one height.
 */
export function figureOf(
  at: PlaceReadings,
  form: Form,
  stations: readonly Station[],
  rule?: string,
): PlaceFigure | undefined {
  const needed = stationsNeeded(form, stations, rule);
  if (!canForm(form, needed)) return undefined;
  const readings: Corrected[] = [];
  const missing: Slot[] = [];
  for (const { id } of needed) {
    const one = at.read.get(id);
    if (one === undefined) missing.push(slotOf(at.kind.id, at.place.id, id));
    else readings.push(one);
  }
  const base = { at, needed: needed.length, missing, readings, words: '' };
  if (missing.length > 0) return base;
  const figure = formed(
    form,
    needed,
    readings.map(({ value }) => value),
    rule,
  );
  if (figure.by.length === 1 && figure.by[0] === 1) return { ...base, known: readings[0]! };
  return {
    ...base,
    words: figure.words,
    known: { value: figure.value, causes: causesOf(readings.map((one, index) => [figure.by[index]!, one])) },
  };
}

/** The stations of a place that a rule names; all when it names none. Same order as the place. */
export function stationsOf(place: Place, ids: readonly string[] | undefined): readonly Station[] {
  return ids === undefined ? place.stations : place.stations.filter(({ id }) => ids.includes(id));
}
