export { PlotView } from './plot-view.js';
