export { camDial } from './cam-dial.js';
export { type CapShown, distributorCap } from './distributor-cap.js';
export type { Figure, Fill, LineRole, MarkState, Point, Shape, Touch } from './figure.js';
export { frontView } from './front-view.js';
export { gasketFigure } from './gasket-figure.js';
export { headFromAbove } from './head-from-above.js';
export { stateWord } from './marks.js';
export { measuringFigure, type PlaceShown, type ReadingState, type StationShown } from './measuring/index.js';
export type {
  CamDialOptions,
  FrontViewOptions,
  HeadOptions,
  Marks,
  PlanOptions,
  Shown,
  StopShown,
} from './options.js';
export { figureToSvg, type SvgTextStyle } from './pens/svg.js';
export { type SvgElement, type SvgStyle, svgElements, viewBox } from './pens/svg-elements.js';
export { figureToText } from './pens/text.js';
export { LAYOUT_FLUID, PRINT, type Theme } from './pens/theme.js';
export { registerTray, type TrayPart } from './register-tray.js';
export { stopFigure } from './stop-figure.js';
export { valveGearSection } from './valve-gear-section.js';
export { valveMap } from './valve-map.js';
