export { type Action, keyWords } from './action.js';
export { type BounceGuard, bounceGuard, bounceTime } from './bounce.js';
export { notABounce, useActions } from './use-actions.js';
