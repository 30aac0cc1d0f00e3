/** The shells that are in the engine, by the clearance that they give as measured. */
import type { Alternative, Assessment } from '../model.js';
import type { Group } from './bearings-of.js';
import { blocked, figure, possible, sizeAt, worstVerdict } from './decision.js';
import { judged, middle } from './judged.js';
import type { LengthWords } from './length-words.js';
import type { ShellPlace } from './shell-positions.js';

export interface AsFitted {
  readonly alternative: Alternative;
  /** Sum of the distances from the middle of each window. */
  readonly total: number;
}

/** Undefined where no clearance with them is known at all. */
export function shellsAsFitted(
  assessment: Assessment,
  group: Group,
  places: readonly ShellPlace[],
  words: LengthWords,
): AsFitted | undefined {
  const read = places.map((place) => {
    return { place, clearance: sizeAt(assessment, group.clearance, place.place.id) };
  });
  const known = read.flatMap(({ place, clearance }) => (clearance ? [{ place, clearance }] : []));
  if (known.length === 0) return undefined;
  const verdicts = known.map(({ place, clearance }) => judged(clearance, place.asked));
  const named = {
    id: 'as-fitted',
    words: 'Keep the shells that were fitted',
    figures: known.map(({ place, clearance }) =>
      figure(
        place.place.name,
        `clearance ${words.sure(clearance.value, clearance.u)}, asked ${words.window(place.asked)}`,
      ),
    ),
  };
  const against = [
    ...read
      .filter(({ clearance }) => !clearance)
      .map(({ place }) => `${place.place.name}: its clearance is not measured.`),
    ...known
      .filter((_, at) => verdicts[at] === 'out')
      .map(
        ({ place, clearance }) =>
          `${place.place.name}: clearance ${words.length(clearance.value)} is outside ${words.window(place.asked)}.`,
      ),
  ];
  const total = known.reduce((sum, { place, clearance }) => sum + Math.abs(clearance.value - middle(place.asked)), 0);
  const verdict = known.length < places.length ? worstVerdict([...verdicts, 'no data']) : worstVerdict(verdicts);
  return {
    total,
    alternative: against.length > 0 ? blocked({ ...named, verdict, against }) : possible({ ...named, verdict }),
  };
}
