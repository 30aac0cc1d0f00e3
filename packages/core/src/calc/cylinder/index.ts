export {
  boredSize,
  cleanUpDiameter,
  type NoOversize,
  type OversizeChoice,
  smallestOversize,
  wallLeft,
} from './oversize.js';
export {
  boreForRatio,
  type ClearanceParts,
  clearanceForRatio,
  clearanceVolume,
  compressionRatio,
  type NoRoom,
  strokeForRatio,
} from './ratio.js';
export { sideClearance } from './rings.js';
export { capVolume, creviceVolume, discArea, discVolume, frustumVolume } from './volumes.js';
export { type CleanUp, reachAt, smallestCleanUp, type WornSection, wornSection } from './worn-profile.js';
