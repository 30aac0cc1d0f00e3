export {
  type Answer,
  answer,
  type Calculation,
  type Caution,
  type Conflict,
  conflict,
  type Declaration,
  defineCalculation,
  type Example,
} from './calculation.js';
export { describeCalcFault } from './describe.js';
export type { System } from './display.js';
export type { CalcFault } from './fault.js';
export { type CalculationPage, pageOf } from './page.js';
export { fillNormals, nextEven, nextNormal, type RandomState, seeded } from './random.js';
export { holds } from './range.js';
export type { CalcResult, OutputResult, OutputUncertainty, WorkingLine } from './result.js';
export { type RunOptions, runDeclared } from './run.js';
export { inputSchema } from './schema.js';
export type { Inputs, Outputs, Range, Results, Values } from './spec.js';
export { reversedEnds, verdictOf, type WindowVerdict } from './window.js';
export { workingText } from './working.js';
