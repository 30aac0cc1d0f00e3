/** One thing that must hold. */
import type { QuantityKind } from '../../../quantity/index.js';
import type { ChoiceKind, FinderInput, Size, WantedWindow } from './model.js';
import type { World } from './world.js';

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
export const gasketSizes = ({ fixed, offer }: FinderInput) => ({
  'gasket thickness': fixed.gasket !== undefined || offer.gaskets !== undefined,
  'gasket thickness when it was measured': fixed.measuredWith?.gasketThickness ?? fixed.gasket?.thickness,
});

/** Name and place of a need; the only one of its kind is named without. */
export function placed(title: string, word: Place['word'], of: string, several: boolean): Pick<Need, 'name' | 'place'> {
  return several ? { name: `${title}, ${word} ${of}`, place: { title, word, of } } : { name: title };
}
