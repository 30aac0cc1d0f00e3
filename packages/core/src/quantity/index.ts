export { done, type Outcome, refused } from './outcome.js';
export type * from './quantity.js';
