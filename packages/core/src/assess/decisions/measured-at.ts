/**
 * Figures of single stations and of some of them, corrected and with their causes of error as in every size: the largest of a bore, the
 * smallest of a journal, a housing square to its parting line.
 */
import type { Assessment, Place, SizeRule, Station } from '../model.js';
import { type Cause, doubtOf, type ErrorSource } from '../sizes/causes.js';
import { benchOf } from '../sizes/index.js';
import { figureOf, Read } from '../sizes/place-readings.js';

/** A figure with what its doubt comes from, so that what two of them share cancels in their difference. */
export interface Sure {
  readonly value: number;
  readonly u: number;
  readonly causes: readonly Cause[];
}
export interface StationValue extends Sure {
  readonly station: Station;
}

const READ = new WeakMap<Assessment, Read>();
function readOf(assessment: Assessment): Read {
  let read = READ.get(assessment);
  if (read === undefined) {
    read = new Read(benchOf(assessment.engine, assessment.readings), assessment.plan);
    READ.set(assessment, read);
  }
  return read;
}

/** Values at the stations of a feature's place of that name that have a reading. */
export function stationValues(
  assessment: Assessment,
  feature: string,
  place: Pick<Place, 'id'>,
): readonly StationValue[] {
  const stations = readOf(assessment).at(feature, place.id)?.place.stations ?? [];
  return stations.flatMap((station) => {
    const one = measuredAt(assessment, feature, place, 'single', ({ id }) => id === station.id);
    return one === undefined ? [] : [{ ...one, station }];
  });
}

/** A figure of all stations of a place, or of those chosen (all when none is so); undefined before each has been read. */
export function measuredAt(
  assessment: Assessment,
  feature: string,
  place: Pick<Place, 'id'>,
  form: SizeRule['form'],
  only: (station: Station) => boolean = () => true,
): Sure | undefined {
  const at = readOf(assessment).at(feature, place.id);
  if (at === undefined) return undefined;
  const { stations } = at.place;
  const chosen = stations.filter(only);
  const known = figureOf(at, form, chosen.length > 0 ? chosen : stations)?.known;
  return known && { value: known.value, u: doubtOf(known.causes), causes: known.causes };
}

/**
 * A hole less a shaft, with the doubt that is left when what both share has cancelled: causes of one source add before they are squared.
 * Source: JCGM 100, 5.1.2 and F.1.2.3 (recalled).
 */
export function less(hole: Sure, shaft: Sure): Sure {
  const sums = new Map<ErrorSource, number>();
  for (const { source, sensitivity } of hole.causes) sums.set(source, (sums.get(source) ?? 0) + sensitivity);
  for (const { source, sensitivity } of shaft.causes) sums.set(source, (sums.get(source) ?? 0) - sensitivity);
  const causes = [...sums].map(([source, sensitivity]) => ({ source, sensitivity, u: source.u }));
  return { value: hole.value - shaft.value, u: doubtOf(causes), causes };
}

const extreme = (values: readonly StationValue[], better: (a: number, b: number) => boolean) =>
  values.reduce<StationValue | undefined>(
    (best, one) => (best === undefined || better(one.value, best.value) ? one : best),
    undefined,
  );
export const largest = (values: readonly StationValue[]) => extreme(values, (a, b) => a > b);
export const smallest = (values: readonly StationValue[]) => extreme(values, (a, b) => a < b);
