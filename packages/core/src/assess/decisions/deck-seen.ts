/** A deck of the block as measured, and the cuts that it may ask for. */
import { deckCuts } from '../../calc/cylinder/index.js';
import type { Length } from '../../quantity/index.js';
import type { Assessment, Place, Size, VerdictWord } from '../model.js';
import { findingAt, limitAt, origin, placesOf, sizeAt } from './decision.js';
import { closed, middle } from './judged.js';
import type { LengthWords } from './length-words.js';
import { smallest, stationValues } from './measured-at.js';

export interface Deck {
  readonly place: Place;
  readonly gap: Size;
  /** Corner heights and the lowest of them, where they are measured. */
  readonly heights: readonly { readonly name: string; readonly value: number }[];
  readonly lowest: number | undefined;
  readonly clearances: readonly { readonly name: string; readonly value: number }[];
}

export function deckOf(assessment: Assessment, place: Place): Deck | undefined {
  const gap = sizeAt(assessment, 'deck-flatness.gap', place.id);
  const corners = placesOf(assessment, 'deck-height').find(({ id }) => id === place.id);
  const heights = corners === undefined ? [] : stationValues(assessment, 'deck-height', corners);
  const clearances = placesOf(assessment, 'deck-clearance')
    .filter(({ bank }) => bank === place.bank)
    .flatMap(({ id, name }) => {
      const size = sizeAt(assessment, 'deck-clearance.depth', id);
      return size === undefined ? [] : [{ name, value: size.value }];
    });
  return (
    gap && {
      place,
      gap,
      heights: heights.map(({ station, value }) => ({ name: station.name, value })),
      lowest: smallest(heights)?.value,
      clearances,
    }
  );
}

/** Verdicts on the face as it is: what is not measured is not good. */
export function asFound(assessment: Assessment, { place, clearances }: Deck): readonly VerdictWord[] {
  const own = ['deck-flatness.gap', 'deck-height.height', 'deck-height.spread'].flatMap((property) => {
    const finding = findingAt(assessment, property, place.id);
    return finding === undefined || finding.held.length === 0 ? [] : [finding.verdict];
  });
  const cylinders = placesOf(assessment, 'deck-clearance').filter(({ bank }) => bank === place.bank);
  const depths =
    clearances.length === 0
      ? []
      : cylinders.flatMap(({ id }) => {
          const finding = findingAt(assessment, 'deck-clearance.depth', id);
          return finding === undefined || finding.held.length === 0 ? [] : [finding.verdict];
        });
  return [...own, ...depths];
}

export interface Cut {
  readonly id: string;
  readonly words: string;
  /** At the lowest corner, and at the highest. */
  readonly least: number;
  readonly most: number;
  readonly how: string;
}

/** Cut until the straight edge shows nothing, square to the crank: the lowest corner gives its gap, the others more. */
export function cleanUp({ place, gap, heights, lowest }: Deck, words: LengthWords): readonly Cut[] {
  if (gap.value <= 0) return [];
  const high = heights.length === 0 ? 0 : Math.max(...heights.map(({ value }) => value)) - (lowest ?? 0);
  const most = gap.value + high;
  const { value } = gap;
  return [
    {
      id: 'clean-up',
      words: `Cut the ${place.name} until it is flat and square to the crankshaft`,
      least: value,
      most,
      how: `${words.length(value)} (gap under the straight edge) at the lowest corner${high > 0 ? `, ${words.length(most)} at the highest` : ''}`,
    },
  ];
}

/** Cut to the middle of the printed deck clearance; each cylinder says how much that is. */
export function toClearance(assessment: Assessment, { place, clearances }: Deck, words: LengthWords): readonly Cut[] {
  const cylinders = placesOf(assessment, 'deck-clearance').filter(({ bank }) => bank === place.bank);
  const [first] = cylinders;
  const asked = first && limitAt(assessment, 'deck-clearance.depth', first.id, 'new');
  const window = asked && closed(asked.window);
  if (!window || clearances.length < cylinders.length || clearances.length === 0) return [];
  const cuts = deckCuts(
    clearances.map(({ value }) => value as Length),
    middle(window) as Length,
  );
  const [least, most] = [Math.min(...cuts), Math.max(...cuts)];
  return least <= 0
    ? []
    : [
        {
          id: 'to-clearance',
          words: `Cut the ${place.name} to a deck clearance of ${words.length(middle(window))}`,
          least,
          most,
          how: `${clearances.map(({ name }, at) => `${name} ${words.length(cuts[at] ?? 0)}`).join('; ')} (${origin(asked.limit)})`,
        },
      ];
}
