export type { Figure, Fill, LineRole, MarkState, Point, Shape, Touch } from './figure.js';
export {
  type CamDialOptions,
  type FrontViewOptions,
  type HeadOptions,
  type Marks,
  type PlanOptions,
  type Shown,
  type StopShown,
  valveKey,
  valveName,
} from './options.js';
export type { Figures } from './planned.js';
