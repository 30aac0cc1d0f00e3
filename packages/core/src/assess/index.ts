export type * from './model.js';
export * from './gates/index.js';
export * from './features/index.js';
export * from './limits/index.js';
