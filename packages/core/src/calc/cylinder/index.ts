export {
  boreForRatio,
  type ClearanceParts,
  clearanceForRatio,
  clearanceVolume,
  compressionRatio,
  type NoRoom,
  strokeForRatio,
} from './ratio.js';
export { capVolume, creviceVolume, discArea, discVolume, frustumVolume } from './volumes.js';
