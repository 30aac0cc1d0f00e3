export { type Action, keyWords } from './action.js';
export { afterFrame } from './after-frame.js';
export { type BounceGuard, bounceGuard, bounceTime } from './bounce.js';
export { letGo } from './let-go.js';
export { notABounce, useActions } from './use-actions.js';
export { useBehind } from './use-behind.js';
export { useFromTop } from './use-from-top.js';
export { useSteady } from './use-steady.js';
