export { axisOver, crankAxis } from './axis.js';
export { type RoundPath, roundPaths, shakingPlot } from './combination/shaking-plot.js';
export { springPlot } from './combination/spring-plot.js';
export type * from './plot.js';
export { type Field, fieldOf, LAPTOP_PLOT, PHONE_PLOT, type PlotSize, plotFigure } from './plot-figure.js';
export { plotCsv, plotTable } from './plot-table.js';
export { plotWords, valueText } from './plot-words.js';
export { placesAlong, type ValueThere, valueAt, valuesAt } from './values.js';
