export { measuringFigure } from './measuring-figure.js';
export type { PlaceShown, ReadingState, StationShown } from './place-shown.js';
