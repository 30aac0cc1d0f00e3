export { type GasketChecks, type GasketItem, type GasketItemKind, gasketChecks, gasketItems } from './gasket.js';
export {
  type FastenerJudgement,
  type FastenerVerdict,
  judgeFastener,
  judgePlaced,
  lengthTolerance,
  type StatedFastener,
} from './judge.js';
export { type FastenerMap, fastenerMap, type MapRow } from './map.js';
export { type Block, type Readiness, readiness } from './readiness.js';
