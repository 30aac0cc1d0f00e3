/** For tests: runs an entry of this room on typed inputs. */
import { type CalcResult, describeCalcFault, type RunOptions, runDeclared } from '../catalogue/index.js';
import { metrologyCalculations } from './entries/index.js';

function attempt(id: string, inputs: object, options: RunOptions = {}) {
  const calc = metrologyCalculations.find((one) => one.id === `metrology.${id}`);
  if (!calc) throw new Error(`no entry ${id}`);
  return runDeclared(calc, inputs, options);
}

/** The whole result; throws with the lines of a refusal. */
export function result(id: string, inputs: object, options: RunOptions = {}): CalcResult {
  const run = attempt(id, inputs, options);
  if (!run.ok) throw new Error(run.fault.map(describeCalcFault).join('\n'));
  return run.value;
}

/** Values by output name, in the usual units. */
export const values = (id: string, inputs: object): Readonly<Record<string, unknown>> =>
  Object.fromEntries(Object.entries(result(id, inputs).outputs).map(([name, output]) => [name, output.value]));

/** The lines of a refusal; '' when it was not refused. */
export function refusal(id: string, inputs: object): string {
  const run = attempt(id, inputs);
  return run.ok ? '' : run.fault.map(describeCalcFault).join('\n');
}

export const mm = (lengths: readonly number[]): readonly { readonly value: number; readonly unit: string }[] =>
  lengths.map((value) => ({ value, unit: 'mm' }));
