import type { Window } from '../../engine/index.js';
import type { Assessment } from '../model.js';
import { limitAt, placesOf, sizeAt } from './decision.js';

/**
 * By how much [m] all bores of an engine were bored, or all journals of a group ground, before: the one of the `sizes` that exist by
 * which every part lies between as new and its wear limit, the printed limits moved by it. 0 where none does: then the printed limits
 * hold as they stand.
 */
export function cutBefore(
  assessment: Assessment,
  feature: string,
  sense: 'hole' | 'shaft',
  sizes: readonly number[],
): number {
  const property = `${feature}.diameter`;
  const places = placesOf(assessment, feature);
  const fits = (cut: number) =>
    places.every(({ id }) => {
      const size = sizeAt(assessment, property, id);
      const window = usable(assessment, property, id, sense);
      const by = sense === 'hole' ? cut : -cut;
      return size !== undefined && window !== undefined && holds(window, size.value - by);
    });
  return sizes.find((cut) => cut > 0 && places.length > 0 && fits(cut)) ?? 0;
}

/** From as new to worn out; undefined where an end is printed nowhere. */
function usable(
  assessment: Assessment,
  property: string,
  place: string,
  sense: 'hole' | 'shaft',
): Required<Window<number>> | undefined {
  const fresh = limitAt(assessment, property, place, 'new')?.window;
  const worn = limitAt(assessment, property, place, 'wear')?.window;
  const low = sense === 'hole' ? fresh?.low : (worn?.low ?? fresh?.low);
  const high = sense === 'hole' ? (worn?.high ?? fresh?.high) : fresh?.high;
  return low === undefined || high === undefined ? undefined : { low, high };
}
const holds = ({ low, high }: Required<Window<number>>, value: number): boolean =>
  value >= low - NANOMETRE && value <= high + NANOMETRE;
const NANOMETRE = 1e-9;
