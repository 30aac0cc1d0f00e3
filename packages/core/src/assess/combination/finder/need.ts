/** One thing that must hold. */
import { mm, type QuantityKind } from '../../../quantity/index.js';
import { sizeValue } from './choices.js';
import type { ChoiceKind, FinderInput, ShareOf, Size, WantedWindow } from './model.js';
import type { Since, World } from './world.js';

/** One share of margin, and what it is. */
export interface Scale {
  readonly value: number;
  readonly of: ShareOf;
}

/** Place that the name of a need says: `quench, cylinder 3`. */
export interface Place {
  readonly title: string;
  readonly word: 'cylinder' | 'bank';
  readonly of: string;
}

export interface Need extends WantedWindow {
  readonly key: string;
  readonly name: string;
  /** One of several alike: which cylinder or bank. */
  readonly place?: Place;
  readonly quantity: QuantityKind;
  /** What counts as one share of margin; left out: half of the window, or the limit itself. */
  readonly scale?: Scale;
  /** Kinds of choices that move it; those in one list act together, the others add up. */
  readonly by: readonly (readonly ChoiceKind[])[];
  /** What adds up over the choices. */
  readonly amount: (world: World) => number;
  /** The figure that is held against the window; left out: the amount. */
  readonly shown?: { readonly of: (amount: number, world: World) => number; readonly falling: boolean };
  /** What the computation needs and does not have. */
  readonly missing: readonly string[];
}

/** Names of the sizes that are not there. */
export const lacking = (sizes: Readonly<Record<string, Size | boolean | undefined>>): readonly string[] =>
  Object.entries(sizes).flatMap(([name, size]) => (size === undefined || size === false ? [name] : []));

/** What the place of the head is reckoned from. */
export const gasketSizes = ({ fixed, offer }: FinderInput, since: Since) => ({
  'gasket thickness': fixed.gasket !== undefined || offer.gaskets !== undefined,
  'gasket thickness when it was measured': fixed.measuredWith?.[since] ?? fixed.gasket?.thickness,
});

/** Name and place of a need; the only one of its kind is named without its place. */
export const placed = (
  title: string,
  word: Place['word'],
  of: string,
  several: boolean,
): Required<Pick<Need, 'name' | 'place'>> => ({
  name: several ? `${title}, ${word} ${of}` : title,
  place: { title, word, of },
});

/** What may still be taken off a size; where nothing may, a millimetre. */
export function takenScale(now: Size | undefined, least: number): Scale {
  const left = now === undefined ? 0 : sizeValue(now) - least;
  return left > 0 ? { value: left, of: 'what may be taken' } : { value: mm(1), of: 'a millimetre' };
}
