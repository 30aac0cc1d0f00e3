export { DrawnShape } from './drawn-shape.js';
export { FigureView } from './figure-view.js';
export { usePlan, useShownWidth, useWide } from './use-shown.js';
