/** The shells that are in the engine, by the clearance that they give as measured. */
import type { Alternative, Assessment, Finding, Size } from '../model.js';
import type { Group } from './bearings-of.js';
import { blocked, figure, findingAt, placesText, possible, worstVerdict } from './decision.js';
import { judged, middle } from './judged.js';
import type { LengthWords } from './length-words.js';
import type { ShellPlace } from './shell-positions.js';

export interface AsFitted {
  readonly alternative: Alternative;
  /** `worn` where a clearance has left the new range and is still inside its wear limit. */
  readonly kind: 'fitted' | 'worn';
  /** Sum of the distances from the middle of each new window. */
  readonly total: number;
}

/** Undefined where no clearance with them is known at all. */
export function shellsAsFitted(
  assessment: Assessment,
  group: Group,
  places: readonly ShellPlace[],
  words: LengthWords,
): AsFitted | undefined {
  const found = places.map((place) => ({ place, finding: findingAt(assessment, group.clearance, place.place.id) }));
  const known = found.flatMap(({ place, finding }) => (finding?.size ? [{ place, finding, size: finding.size }] : []));
  if (known.length === 0) return undefined;
  const unread = found.filter(({ finding }) => finding?.size === undefined).map(({ place }) => place.place);
  const worn = known.some(({ place, size }) => judged(size, place.asked) === 'out');
  const verdict = worstVerdict([
    ...known.map(({ finding }) => finding.verdict),
    ...unread.map(() => 'no data' as const),
  ]);
  const against = [
    ...(unread.length > 0 ? [`The clearance of ${placesText(unread)} is not measured.`] : []),
    ...known.filter(({ finding }) => finding.verdict === 'out' || finding.verdict === 'check again').map(wrong(words)),
  ];
  const named = {
    id: 'as-fitted',
    words: 'Keep the shells that were fitted',
    verdict,
    figures: known.map(({ place, size }) =>
      figure(place.place.name, `clearance ${words.sure(size.value, size.u)}, new ${words.window(place.asked)}`),
    ),
  };
  return {
    kind: worn ? 'worn' : 'fitted',
    total: known.reduce((sum, { place, size }) => sum + Math.abs(size.value - middle(place.asked)), 0),
    alternative:
      against.length > 0
        ? blocked({ ...named, against })
        : possible({ ...named, against: worn ? ['Worn past the new range, inside the wear limit.'] : [] }),
  };
}

const wrong =
  (words: LengthWords) =>
  ({ finding, size }: { readonly finding: Finding; readonly size: Size }): string =>
    `${finding.placeName}: clearance ${words.length(size.value)}, ${finding.words}.`;
