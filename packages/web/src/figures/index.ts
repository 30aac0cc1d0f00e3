export { DrawnShape } from './drawn-shape.js';
export { FigureView } from './figure-view.js';
export { useInSight, useWhenSeen } from './use-in-sight.js';
export { useRested } from './use-rested.js';
export { usePlan, useShownWidth, useWide } from './use-shown.js';
