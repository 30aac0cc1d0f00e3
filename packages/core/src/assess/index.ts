export type * from './model.js';
export * from './gates/index.js';
