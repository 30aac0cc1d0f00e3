export { describeCombineFault, faultOf, rawCount } from './check.js';
export { combinedOf, groupsOf, keepsAll, marginOf, SAME } from './evaluate.js';
export { LoosenSearch } from './loosen-search.js';
export type * from './model.js';
export { ALL_MARGINS, WORST_MARGIN } from './model.js';
export { RankSearch } from './rank-search.js';
export { ReachSearch } from './reach-search.js';
