export { deviationsOf, readToleranceClass, type ToleranceClass } from './iso-class.js';
export { type Deviations, holeDeviations, LETTERS, shaftDeviations } from './iso-deviations.js';
export { standardTolerance, type ToleranceUnit, toleranceUnit } from './iso-grades.js';
export { MATERIALS, type Material, type MaterialName, materialNames } from './materials.js';
export { assemblyChange, type FitWarmth, gripGoneAt, grown, warmInterference } from './thermal-fit.js';
export {
  type Elastic,
  type FitSizes,
  type FitStresses,
  fitGrip,
  fitPressure,
  fitSizes,
  fitStresses,
  interferenceForPressure,
  type PressedPair,
  smoothing,
} from './thick-cylinder.js';
