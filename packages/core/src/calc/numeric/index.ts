export { type LinearFit, leastSquares } from './least-squares.js';
export { type Contribution, type DoubtfulValue, type Propagated, propagateBy } from './propagation.js';
export { type Lowest, lowest, signChange } from './search.js';
export { type Spline, type SplineEnds, type SplinePoint, splineAt, splineThrough } from './spline.js';
