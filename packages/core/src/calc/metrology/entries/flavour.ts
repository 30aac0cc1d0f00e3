/**
 * One calculation in two flavours: for lengths, which are typed with their unit, and for plain numbers, which are of whatever
 * one unit the person keeps in mind (psi, seconds, divisions). Ids of the second end in "-of-numbers".
 */
import { type Length, metres } from '../../../quantity/index.js';

/** Declared alike for the types of `defineCalculation`, which then see a length; at run time a number is a `ratio`. */
interface FlavouredInput {
  readonly kind: 'length';
  readonly unit: string;
  readonly range: { readonly from: number; readonly to: number };
}
interface FlavouredOutput {
  readonly kind: 'length';
  readonly unit: string;
  readonly places: number;
}

export interface Flavour {
  /** Added to the id. */
  readonly tail: string;
  /** Added to the title. */
  readonly of: string;
  readonly input: FlavouredInput;
  readonly output: FlavouredOutput;
  /** At least 0. */
  readonly size: FlavouredInput;
  /** SI squares to squares of the usual unit. */
  readonly perSquare: number;
  /** Writes a figure of an example: "5" as "5 mm" or "5". */
  readonly text: (number: string | number) => string;
  readonly texts: (numbers: readonly (string | number)[]) => readonly string[];
}

const FAR = metres(1000);
const HUGE = 1e15;
const PLAIN = 'ratio' as string as 'length';

export const lengths: Flavour = {
  tail: '',
  of: '',
  input: { kind: 'length', unit: 'mm', range: { from: -FAR, to: FAR } },
  output: { kind: 'length', unit: 'mm', places: 5 },
  size: { kind: 'length', unit: 'mm', range: { from: 0, to: FAR } },
  perSquare: 1e6,
  text: (number) => `${number} mm`,
  texts: (numbers) => numbers.map((one) => `${one} mm`),
};

export const numbers: Flavour = {
  tail: '-of-numbers',
  of: ' of plain numbers',
  input: { kind: PLAIN, unit: '', range: { from: -HUGE, to: HUGE } },
  output: { kind: PLAIN, unit: '', places: 6 },
  size: { kind: PLAIN, unit: '', range: { from: 0, to: HUGE } },
  perSquare: 1,
  text: String,
  texts: (all) => all.map(String),
};

export const asLength = (number: number): Length => number as Length;
export const maybeLength = (number: number | undefined): Length | undefined => number as Length | undefined;
export const asLengths = (all: readonly number[]): readonly Length[] => all as readonly Length[];
