export {
  outOfRound,
  ROUND_RULES,
  type RoundRule,
  roundShares,
  type Share,
  TAPER_RULES,
  type TaperRule,
  taper,
  taperShares,
} from './bore-shape.js';
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
export { LEAK_PATHS, leakage, leastAllowed, neighbours, type WetFinding, wetFinding } from './cylinder-tests.js';
export { atMost, conformance, type Distance, type Limits, nearestLimit, type Verdict, verdictOf } from './decision.js';
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
export { type GradeBasis, gradeFigure } from './gasket-grade.js';
export { gaugeError } from './instrument.js';
export { type Judgement, judge, type Question } from './judge.js';
export { stepsBetween } from './liners.js';
export { EXPANSION } from './materials.js';
export { deviation, mean, median, medianDistance, spread, squaresAboutMean } from './repeats.js';
export { type Slip, type SlipCode, slipsOf } from './slips.js';
export { sizeAtReference, type WarmBody } from './temperature.js';
export { type Bounds, SHAPES, type Shape, typeB } from './type-b.js';
export { wearFigure, wearGrows } from './wear.js';
