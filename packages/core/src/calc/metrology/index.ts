export {
  type Budget,
  type BudgetLine,
  budgetOf,
  type Correlation,
  type Expanded,
  expand,
  wholeDegrees,
} from './budget.js';
export { coverageFactor, type RectanglePair, rectanglePairCoverage } from './coverage.js';
export {
  chiSquareBelow,
  chiSquareQuantile,
  fisherAbove,
  fisherBelow,
  fisherQuantile,
  normalBelow,
  normalQuantile,
  studentBelow,
  studentQuantile,
} from './distributions.js';
export { deviation, mean, median, medianDistance, spread, squaresAboutMean } from './repeats.js';
export { type Slip, type SlipCode, slipsOf } from './slips.js';
export { type Bounds, SHAPES, type Shape, typeB } from './type-b.js';
