export { findingsOf, type Judging } from './findings-of.js';
export { LimitWindows } from './limit-windows.js';
