export { isReading } from './causes.js';
export { type Bench, benchOf, type Corrected, correctedReading, type Spot, spotOf } from './corrected.js';
export { type Disagreement, keyOf, type SizeEntry, type SureSize } from './size.js';
export { type LimitsFor, sizesOf } from './sizes-of.js';
export { type Habits, USUAL_DOUBTS, USUAL_HABITS, type UsualDoubt } from './usual-doubt.js';
