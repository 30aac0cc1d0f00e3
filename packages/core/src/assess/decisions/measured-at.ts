/**
 * Figures of single stations and of some of them, corrected and with their causes of error as in every size: the largest of a bore, the
 * smallest of a journal, a housing square to its parting line.
 */
import type { Assessment, Place, SizeRule, Station } from '../model.js';
import { type Cause, causesOf, doubtOf } from '../sizes/causes.js';
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

/** Values at the stations of a place that have a reading. */
export function stationValues(assessment: Assessment, feature: string, place: Place): readonly StationValue[] {
  const at = readOf(assessment).at(feature, place.id);
  return place.stations.flatMap((station) => {
    const one = at?.read.get(station.id);
    return one === undefined ? [] : [{ station, value: one.value, u: doubtOf(one.causes), causes: one.causes }];
  });
}

/** A figure of all stations of a place, or of those chosen (all when none is so); undefined before each has been read. */
export function measuredAt(
  assessment: Assessment,
  feature: string,
  place: Place,
  form: SizeRule['form'],
  only: (station: Station) => boolean = () => true,
): Sure | undefined {
  const at = readOf(assessment).at(feature, place.id);
  if (at === undefined) return undefined;
  const chosen = place.stations.filter(only);
  const known = figureOf(at, form, chosen.length > 0 ? chosen : place.stations)?.known;
  return known && { value: known.value, u: doubtOf(known.causes), causes: known.causes };
}

/** A hole less a shaft, with the doubt that is left when what both share has cancelled. */
export function less(hole: Sure, shaft: Sure): Sure {
  const causes = causesOf([
    [1, hole],
    [-1, shaft],
  ]);
  return { value: hole.value - shaft.value, u: doubtOf(causes), causes };
}

const extreme = (values: readonly StationValue[], better: (a: number, b: number) => boolean) =>
  values.reduce<StationValue | undefined>(
    (best, one) => (best === undefined || better(one.value, best.value) ? one : best),
    undefined,
  );
export const largest = (values: readonly StationValue[]) => extreme(values, (a, b) => a > b);
export const smallest = (values: readonly StationValue[]) => extreme(values, (a, b) => a < b);
