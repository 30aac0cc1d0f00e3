import type { CylinderNumber } from '../engine/index.js';
import type { Angle } from '../quantity/index.js';
import type { MarkState } from './figure.js';

/** State of each place by its key: hole id, opening id or `valveKey`. A place without an entry is `idle`. */
export type Marks = Readonly<Record<string, MarkState>>;

/** How every figure is fitted to the place where it is shown. */
export interface Shown {
  /**
   * Width in CSS pixels at which the figure will be seen; labels, marks and touches keep their size for that width.
   * Absent: 360, a phone.
   */
  readonly shownWidth?: number;
}
export interface FrontViewOptions extends Shown {
  /** The bank mate(s) drawn fully; absent: the frontmost of each bank. */
  readonly cylinder?: CylinderNumber;
}
export interface PlanOptions extends Shown {
  /** Where the front of the engine lies on the page. Absent: left where holes and labels then have room, else top. */
  readonly front?: 'left' | 'top';
}
export interface HeadOptions extends PlanOptions {
  /** Joint whose holes are drawn; absent: the first joint of that head. */
  readonly joint?: string;
  /** Visiting order to number; absent: the printed order of the joint. */
  readonly order?: readonly string[];
}
export interface CamDialOptions extends Shown {
  /** Draws one cylinder's pointer large and the rest thin; absent: all alike. */
  readonly cylinder?: CylinderNumber;
}
/** One stop of a valve-setting plan as the drawing needs it. Angles from firing TDC of cylinder 1. */
export interface StopShown {
  readonly crankAngle: Angle;
  /** The stop before this one; absent at the first stop. */
  readonly previous?: Angle;
}
