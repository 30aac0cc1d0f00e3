export { bestExtraShim, type ExtraShim } from './best-extra-shim.js';
export { cheapestAssignment, provesOptimal } from './cheapest-assignment.js';
export { chooseShim } from './shim-choice.js';
export { planShims } from './shim-pool.js';
export type * from './types.js';
export { describeShimFault } from './words.js';
