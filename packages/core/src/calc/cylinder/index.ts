export { downfill } from './burette.js';
export { deckClearance, deckCuts } from './deck.js';
export { circleOfPerimeter, cutForVolume, intakeFace } from './milling.js';
export {
  boredSize,
  cleanUpDiameter,
  type NoOversize,
  type OversizeChoice,
  smallestOversize,
  wallLeft,
} from './oversize.js';
export { quench } from './quench.js';
export {
  boreForRatio,
  type ClearanceParts,
  clearanceForRatio,
  clearanceVolume,
  compressionRatio,
  type NoRoom,
  strokeForRatio,
} from './ratio.js';
export { allocateRings, type RingPlan } from './ring-allocation.js';
export { GAP_TABLES } from './ring-gap-table.js';
export { gapByFactor, gapInBore, sideClearance } from './rings.js';
export { type Spread, spreadOf } from './spread.js';
export {
  airPressure,
  crankingPressure,
  effectiveRatio,
  staticForEffective,
  strokeLeft,
  type TrappedStroke,
} from './trapped.js';
export { capVolume, creviceVolume, discArea, discVolume, frustumVolume } from './volumes.js';
export { type CleanUp, reachAt, smallestCleanUp, type WornSection, wornSection } from './worn-profile.js';
