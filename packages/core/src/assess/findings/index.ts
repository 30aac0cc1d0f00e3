export { findingsOf, type Judging } from './findings-of.js';
export { LimitsAt } from './limits-at.js';
