export { assemblyPreload, type TighteningStress, type Torsion, tighteningStress } from './assembly.js';
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
  type BearingRing,
  type Friction,
  type LongForm,
  preloadByNutFactor,
  printedTorqueArms,
  type TorqueArms,
  threadTorqueArm,
  tighteningArm,
  torqueArms,
  torqueAtOtherNutFactor,
  torqueByNutFactor,
  wholeArm,
} from './torque.js';
