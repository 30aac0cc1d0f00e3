export { bobweight, type RodSide } from './bobweight.js';
export type { Complex } from './complex.js';
export { exactPeaks, type Peak, type Shake, shakeAt } from './exact-shaking.js';
export { removals } from './matching.js';
export { type RodEnds, rodEndsByCentre } from './rod-ends.js';
export {
  allowedUnbalance,
  type Correction,
  type SamePlane,
  staticUnbalance,
  twoPlaneCorrection,
  type Unbalance,
} from './rotor.js';
export {
  type CrankSizes,
  counterweighted,
  type Ellipse,
  ellipseOf,
  type Harmonic,
  harmonicAt,
  type Shaking,
  scalesOf,
  shakingOf,
  type Throw,
} from './shaking.js';
