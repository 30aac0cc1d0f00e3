export type * from './views.js';
