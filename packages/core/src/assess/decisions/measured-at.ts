/**
 * Figures of single stations and of some of them, corrected and with their causes of error as in every size: the largest of a bore, the
 * smallest of a journal, a housing square to its parting line.
 */
import { slotOf } from '../features/index.js';
import type { Assessment, FeatureKind, Place, Station } from '../model.js';
import { Blend } from '../sizes/causes.js';
import { type Bench, benchOf, type Corrected, correctedReading, type Spot, spotOf } from '../sizes/index.js';
import { featureOf } from './decision.js';

type Term = readonly [factor: number, reading: Corrected];
/** A figure as a sum of readings, so that what two of them share cancels in their difference. */
export interface Sure {
  readonly value: number;
  readonly u: number;
  readonly terms: readonly Term[];
}
export interface StationValue extends Sure {
  readonly station: Station;
}

/** What is read of an assessment is corrected once. */
class Corrections {
  readonly #assessment: Assessment;
  readonly #bench: Bench;
  readonly #spots = new Map<string, Spot>();
  readonly #slots = new Map<string, Corrected | undefined>();

  constructor(assessment: Assessment) {
    this.#assessment = assessment;
    this.#bench = benchOf(assessment.engine, assessment.readings);
  }
  at(kind: FeatureKind, place: Place, station: Station): Corrected | undefined {
    const slot = slotOf(kind.id, place.id, station.id);
    if (!this.#slots.has(slot)) this.#slots.set(slot, this.#corrected(kind, place, station, slot));
    return this.#slots.get(slot);
  }
  #corrected(kind: FeatureKind, place: Place, station: Station, slot: string): Corrected | undefined {
    const taken = this.#assessment.readings.bySlot.get(slot) ?? [];
    if (taken.length === 0) return undefined;
    const name = `${kind.one} of ${place.name}, ${station.name}`;
    return correctedReading(this.#bench, this.#spot(kind, place.id), slot, name, taken);
  }
  #spot(kind: FeatureKind, place: string): Spot {
    const key = `${kind.id}/${place}`;
    const spot = this.#spots.get(key) ?? spotOf(this.#bench, kind, place);
    this.#spots.set(key, spot);
    return spot;
  }
}
const CORRECTIONS = new WeakMap<Assessment, Corrections>();
function correctionsOf(assessment: Assessment): Corrections {
  const known = CORRECTIONS.get(assessment) ?? new Corrections(assessment);
  CORRECTIONS.set(assessment, known);
  return known;
}

function sum(terms: readonly Term[]): Sure {
  const blend = new Blend();
  let value = 0;
  for (const [factor, reading] of terms) {
    blend.add(factor, reading);
    value += factor * reading.value;
  }
  return { value, u: blend.doubt(), terms };
}

/** Values at the stations of a feature's place of that name that have a reading. */
export function stationValues(
  assessment: Assessment,
  feature: string,
  { id }: Pick<Place, 'id'>,
): readonly StationValue[] {
  const found = featureOf(assessment, feature);
  const place = found?.places.find((one) => one.id === id);
  if (found === undefined || place === undefined) return [];
  return place.stations.flatMap((station) => {
    const one = correctionsOf(assessment).at(found.kind, place, station);
    return one === undefined ? [] : [{ ...sum([[1, one]]), station }];
  });
}

const extreme = (values: readonly StationValue[], better: (a: number, b: number) => boolean) =>
  values.reduce<StationValue | undefined>(
    (best, one) => (best === undefined || better(one.value, best.value) ? one : best),
    undefined,
  );
export const largest = (values: readonly StationValue[]) => extreme(values, (a, b) => a > b);
export const smallest = (values: readonly StationValue[]) => extreme(values, (a, b) => a < b);
const meanOf = (values: readonly StationValue[]): Sure =>
  sum(values.flatMap(({ terms }) => terms.map(([factor, reading]): Term => [factor / values.length, reading])));

const FORMS = { mean: meanOf, largest, smallest } as const;

/**
 * Mean, largest or smallest of the stations of a place, or of those chosen (all when none is so); undefined before each of them has
 * been read.
 */
export function measuredAt(
  assessment: Assessment,
  feature: string,
  place: Pick<Place, 'id'>,
  form: keyof typeof FORMS,
  only: (station: Station) => boolean = () => true,
): Sure | undefined {
  const stations = featureOf(assessment, feature)?.places.find((one) => one.id === place.id)?.stations ?? [];
  const some = stations.filter(only);
  const chosen = some.length > 0 ? some : stations;
  const values = stationValues(assessment, feature, place).filter(({ station }) => chosen.includes(station));
  return values.length === 0 || values.length < chosen.length ? undefined : FORMS[form](values);
}

/** A hole less a shaft, with the doubt that is left when what both share has cancelled. */
export const less = (hole: Sure, shaft: Sure): Sure =>
  sum([...hole.terms, ...shaft.terms.map(([factor, reading]): Term => [-factor, reading])]);
