export type * from './model.js';
export * from './gates/index.js';
export * from './features/index.js';
export * from './limits/index.js';
export { assess } from './assess.js';
export { findingsOf, type Judging, LimitsAt } from './findings/index.js';
export * from './sizes/index.js';
