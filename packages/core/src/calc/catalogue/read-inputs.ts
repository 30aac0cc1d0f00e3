/** Reads what a person gave for the inputs of a calculation. Every fault is found, not only the first. */
import { done, type Outcome, refused } from '../../quantity/index.js';
import type { Calculation } from './calculation.js';
import { expectedOne, expectedText } from './expected.js';
import type { CalcFault } from './fault.js';
import { holds, limitText } from './range.js';
import { readQuantity } from './read-quantity.js';
import { type Place, type ReadValue, shown, wrongShape } from './read-value.js';
import { type ChoiceInput, type CountInput, type InputSpec, isQuantity, type TextInput } from './spec.js';

export interface ReadInput {
  readonly name: string;
  readonly spec: InputSpec;
  /** One value, or those of a list. */
  readonly values: readonly ReadValue[];
  /** Left out by the person and taken from the default. */
  readonly assumed: boolean;
}
type ReadOne = Outcome<ReadValue, CalcFault>;
type ReadWhole = Outcome<ReadInput | undefined, readonly CalcFault[]>;

/** Long enough for the longest reference data set of certified univariate statistics, 1001 readings, and for a measured lobe. */
export const LONGEST_LIST = 5000;

/** Inputs in the order of the declaration; those left out without a default are not in the list. */
export function readInputs(calc: Calculation, raw: unknown): Outcome<readonly ReadInput[], readonly CalcFault[]> {
  if (typeof raw !== 'object' || raw === null || Array.isArray(raw)) return refused([{ code: 'inputs-not-named' }]);
  const given = new Map<string, unknown>(Object.entries(raw));
  const known = Object.keys(calc.inputs);
  const strangers: CalcFault[] = [...given.keys()]
    .filter((input) => !known.includes(input))
    .map((input) => ({ code: 'unknown-input', input, known }));
  const read = together(Object.entries(calc.inputs).map(([name, spec]) => readInput(name, spec, given.get(name))));
  if (!read.ok) return refused([...strangers, ...read.fault.flat()]);
  if (strangers.length > 0) return refused(strangers);
  return done(read.value.filter((one) => one !== undefined));
}

/** All values, or all faults. */
function together<T, F>(outcomes: readonly Outcome<T, F>[]): Outcome<readonly T[], readonly F[]> {
  const values: T[] = [];
  const faults: F[] = [];
  for (const one of outcomes) {
    if (one.ok) values.push(one.value);
    else faults.push(one.fault);
  }
  return faults.length > 0 ? refused(faults) : done(values);
}

function readInput(name: string, spec: InputSpec, raw: unknown): ReadWhole {
  if (raw === undefined || raw === null) return whenLeftOut(name, spec);
  if (spec.list) return readList(name, spec, raw);
  const one = readOne({ input: name }, spec, raw);
  return one.ok ? done({ name, spec, values: [one.value], assumed: false }) : refused([one.fault]);
}

/**
 * A list as people write one: a row of values, one value alone, or a text such as "1-3-4-2", "1 3 4 2" (whole numbers) or
 * "95.512 mm, 95.514 mm". A comma parts values only before a space, because alone it may be a decimal mark.
 */
function itemsOf(spec: InputSpec, raw: unknown): readonly unknown[] {
  if (Array.isArray(raw)) return raw;
  if (typeof raw !== 'string') return [raw];
  const parting = spec.kind === 'count' ? /\s*[-,;]\s*|\s+/ : /\s*;\s*|,\s+/;
  return raw
    .trim()
    .split(parting)
    .filter((item) => item !== '');
}

function readList(name: string, spec: InputSpec, given: unknown): ReadWhole {
  const raw = itemsOf(spec, given);
  if (raw.length === 0) return refused([{ code: 'empty-list', input: name, expected: expectedText(spec) }]);
  if (raw.length > LONGEST_LIST) {
    return refused([{ code: 'list-too-long', input: name, length: raw.length, limit: LONGEST_LIST }]);
  }
  const read = together(raw.map((one, at) => readOne({ input: name, at: at + 1 }, spec, one)));
  return read.ok ? done({ name, spec, values: read.value, assumed: false }) : read;
}

function whenLeftOut(name: string, spec: InputSpec): ReadWhole {
  if (spec.kind !== 'text' && spec.default !== undefined) {
    return done({ name, spec, values: [defaultValue(spec, spec.default)], assumed: true });
  }
  if (spec.optional) return done(undefined);
  return refused([{ code: 'missing-input', input: name, expected: expectedText(spec) }]);
}

function defaultValue(spec: InputSpec, value: number | string): ReadValue {
  if (!isQuantity(spec) || typeof value === 'string') return { value, text: String(value) };
  return { value, text: limitText(spec.kind, value, spec.unit), unit: spec.unit };
}

function readOne(place: Place, spec: InputSpec, raw: unknown): ReadOne {
  if (isQuantity(spec)) return readQuantity(place, spec, raw);
  switch (spec.kind) {
    case 'count':
      return readCount(place, spec, raw);
    case 'choice':
      return readChoice(place, spec, raw);
    case 'text':
      return readText(place, spec, raw);
  }
}

function readCount(place: Place, spec: CountInput, raw: unknown): ReadOne {
  const value = typeof raw === 'string' && /^\s*[+-]?\d{1,9}\s*$/.test(raw) ? Number(raw) : raw;
  if (typeof value !== 'number' || !Number.isSafeInteger(value)) return wrongShape(place, raw, expectedOne(spec));
  if (holds(spec.range, value)) return done({ value, text: String(value) });
  return refused({ ...place, code: 'out-of-range', given: String(value), range: spec.range, kind: 'count', unit: '' });
}

function readChoice(place: Place, spec: ChoiceInput, raw: unknown): ReadOne {
  const value = typeof raw === 'string' ? raw.trim() : undefined;
  if (value !== undefined && spec.choices.includes(value)) return done({ value, text: value });
  return refused({ ...place, code: 'not-a-choice', given: shown(raw), choices: spec.choices });
}

function readText(place: Place, spec: TextInput, raw: unknown): ReadOne {
  // A text may be all digits, and a file then holds it as a number: 10 degrees of freedom beside "inf".
  const text = typeof raw === 'number' ? String(raw) : raw;
  const value = typeof text === 'string' ? spec.read(text) : undefined;
  if (typeof text === 'string' && value !== undefined) return done({ value, text: text.trim() });
  return wrongShape(place, raw, spec.expected);
}
