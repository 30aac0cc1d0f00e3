export { type Action, keyWords } from './action.js';
export { type BounceGuard, bounceGuard, bounceTime } from './bounce.js';
export { letGo } from './let-go.js';
export { notABounce, useActions } from './use-actions.js';
export { useFromTop } from './use-from-top.js';
