/** What a calculation declares about its inputs and outputs, and the types that follow from it. */
import type { QuantityKind, QuantityOf } from '../../quantity/index.js';

/** Limits in SI; each end may be open. `above` and `below` leave the end out, `from` and `to` take it in. */
export interface Range {
  readonly above?: number;
  readonly from?: number;
  readonly to?: number;
  readonly below?: number;
}

interface Named {
  readonly symbol: string;
  readonly meaning: string;
  /** Several values of one kind, given as a list. */
  readonly list?: true;
  /** May be left out; `compute` then gets undefined. An input with a default may be left out too. */
  readonly optional?: true;
}

export interface QuantityInput<K extends QuantityKind = QuantityKind> extends Named {
  readonly kind: K;
  /** The unit in which limits and defaults are shown. */
  readonly unit: string;
  readonly range: Range;
  /** SI value used, and shown as assumed, when the input is left out. */
  readonly default?: number;
}
/** A whole number: cylinders, fasteners. */
export interface CountInput extends Named {
  readonly kind: 'count';
  readonly range: Range;
  readonly default?: number;
}
export interface ChoiceInput<C extends string = string> extends Named {
  readonly kind: 'choice';
  readonly choices: readonly C[];
  readonly default?: C;
}
/** A text with a grammar of its own, such as a thread designation. */
export interface TextInput<T = unknown> extends Named {
  readonly kind: 'text';
  /** Meaning of the text, or undefined when it has none. */
  readonly read: (text: string) => T | undefined;
  /** What is valid, for the refusal and the docs page: "M10 x 1.5 or 3/8-24". */
  readonly expected: string;
}

export type InputSpec = { [K in QuantityKind]: QuantityInput<K> }[QuantityKind] | CountInput | ChoiceInput | TextInput;
export type Inputs = Readonly<Record<string, InputSpec>>;

type One<S> = S extends { readonly kind: infer K }
  ? K extends QuantityKind
    ? QuantityOf<K>
    : K extends 'count'
      ? number
      : S extends { readonly choices: readonly (infer C)[] }
        ? C
        : S extends { readonly read: (text: string) => infer T }
          ? Exclude<T, undefined>
          : never
  : never;
type Many<S> = S extends { readonly list: true } ? readonly One<S>[] : One<S>;
type Given<S> = S extends { readonly optional: true } ? Many<S> | undefined : Many<S>;
/** What `compute` gets: SI values by input name. */
export type Values<I extends Inputs> = { readonly [N in keyof I]: Given<I[N]> };

interface Shown {
  readonly symbol: string;
  readonly meaning: string;
  readonly list?: true;
  /** May be absent from the answer: not known is not zero. */
  readonly optional?: true;
}
export interface QuantityOutput<K extends QuantityKind = QuantityKind> extends Shown {
  readonly kind: K;
  /** Usual engineering unit, and the decimal places shown in it. */
  readonly unit: string;
  readonly places: number;
  /** The unit is what was asked for: shown in it whatever the person typed or chose. */
  readonly asked?: true;
}
export interface CountOutput extends Shown {
  readonly kind: 'count';
}
/** A word or a sentence: a verdict, a name from a table. */
export interface TextOutput extends Shown {
  readonly kind: 'text';
}
export type OutputSpec = { [K in QuantityKind]: QuantityOutput<K> }[QuantityKind] | CountOutput | TextOutput;
export type Outputs = Readonly<Record<string, OutputSpec>>;

type OneOut<S> = S extends { readonly kind: infer K }
  ? K extends QuantityKind
    ? QuantityOf<K>
    : K extends 'count'
      ? number
      : string
  : never;
type ManyOut<S> = S extends { readonly list: true } ? readonly OneOut<S>[] : OneOut<S>;
type Answered<S> = S extends { readonly optional: true } ? ManyOut<S> | undefined : ManyOut<S>;
/** What `compute` answers: SI values by output name. */
export type Results<O extends Outputs> = { readonly [N in keyof O]: Answered<O[N]> };

const notQuantities: ReadonlySet<string> = new Set(['count', 'choice', 'text']);

/** Whether a declaration is of a quantity with a unit (not a count, choice or text). */
export function isQuantity(spec: InputSpec): spec is Extract<InputSpec, QuantityInput>;
export function isQuantity(spec: OutputSpec): spec is Extract<OutputSpec, QuantityOutput>;
export function isQuantity(spec: InputSpec | OutputSpec): boolean {
  return !notQuantities.has(spec.kind);
}
