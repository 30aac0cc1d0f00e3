export { FigureView } from './figure-view.js';
