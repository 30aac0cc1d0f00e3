/** What a bore needs to clean up, from its readings. */
import { cleanUpDiameter, smallestCleanUp, type WornSection, wornSection } from '../../calc/cylinder/index.js';
import type { Length } from '../../quantity/index.js';
import type { Assessment, Place } from '../model.js';
import { placesOf, sizeAt } from './decision.js';
import type { Known } from './judged.js';
import { largest, type StationValue, smallest, stationValues } from './measured-at.js';
import { nearestOversize } from './piston-sets.js';

export interface WornBore {
  readonly place: Place;
  /** Size that it had when it was last bored. */
  readonly unworn: number;
  readonly largest: StationValue;
  /** Diameter at which it cleans up with the bar centred on what is worn, and how far the bar then stands from the old axis. */
  readonly free: Known;
  readonly shift: number;
  /** The same with the bar on the old axis and all wear on one wall, the worst there is. */
  readonly held: Known;
  /** Mean diameter, to which a measured wall belongs. */
  readonly mean: number;
  readonly wall?: Known;
}

/** Bores whose readings are complete enough for a size; `standard` is the printed bore, `oversizes` those that exist. */
export function wornBores(assessment: Assessment, standard: number, oversizes: readonly number[]): readonly WornBore[] {
  return placesOf(assessment, 'cylinder-bore').flatMap((place) => {
    const values = stationValues(assessment, 'cylinder-bore', place);
    const [most, least] = [largest(values), smallest(values)];
    const mean = sizeAt(assessment, 'cylinder-bore.diameter', place.id);
    if (most === undefined || least === undefined || mean === undefined) return [];
    const unworn = standard + nearestOversize(oversizes, standard, least.value);
    const wall = sizeAt(assessment, 'bore-wall.thinnest', place.id);
    const known = { place, unworn, largest: most, mean: mean.value, ...(wall && { wall }) };
    return [{ ...known, ...reach(values, unworn, most) }];
  });
}

function reach(values: readonly StationValue[], unworn: number, most: StationValue) {
  const wear = Math.max(0, most.value - unworn) as Length;
  const [d0, dmax] = [unworn as Length, most.value as Length];
  const sections = sectionsOf(values, unworn);
  const free =
    sections.length === 0
      ? { diameter: cleanUpDiameter(d0, dmax, 'free'), shift: (wear / 2) as Length }
      : smallestCleanUp(sections, wear);
  return {
    free: { value: Math.max(free.diameter, most.value), u: most.u },
    shift: Math.abs(free.shift),
    held: { value: cleanUpDiameter(d0, dmax, 0 as Length), u: 2 * most.u },
  };
}

/** Sections where a height was read across and along the crank; all thrust wear is taken to sit on one wall. */
function sectionsOf(values: readonly StationValue[], unworn: number): readonly WornSection[] {
  const across = values.filter(({ station }) => /thrust|across/.test(station.id));
  return across.flatMap((one) => {
    const along = values.find(({ station }) => station.height === one.station.height && /axial|along/.test(station.id));
    if (along === undefined) return [];
    return [wornSection(one.value as Length, along.value as Length, unworn as Length, ALL_ON_ONE_WALL)];
  });
}
const ALL_ON_ONE_WALL = 1;
