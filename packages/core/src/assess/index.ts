export { assess } from './assess.js';
export * from './combination/index.js';
export * from './decisions/index.js';
export * from './features/index.js';
export * from './gates/index.js';
export * from './limits/index.js';
export type * from './model.js';
export * from './order/index.js';
export { type Habits, USUAL_HABITS } from './sizes/index.js';
