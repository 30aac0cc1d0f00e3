/** For tests: a calculation through the same path as the command line. */
import type { CalcResult } from '../catalogue/index.js';
import { describeCalcFault, runCalculation } from '../index.js';

type Inputs = Readonly<Record<string, unknown>>;

export function run(id: string, inputs: Inputs): CalcResult {
  const found = runCalculation(id, inputs);
  if (!found.ok) throw new Error(found.fault.map(describeCalcFault).join('\n'));
  return found.value;
}
/** Value of one output, in the unit of the output. */
export const outputOf = (id: string, inputs: Inputs, output: string): unknown => run(id, inputs).outputs[output]?.value;
export const numberOf = (id: string, inputs: Inputs, output: string): number => Number(outputOf(id, inputs, output));
export const cautionsOf = (id: string, inputs: Inputs): readonly string[] =>
  run(id, inputs).cautions.map((one) => one.code);
/** The line with which inputs are refused, or "accepted". */
export function refusalOf(id: string, inputs: Inputs): string {
  const found = runCalculation(id, inputs);
  return found.ok ? 'accepted' : found.fault.map(describeCalcFault).join('\n');
}
