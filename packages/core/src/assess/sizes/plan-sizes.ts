/** All sizes of a plan with the ways to form them and the rows that limit them. */
import type { Engine } from '../../engine/index.js';
import type { InspectionPlan } from '../model.js';
import { betweenPlaces } from './between.js';
import { ownSizes } from './own-sizes.js';
import { pairSizes } from './pair-sizes.js';
import { type FormedBy, type LimitsFor, PlannedPlaces, type PlannedSize, type PlannedSizes } from './planned.js';

/**
 * All sizes of a plan in its order: those of each place, then the pairs, then the spreads between places. A clearance that can be measured
 * itself and also follows from its parts is one size with two ways.
 */
export function plannedSizes(engine: Engine, plan: InspectionPlan, limitsFor: LimitsFor): PlannedSizes {
  const places = new PlannedPlaces(engine, plan);
  const sizes = new Map<string, FormedBy>();
  const all = [
    ...ownSizes(places, limitsFor),
    ...pairSizes(engine, places, limitsFor),
    ...betweenPlaces(places, limitsFor),
  ];
  for (const size of all) {
    const same = sizes.get(size.key);
    sizes.set(size.key, same === undefined ? size : { ...same, ways: [...same.ways, ...size.ways] });
  }
  return { places: places.all, sizes: [...sizes.values()].map(withPlaces) };
}

const withPlaces = ({ key, property, place, title, measured, sense, ways, limits }: FormedBy): PlannedSize => ({
  key,
  property,
  place,
  title,
  measured,
  sense,
  ways,
  places: [...new Set(ways.flatMap((way) => way.figures.map((figure) => figure.place.at)))],
  limits,
});
