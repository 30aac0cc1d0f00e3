export { assess } from './assess.js';
export * from './decisions/index.js';
export * from './features/index.js';
export { findingsOf, type Judging, LimitsAt } from './findings/index.js';
export * from './gates/index.js';
export * from './limits/index.js';
export type * from './model.js';
export * from './order/index.js';
export * from './sizes/index.js';
