/** Corrected values of single stations: the largest of a bore, the smallest of a journal. */
import { quadrature } from '../../quantity/index.js';
import type { Assessment, Place, Size, Station } from '../model.js';
import { sizeAt } from './decision.js';

export interface StationValue {
  readonly station: Station;
  readonly value: number;
  readonly u?: number;
}

/**
 * Values at the stations of a place, corrected as its mean is corrected; stations without a reading are left out. What all readings
 * share (setting of the gauge, temperature) enters the uncertainty whole, the reading of the station with its own.
 */
export function stationValues(
  assessment: Assessment,
  feature: string,
  meanProperty: string,
  place: Place,
): readonly StationValue[] {
  const size = sizeAt(assessment, meanProperty, place.id);
  const read = place.stations.flatMap((station) => {
    const slot = `${feature}/${place.id}/${station.id}`;
    const taken = assessment.readings.bySlot.get(slot) ?? [];
    if (taken.length === 0) return [];
    return [{ station, slot, raw: taken.reduce((sum, { value }) => sum + value, 0) / taken.length }];
  });
  if (size === undefined || read.length === 0) return [];
  const correction = size.value - read.reduce((sum, { raw }) => sum + raw, 0) / read.length;
  return read.map(({ station, slot, raw }) => {
    const u = doubtAt(size, slot);
    return { station, value: raw + correction, ...(u === undefined ? {} : { u }) };
  });
}

function doubtAt(size: Size, slot: string): number | undefined {
  const own = size.parts.find(({ key }) => key === slot);
  const shared = size.parts.filter(({ key }) => key.startsWith('gauge/') || key.startsWith('warmth/'));
  if (size.u === undefined || own?.u === undefined) return size.u;
  return quadrature(own.u, ...shared.map(({ sensitivity, u = 0 }) => sensitivity * u));
}

const extreme = (values: readonly StationValue[], better: (a: number, b: number) => boolean) =>
  values.reduce<StationValue | undefined>(
    (best, one) => (best === undefined || better(one.value, best.value) ? one : best),
    undefined,
  );
export const largest = (values: readonly StationValue[]) => extreme(values, (a, b) => a > b);
export const smallest = (values: readonly StationValue[]) => extreme(values, (a, b) => a < b);
