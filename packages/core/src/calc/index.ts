/** The catalogue of calculations: every subject's entries in one list, found by id. */
import { type Outcome, refused } from '../quantity/index.js';
import { balanceCalculations } from './balance/entries/index.js';
import { bearingCalculations } from './bearings/entries/index.js';
import { camCalculations } from './cam/entries/index.js';
import { type CalcFault, type CalcResult, type Calculation, type RunOptions, runDeclared } from './catalogue/index.js';
import { crankCalculations } from './crank/entries/index.js';
import { cylinderCalculations } from './cylinder/entries/index.js';
import { fastenerCalculations } from './fasteners/entries/index.js';
import { fitCalculations } from './fits/entries/index.js';
import { metrologyCalculations } from './metrology/entries/index.js';
import { selectionCalculations } from './selection/entries/index.js';
import { valveSettingCalculations } from './valve-setting/entries/index.js';
import { valvetrainCalculations } from './valvetrain/entries/index.js';

export {
  type CalcFault,
  type CalcResult,
  type Calculation,
  type CalculationPage,
  type Caution,
  describeCalcFault,
  inputSchema,
  type OutputResult,
  type OutputUncertainty,
  pageOf,
  type RunOptions,
  type System,
  type WorkingLine,
  workingText,
} from './catalogue/index.js';

export { decisions, type ServedDecision } from './decisions.js';

/** Every entry, by subject. */
export const catalogue: readonly Calculation[] = [
  ...crankCalculations,
  ...cylinderCalculations,
  ...balanceCalculations,
  ...camCalculations,
  ...valvetrainCalculations,
  ...fastenerCalculations,
  ...bearingCalculations,
  ...fitCalculations,
  ...metrologyCalculations,
  ...valveSettingCalculations,
  ...selectionCalculations,
];

const byId = new Map(catalogue.map((calc) => [calc.id, calc]));

/** The calculation of an id, or undefined. */
export const findCalculation = (id: string): Calculation | undefined => byId.get(id);

/**
 * Runs the calculation of an id on inputs as a person wrote them; see `runDeclared`. Refuses an unknown id with those
 * that come near.
 */
export function runCalculation(
  id: string,
  inputs: unknown,
  options: RunOptions = {},
): Outcome<CalcResult, readonly CalcFault[]> {
  const calc = byId.get(id);
  return calc ? runDeclared(calc, inputs, options) : refused([{ code: 'unknown-calculation', id, near: near(id) }]);
}

const MOST_NEAR = 5;

function near(id: string): readonly string[] {
  const words = id.toLowerCase().match(/[a-z]{3,}/g) ?? [];
  return catalogue
    .map((calc) => ({ id: calc.id, hits: words.filter((word) => calc.id.includes(word)).length }))
    .filter((one) => one.hits > 0)
    .sort((a, b) => b.hits - a.hits)
    .slice(0, MOST_NEAR)
    .map((one) => one.id);
}
