/**
 * The sizes of a plan before anything is read: what depends on the sheet alone is worked out once for it. Thousands of these are looked at
 * with every reading: each kind of object has all its fields always, and in one order, so that looking at them is quick.
 */
import type { Engine, InspectionLimit } from '../../engine/index.js';
import { slotOf } from '../features/index.js';
import type { FeatureKind, InspectionPlan, Measured, Place, Slot, Station } from '../model.js';
import { type FittedForm, type Form, type Formed, fitForm } from './forms.js';
import { materialOf } from './warmth.js';

/** One place of a feature with its slots. */
export interface PlannedPlace {
  /** Its number among all places of the plan. */
  readonly at: number;
  readonly kind: FeatureKind;
  readonly place: Place;
  readonly slots: readonly { readonly slot: Slot; readonly name: string }[];
  /** Where the sheet does not say what the part is made of: what is taken. */
  readonly assumed: string | undefined;
}
/** A figure of one place, as a size needs it. */
export interface PlannedFigure extends FittedForm {
  readonly place: PlannedPlace;
  /** How it is called in the working. */
  readonly name: string;
}
/** One way to form a size from figures. */
export interface PlannedWay {
  readonly figures: readonly PlannedFigure[];
  /** How many readings it needs. */
  readonly needed: number;
  /** The size from the values of the figures, and its change for one unit of each; absent where the one figure is the size. */
  readonly combine: ((values: readonly number[]) => Formed) | undefined;
  readonly formula: string;
  readonly sources: readonly string[];
  readonly cautions: readonly string[];
  /** What it says of a size below nothing, which no parts can have. */
  readonly negative: string | undefined;
  /** The smallest and the largest reading are judged, not their mean: a bore worn past its limit at the top is worn past it. */
  readonly ends: boolean;
}
export interface PlannedSize {
  readonly key: string;
  readonly property: string;
  readonly place: Place;
  readonly title: string;
  readonly measured: Measured;
  /** Whether wear makes it larger (`hole`) or smaller (`shaft`). */
  readonly sense: FeatureKind['sense'];
  /** The best first. */
  readonly ways: readonly PlannedWay[];
  /** Numbers of the places that any way reads. */
  readonly places: readonly number[];
  /** Rows of the sheet that limit it, all grades. */
  readonly limits: readonly InspectionLimit[];
}
/** A size before it is known which places its ways read. */
export type FormedBy = Omit<PlannedSize, 'places'>;
export interface PlannedSizes {
  readonly places: readonly PlannedPlace[];
  readonly sizes: readonly PlannedSize[];
}

/** Rows of the sheet that limit a size at a place; the rule by which a maker forms it is part of the row. */
export type LimitsFor = (property: string, place: Place) => readonly InspectionLimit[];

export const keyOf = (property: string, place: string): string => `${property}@${place}`;
type Way = Pick<PlannedWay, 'figures' | 'formula' | 'sources' | 'cautions'> &
  Partial<Pick<PlannedWay, 'combine' | 'negative' | 'ends'>>;
export const wayOf = ({ figures, combine, formula, sources, cautions, negative, ends = false }: Way): PlannedWay => ({
  figures,
  needed: figures.reduce((sum, { stations }) => sum + stations.length, 0),
  combine,
  formula,
  sources,
  cautions,
  negative,
  ends,
});

/** The places of a plan by feature and id. */
export class PlannedPlaces {
  readonly plan: InspectionPlan;
  readonly all: readonly PlannedPlace[];
  readonly #byKey = new Map<string, PlannedPlace>();

  constructor(engine: Engine, plan: InspectionPlan) {
    this.plan = plan;
    const all: PlannedPlace[] = [];
    for (const { kind, places } of plan.features)
      for (const place of places) {
        const assumed = usualMaterial(engine, kind);
        const slots = slotsAt(kind, place);
        const planned = { at: all.length, kind, place, slots, assumed };
        all.push(planned);
        this.#byKey.set(`${kind.id}/${place.id}`, planned);
      }
    this.all = all;
  }
  at(feature: string, place: string): PlannedPlace | undefined {
    return this.#byKey.get(`${feature}/${place}`);
  }
  of(feature: string): readonly PlannedPlace[] {
    return this.all.filter(({ kind }) => kind.id === feature);
  }
}

/** A temperature is taken into account with a material that the sheet does not name. */
function usualMaterial(engine: Engine, kind: FeatureKind): string | undefined {
  if (kind.measured !== 'length' || kind.material === undefined) return undefined;
  const { name, assumed } = materialOf(engine, kind);
  return assumed ? `the sheet names no material of the ${kind.material}: ${name} taken` : undefined;
}

/** "bore of cylinder 3, top, thrust direction"; a station that is alone is not named. */
function slotsAt({ id, one }: FeatureKind, place: Place): PlannedPlace['slots'] {
  const alone = place.stations.length === 1;
  return place.stations.map((station) => ({
    slot: slotOf(id, place.id, station.id),
    name: `${one} of ${place.name}${alone ? '' : `, ${station.name}`}`,
  }));
}

/** A figure of a place from the stations that a test picks, from all where it picks none. */
export function figureAt(
  place: PlannedPlace,
  form: Form,
  name: string,
  only?: (station: Station) => boolean,
  rule?: string,
): PlannedFigure | undefined {
  const { stations } = place.place;
  const all = stations.map((_, at) => at);
  const picked = only === undefined ? all : all.filter((at) => only(stations[at]!));
  const fitted = fitForm(form, stations, picked.length === 0 ? all : picked, rule);
  if (fitted === undefined) return undefined;
  const { columns, even, words } = fitted;
  return { form, stations: fitted.stations, columns, rule: fitted.rule, even, words, place, name };
}
