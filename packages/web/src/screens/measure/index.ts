export { MeasureScreen } from './measure-screen.js';
export { WorksheetScreen } from './worksheet-screen.js';
