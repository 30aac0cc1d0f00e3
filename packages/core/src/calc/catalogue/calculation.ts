import { done, type Outcome, refused } from '../../quantity/index.js';
import type { SourceKey } from '../../sources/index.js';
import type { Inputs, Outputs, Range, Results, Values } from './spec.js';

/** A valid answer may come with a caution: outside the range of the source, or a choice that was made. */
export interface Caution {
  readonly code: string;
  readonly text: string;
}
export interface Answer<R> {
  readonly outputs: R;
  readonly cautions: readonly Caution[];
}

/** Inputs that are each in range and cannot stand together, such as a rod shorter than the throw. */
export interface Conflict {
  readonly code: 'conflict';
  readonly inputs: readonly string[];
  /** The reason as half a sentence: "the crank could not turn". */
  readonly because: string;
  /** The limit [SI] that one of the inputs would have to keep, where there is one. */
  readonly must?: { readonly input: string } & Range;
}

/** Wraps what `compute` found. */
export const answer = <R>(outputs: R, cautions: readonly Caution[] = []): Outcome<Answer<R>, never> =>
  done({ outputs, cautions });

/** Refuses inputs that cannot stand together. */
export const conflict = (
  inputs: readonly string[],
  because: string,
  must?: Conflict['must'],
): Outcome<never, Conflict> => refused({ code: 'conflict', inputs, because, ...(must && { must }) });

/** A value as a person writes it, or a list of them. */
export type Text = string | number | readonly (string | number)[];
export interface Example {
  readonly inputs: Readonly<Record<string, Text>>;
  /** The places of each figure are the digits that the answer must agree to. */
  readonly outputs: Readonly<Record<string, Text>>;
  /** Where the figures come from: a printed example, hand arithmetic. */
  readonly from: string;
}

export interface Declaration<I extends Inputs, O extends Outputs> {
  /** "subject.what-it-finds"; never changes once published. */
  readonly id: string;
  readonly subject: string;
  readonly title: string;
  readonly summary: string;
  readonly inputs: I;
  readonly outputs: O;
  readonly formula: string;
  readonly assumptions: readonly string[];
  readonly sources: readonly [SourceKey, ...SourceKey[]];
  readonly example: Example;
  readonly compute: (values: Values<I>) => Outcome<Answer<Results<O>>, Conflict>;
}

/** Values by name as the machinery around a calculation sees them. */
export type AnyValues = Readonly<Record<string, unknown>>;

/** A declared calculation with its types worn off, as the catalogue keeps it. */
export interface Calculation extends Omit<Declaration<Inputs, Outputs>, 'compute'> {
  readonly compute: (values: AnyValues) => Outcome<Answer<AnyValues>, Conflict>;
}

/**
 * Declares a calculation. Types of the values that `compute` gets and of those it must answer follow from `inputs` and
 * `outputs`; validation, working, schema, docs page and uncertainty follow from the same declaration at run time.
 */
export function defineCalculation<const I extends Inputs, const O extends Outputs>(
  declaration: Declaration<I, O>,
): Calculation {
  // Sound because `run` only calls `compute` with values that it has read by `declaration.inputs`.
  const compute = declaration.compute as unknown as Calculation['compute'];
  return { ...declaration, compute };
}
