export { type ChanceOfLimit, type ChanceOptions, type Chances, chancesOf } from './chance.js';
export { sizeValue, TITLES } from './choices.js';
export { fixedFrom, wantedFrom } from './from-makeup.js';
export { describeFinderFault } from './input-faults.js';
export type * from './model.js';
export {
  advance,
  answerOf,
  beginSearch,
  type FinderPhase,
  type FinderProgress,
  type FinderSearch,
  progressOf,
} from './search.js';
