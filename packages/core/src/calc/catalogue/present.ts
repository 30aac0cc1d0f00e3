/** Turns the SI answer of a calculation into results with unit, text and doubt. */
import { formatNumber, formatQuantity, type QuantityKind, toUnit } from '../../quantity/index.js';
import type { AnyValues, Calculation } from './calculation.js';
import { placeName } from './compute.js';
import { displayOf, type System, shownValue } from './display.js';
import type { Spread } from './monte-carlo.js';
import type { Propagated } from './propagate.js';
import type { ReadInput } from './read-inputs.js';
import type { OutputResult, OutputUncertainty } from './result.js';
import { isQuantity, type OutputSpec, type QuantityOutput } from './spec.js';

/** Doubt of every number of an answer, by place. */
export interface Doubts {
  readonly linear: ReadonlyMap<string, Propagated>;
  readonly spreads: ReadonlyMap<string, Spread>;
}

export function presentOutputs(
  calc: Calculation,
  inputs: readonly ReadInput[],
  outputs: AnyValues,
  doubts: Doubts | undefined,
  system: System | undefined,
): Readonly<Record<string, OutputResult>> {
  const shown = Object.entries(calc.outputs).flatMap(([name, spec]): [string, OutputResult][] => {
    const value = outputs[name];
    return value === undefined ? [] : [[name, presentOne(name, spec, value, inputs, doubts, system)]];
  });
  return Object.fromEntries(shown);
}

function presentOne(
  name: string,
  spec: OutputSpec,
  value: unknown,
  inputs: readonly ReadInput[],
  doubts: Doubts | undefined,
  system: System | undefined,
): OutputResult {
  const { symbol, meaning } = spec;
  const values = (Array.isArray(value) ? value : [value]) as (number | string)[];
  if (!isQuantity(spec)) {
    const plain = { kind: spec.kind, symbol, meaning, unit: '', text: values.join(', ') };
    return { ...plain, value: spec.list ? values : values[0]! };
  }
  const numbers = values.map(Number);
  const display = displayOf(spec, inputs, system);
  const inUnit = numbers.map((number) => withoutNoise(toUnit(spec.kind, number, spec.unit)));
  const text = numbers.map((number) => shownValue(spec, number, display)).join(', ');
  const result = {
    kind: spec.kind,
    symbol,
    meaning,
    value: spec.list ? inUnit : inUnit[0]!,
    unit: spec.unit,
    text,
  };
  const uncertainty = doubts && doubtOf(name, spec, numbers, doubts, display.unit);
  return uncertainty === undefined ? result : { ...result, uncertainty };
}

/** 270 and not 270.00000000000006: the last binary digits of a conversion say nothing. */
const withoutNoise = (number: number): number => Number(number.toPrecision(14));

function doubtOf(
  name: string,
  spec: QuantityOutput,
  numbers: readonly number[],
  doubts: Doubts,
  displayUnit: string,
): OutputResult['uncertainty'] {
  const found = numbers.map((_, at) => oneDoubt(placeName(name, spec.list && at), spec, doubts, displayUnit));
  return spec.list ? found.map((one) => one ?? null) : found[0];
}

function oneDoubt(place: string, spec: QuantityOutput, doubts: Doubts, unit: string): OutputUncertainty | undefined {
  const linear = doubts.linear.get(place);
  const spread = doubts.spreads.get(place);
  if (!linear || !spread) return undefined;
  const at = (value: number) => toUnit(spec.kind, value, spec.unit);
  const across = (width: number) => at(width) - at(0);
  const whole = linear.standard ** 2;
  return {
    standard: across(linear.standard),
    text: `±${doubtText(spec.kind, linear.standard, unit)}`,
    contributions: linear.contributions
      .map(({ input, effect }) => ({ input, share: whole === 0 ? 0 : effect ** 2 / whole }))
      .sort((a, b) => b.share - a.share),
    monteCarlo: {
      mean: at(spread.mean),
      standard: across(spread.standard),
      low: at(spread.low),
      high: at(spread.high),
    },
  };
}

/** A standard uncertainty with two significant digits (JCGM 100, 7.2.6). */
function doubtText(kind: QuantityKind, standard: number, unit: string): string {
  const doubtKind = kind === 'temperature' ? 'temperature-difference' : kind;
  const number = toUnit(doubtKind, standard, unit);
  if (number === 0) return formatQuantity(doubtKind, 0, unit, 0);
  const places = Math.max(0, 1 - Math.floor(Math.log10(number)));
  return places > 9 ? `${formatNumber(number, 9)} ${unit}` : formatQuantity(doubtKind, standard, unit, places);
}
