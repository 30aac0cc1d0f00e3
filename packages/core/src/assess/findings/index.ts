export { findingsOf, type Judged, type Judging } from './findings-of.js';
export { LimitWindows } from './limit-windows.js';
