/** For tests: a calculation run on its own example with some inputs changed. */
import { type Calculation, describeCalcFault, findCalculation, type OutputResult, runCalculation } from './index.js';

type Change = Readonly<Record<string, unknown>>;

export function calculationOf(id: string): Calculation {
  const calc = findCalculation(id);
  if (!calc) throw new Error(`no calculation ${id}`);
  return calc;
}

/** The inputs of the example with a change; `undefined` takes an input out. */
export const changed = (id: string, change: Change): Change => ({ ...calculationOf(id).example.inputs, ...change });

/** Outputs and cautions, or the lines with which it is refused. */
export function runChanged(id: string, change: Change = {}) {
  const run = runCalculation(id, changed(id, change));
  return run.ok
    ? { outputs: run.value.outputs, cautions: run.value.cautions.map(({ code }) => code), refused: '' }
    : {
        outputs: {} as Readonly<Record<string, OutputResult>>,
        cautions: [] as readonly string[],
        refused: run.fault.map(describeCalcFault).join('\n'),
      };
}

/** Value of one output, in its usual unit. */
export function outputOf(id: string, name: string, change: Change = {}) {
  const { outputs, refused } = runChanged(id, change);
  const found = outputs[name];
  if (!found) throw new Error(refused || `${id} does not answer ${name}`);
  return found.value;
}
