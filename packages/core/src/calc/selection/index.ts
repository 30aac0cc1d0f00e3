export { bestExtraShim, type ExtraShim } from './best-extra-shim.js';
export { cheapestAssignment, provesOptimal } from './cheapest-assignment.js';
export {
  ALL_MARGINS,
  type Combined,
  type CombineFault,
  type CombineGoal,
  type CombineProblem,
  combinedOf,
  type Dimension,
  describeCombineFault,
  faultOf,
  groupsOf,
  keepsAll,
  type Loosening,
  LoosenSearch,
  marginOf,
  type Ranking,
  RankSearch,
  ReachSearch,
  type Relaxation,
  type Requirement,
  rawCount,
  SAME,
  type Shown,
  type Term,
  WORST_MARGIN,
} from './combine/index.js';
export { type ExtraPart, extraPart } from './extra-part.js';
export { type Allowed, type HallSet, largestMatching, type Matching, provesShort } from './largest-matching.js';
export {
  type LinerInput,
  type LinerPlan,
  type LinerRules,
  linerSeals,
  linersKeep,
  type NoSeals,
} from './liner-seals.js';
export { type MassGroups, type MassPairs, massGroups, massPairs, type TooFewParts } from './mass-groups.js';
export { type Option, type OptionPlan, type OptionSearch, searchOptions } from './option-search.js';
export { type Goal, type NoPartsPlan, type PartsInput, type PartsPlan, partsToPlaces } from './parts-to-places.js';
export {
  partsWithShop,
  type ShopInput,
  type ShopPlan,
  type ShopSize,
  type ShopSource,
  type ShopWindow,
} from './parts-with-shop.js';
export {
  type ShellClass,
  type ShellPair,
  type ShellPosition,
  type ShellsInput,
  type ShellsPlan,
  shellsToJournals,
  type ThickerHalf,
} from './shells-to-journals.js';
export { chooseShim } from './shim-choice.js';
export { planShims } from './shim-pool.js';
export { allStacks, distinctStacks, type Stack } from './shim-stacks.js';
export {
  type CommonHeight,
  commonHeight,
  heightForLoad,
  loadAtHeight,
  type SpringShimsInput,
  type SpringShimsPlan,
  springShims,
  type TestedSpring,
} from './spring-shims.js';
export {
  type BestAssignment,
  type CostTable,
  leastTotal,
  type NoAssignment,
  type SmallestWorst,
  smallestSpread,
  smallestWorst,
} from './table-assignment.js';
export type * from './types.js';
export { describeShimFault } from './words.js';
