import { done, type Outcome, refused } from '../../quantity/index.js';
import { sourceOf } from '../../sources/index.js';
import type { Answer, AnyValues, Calculation, Caution, Conflict } from './calculation.js';
import { type Doubtful, doubtfulInputs, evaluate, type NotFinite, numbersOf, valuesOf } from './compute.js';
import type { System } from './display.js';
import type { CalcFault } from './fault.js';
import { monteCarlo } from './monte-carlo.js';
import { type Doubts, presentOutputs } from './present.js';
import { propagate } from './propagate.js';
import { seeded } from './random.js';
import { type ReadInput, readInputs } from './read-inputs.js';
import type { CalcResult } from './result.js';
import { isQuantity } from './spec.js';
import { workingOf } from './working.js';

export interface RunOptions {
  /** Work out the doubt of each result from inputs that state a standard uncertainty: "4.030 ±0.0005 in". */
  readonly uncertainty?: { readonly trials?: number; readonly seed?: number } | undefined;
  /** Show texts in this system, whatever was typed. */
  readonly system?: System | undefined;
}

const TRIALS = 5000;
const SEED = 1;

/**
 * Runs a declared calculation on inputs as a person wrote them.
 *
 * A value is a text with its unit ("4.030 in"), an object { value, unit }, a plain number for a ratio or a count, or a
 * list of these where the input takes a list. In a calculation the figure after ± is a STANDARD uncertainty (one
 * standard deviation), not a tolerance; a tolerance of limits ±a is about a/√3 (JCGM 100, 4.3.7).
 * Returns every fault of the inputs as data (`describeCalcFault` makes the sentence); never an answer that is not a number.
 */
export function runDeclared(
  calc: Calculation,
  raw: unknown,
  options: RunOptions = {},
): Outcome<CalcResult, readonly CalcFault[]> {
  const inputs = readInputs(calc, raw);
  if (!inputs.ok) return inputs;
  const values = valuesOf(calc, inputs.value);
  const found = evaluate(calc, values);
  if (!found.ok) return refused([faultOf(calc, inputs.value, found.fault)]);
  return done(resultOf(calc, inputs.value, values, found.value, options));
}

function resultOf(
  calc: Calculation,
  inputs: readonly ReadInput[],
  values: AnyValues,
  found: Answer<AnyValues>,
  options: RunOptions,
): CalcResult {
  const doubtful = doubtfulInputs(inputs);
  const asked = options.uncertainty;
  const known = asked && doubtful.length > 0 ? { trials: TRIALS, seed: SEED, ...asked } : undefined;
  const doubts = known && doubtsOf(calc, values, found, doubtful, known);
  const outputs = presentOutputs(calc, inputs, found.outputs, doubts, options.system);
  return {
    id: calc.id,
    title: calc.title,
    outputs,
    working: workingOf(calc, inputs, outputs),
    cautions: [...found.cautions, ...(asked ? exactInputs(inputs, doubtful) : [])],
    sources: calc.sources.map((key) => sourceOf(key)),
    ...(known && doubts && { trials: { trials: known.trials, refused: doubts.refused, seed: known.seed } }),
  };
}

function doubtsOf(
  calc: Calculation,
  values: AnyValues,
  found: Answer<AnyValues>,
  doubtful: readonly Doubtful[],
  { trials, seed }: { readonly trials: number; readonly seed: number },
): Doubts & { readonly refused: number } {
  const linear = propagate(calc, values, numbersOf(found.outputs), doubtful);
  const tried = monteCarlo(calc, values, doubtful, trials, seeded(seed));
  return { linear, spreads: tried.spreads, refused: tried.refused };
}

/** Says which inputs were taken as exact because they state no doubt. */
function exactInputs(inputs: readonly ReadInput[], doubtful: readonly Doubtful[]): readonly Caution[] {
  const exact = inputs
    .filter(({ name, spec }) => isQuantity(spec) && !doubtful.some((one) => one.name === name))
    .map(({ name }) => name);
  if (exact.length === 0) return [];
  const text =
    doubtful.length === 0
      ? 'no input states an uncertainty (such as 4.030 ±0.0005 in): that of the result is not known'
      : `taken as exact, as they state no uncertainty: ${exact.join(', ')}`;
  return [{ code: 'taken-as-exact', text }];
}

function faultOf(calc: Calculation, inputs: readonly ReadInput[], fault: Conflict | NotFinite): CalcFault {
  if (fault.code === 'no-answer') return fault;
  const texts = inputs
    .filter(({ name }) => fault.inputs.includes(name))
    .map(({ name, values }) => [name, values.map((one) => one.text).join(', ')]);
  const given: Readonly<Record<string, string>> = Object.fromEntries(texts);
  const must = fault.must && limitOf(calc, inputs, fault.must);
  return { code: 'conflict', given, because: fault.because, ...(must && { must }) };
}

function limitOf(calc: Calculation, inputs: readonly ReadInput[], must: NonNullable<Conflict['must']>) {
  const { input, ...range } = must;
  const spec = calc.inputs[input];
  if (!spec || (!isQuantity(spec) && spec.kind !== 'count')) return undefined;
  const typed = inputs.find(({ name }) => name === input)?.values[0]?.unit;
  return { input, range, kind: spec.kind, unit: spec.kind === 'count' ? '' : (typed ?? spec.unit) };
}
