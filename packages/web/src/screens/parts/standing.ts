import { valveKey } from '@gudgeon/core/engine';
import type { PartKind } from '@gudgeon/core/plan';
import type { PartPlaceView, PartsView } from '@gudgeon/core/workbench';

/** What the person is doing with the parts: tagging them as they come out, or putting them back. */
export type PartsMode = 'tag' | 'fit';

export const keyOf = (place: PartPlaceView): string => valveKey(place.valve);
export const placesOf = (view: PartsView, part: PartKind): readonly PartPlaceView[] =>
  view.places.filter((place) => place.part === part);

const waits = (place: PartPlaceView, mode: PartsMode): boolean =>
  mode === 'fit' ? place.state !== 'fitted' : place.tag === undefined;

/** Where the work stands: the first kind of part with a place that waits, and the first such place of a kind. */
export const firstKind = (view: PartsView, mode: PartsMode): PartKind | undefined =>
  view.parts.find((part) => placesOf(view, part).some((place) => waits(place, mode)));
export const firstPlace = (view: PartsView, part: PartKind, mode: PartsMode): PartPlaceView | undefined =>
  placesOf(view, part).find((place) => waits(place, mode));

/** Nobody tags an engine whose parts are going back in: the screen opens on what was being done. */
export const openingMode = (view: PartsView): PartsMode =>
  view.places.some((place) => place.tag !== undefined || place.state !== 'open') ? 'fit' : 'tag';

/** "9 of 16 lifters fitted": the progress of one kind, in words. */
export function kindProgress(view: PartsView, part: PartKind, mode: PartsMode) {
  const places = placesOf(view, part);
  const done = places.filter((place) => !waits(place, mode)).length;
  return {
    done,
    of: places.length,
    words: `${done} of ${places.length} ${part}s ${mode === 'fit' ? 'fitted' : 'tagged as found'}`,
  };
}
