export { isReading } from './causes.js';
export {
  type Bench,
  benchOf,
  type Corrected,
  correctedReading,
  type GaugeStory,
  type Spot,
  spotOf,
} from './corrected.js';
export { plannedSizes } from './plan-sizes.js';
export { keyOf, type LimitsFor, type PlannedSize, type PlannedSizes } from './planned.js';
export { FormedSize, type Judged } from './size.js';
export { type Disagreement, type SizeEntry, type Sizes, sizesOf } from './sizes-of.js';
export { type Habits, USUAL_DOUBTS, USUAL_HABITS, type UsualDoubt } from './usual-doubt.js';
