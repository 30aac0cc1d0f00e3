/** One evaluation of a calculation on read values; shared by the answer, the derivatives and the Monte Carlo trials. */
import { type Outcome, refused } from '../../quantity/index.js';
import type { Answer, AnyValues, Calculation, Conflict } from './calculation.js';
import { holds } from './range.js';
import type { ReadInput } from './read-inputs.js';
import { isQuantity, type Range } from './spec.js';

export interface NotFinite {
  readonly code: 'no-answer';
  readonly output: string;
}

/** Values by name as `compute` takes them: a list stays a list, an input left out is undefined. */
export function valuesOf(calc: Calculation, inputs: readonly ReadInput[]): AnyValues {
  const byName = new Map(inputs.map((input) => [input.name, input]));
  return Object.fromEntries(
    Object.entries(calc.inputs).map(([name, spec]) => {
      const values = byName.get(name)?.values.map((one) => one.value);
      return [name, spec.list ? values : values?.[0]];
    }),
  );
}

/** Evaluates and refuses an answer that is not finite: not-a-number never leaves a calculation. */
export function evaluate(calc: Calculation, values: AnyValues): Outcome<Answer<AnyValues>, Conflict | NotFinite> {
  const found = calc.compute(values);
  if (!found.ok) return found;
  const output = Object.keys(calc.outputs).find((name) => !finite(found.value.outputs[name]));
  return output === undefined ? found : refused({ code: 'no-answer', output });
}

const finite = (value: unknown): boolean =>
  Array.isArray(value) ? value.every(finite) : typeof value !== 'number' || Number.isFinite(value);

/** The numbers of an answer by place: "name" or "name[1]". Texts are left out. */
export function numbersOf(outputs: AnyValues): ReadonlyMap<string, number> {
  const numbers = new Map<string, number>();
  for (const name of Object.keys(outputs)) {
    const value = outputs[name];
    if (typeof value === 'number') numbers.set(name, value);
    if (!Array.isArray(value)) continue;
    for (const [at, one] of value.entries()) if (typeof one === 'number') numbers.set(placeName(name, at), one);
  }
  return numbers;
}
export const placeName = (name: string, at?: number): string => (at === undefined ? name : `${name}[${at + 1}]`);

/** An input value that may be moved: it states a standard uncertainty. */
export interface Doubtful {
  readonly name: string;
  readonly at?: number;
  readonly value: number;
  readonly standard: number;
  readonly range: Range;
}
export function doubtfulInputs(inputs: readonly ReadInput[]): readonly Doubtful[] {
  return inputs.flatMap(({ name, spec, values }) =>
    values.flatMap(({ value, standard }, at) =>
      isQuantity(spec) && typeof value === 'number' && standard !== undefined
        ? [{ name, value, standard, range: spec.range, ...(spec.list && { at }) }]
        : [],
    ),
  );
}

/**
 * Numbers of the answer with some doubtful inputs put elsewhere, `to[i]` for the i-th of `places`; undefined where one
 * leaves its range or the calculation refuses.
 */
export function numbersAt(
  calc: Calculation,
  values: AnyValues,
  places: readonly Doubtful[],
  to: readonly number[],
): ReadonlyMap<string, number> | undefined {
  if (!places.every((place, at) => holds(place.range, to[at]!))) return undefined;
  const found = evaluate(calc, moved(values, places, to));
  return found.ok ? numbersOf(found.value.outputs) : undefined;
}

/** A list is copied once, when the first of its values is moved. */
function moved(values: AnyValues, places: readonly Doubtful[], to: readonly number[]): AnyValues {
  const changed: Record<string, unknown> = { ...values };
  let name = '';
  let list: number[] = [];
  for (let at = 0; at < places.length; at += 1) {
    const place = places[at]!;
    if (place.at === undefined) {
      changed[place.name] = to[at]!;
      continue;
    }
    if (place.name !== name) {
      name = place.name;
      list = [...(values[name] as readonly number[])];
      changed[name] = list;
    }
    list[place.at] = to[at]!;
  }
  return changed;
}
