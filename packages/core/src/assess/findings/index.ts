export { findingsOf, type Judging } from './findings-of.js';
export { GeneralWear } from './general-wear.js';
export { LimitWindows } from './limit-windows.js';
