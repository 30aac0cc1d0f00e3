export { type Adapter, drives, settingFor, torqueAtFastener } from './adapter.js';
export { assemblyPreload, type TighteningStress, type Torsion, tighteningStress } from './assembly.js';
export {
  type ConeJoint,
  complianceOf,
  coneCompliance,
  coneSlope,
  coneStiffness,
  fittedStiffness,
  type JointKind,
  type Layer,
  type MemberMaterial,
} from './clamped.js';
export { type ColumnCheck, checkColumns } from './columns.js';
export { embeddingAmount, type LoadDirection, type Roughness, roughnesses } from './embedding.js';
export { type BoltDepth, boltDepth, leastEngagement, type Tapped, tappedMaterials } from './engagement.js';
export { type Method, methods, scatterOf } from './methods.js';
export { type NutFactorRange, nutFactorRanges, type Surface, surfaces } from './nut-factors.js';
export { centreOutwardOrder, crossPattern, type PlacedHole } from './order.js';
export {
  type BoltResilience,
  type BoltShape,
  barCompliance,
  boltResilience,
  type HeadKind,
  type Partner,
  sleeveCompliance,
  type ThreadArea,
  wholeResilience,
} from './resilience.js';
export { type PreloadBand, preloadBand, tighteningFactor } from './scatter.js';
export { stageTorques } from './stages.js';
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
export { angleForPreload, embeddingLoss, type JointWarmth, preloadForAngle, thermalPreload } from './turn.js';
