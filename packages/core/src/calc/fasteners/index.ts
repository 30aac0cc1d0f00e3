export { assemblyPreload, type TighteningStress, type Torsion, tighteningStress } from './assembly.js';
export { type ColumnCheck, checkColumns } from './columns.js';
export { type NutFactorRange, nutFactorRanges, type Surface, surfaces } from './nut-factors.js';
export { centreOutwardOrder, crossPattern, type PlacedHole } from './order.js';
export { type PreloadBand, preloadBand, tighteningFactor } from './scatter.js';
export { loadAt, type NoStrength, strengthClasses, strengthOf } from './strength.js';
export type { Strength } from './strength-table.js';
export {
  type NotAThread,
  type RootAreas,
  readThread,
  rootAreas,
  stressArea,
  stressDiameter,
  type Thread,
  type ThreadForm,
  type ThreadSizes,
  threadSizes,
} from './thread.js';
export {
  armsOf,
  type BearingRing,
  type Friction,
  type LongForm,
  preloadByNutFactor,
  printedTorqueArms,
  type TorqueArms,
  threadPartArm,
  threadTorqueArm,
  tighteningArm,
  torqueArms,
  torqueAtOtherNutFactor,
  torqueByNutFactor,
  wholeArm,
} from './torque.js';
