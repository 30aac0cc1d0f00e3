import type { Shown } from './options.js';

/**
 * Sizes of what must keep its size for the eye and the finger, in millimetres of the drawing. Derived from the width at
 * which the figure is shown: a label of 13 px on a 360 px phone (bench-ergonomics, looked up in the hand) and a touch of
 * at least 44 px across (WCAG 2.2, 2.5.5).
 */
export interface Scale {
  /** Millimetres of drawing in one CSS pixel. */
  readonly px: number;
  readonly text: number;
  readonly small: number;
  readonly mark: number;
  readonly reach: number;
  readonly margin: number;
}
const MARGIN_PX = 6;

/** @param drawnWidth width of the content in mm, without the page margin. @param extraPx width beside it that keeps its pixel size. */
export function scaleFor(drawnWidth: number, shown: Shown, extraPx = 0): Scale {
  const free = Math.max(120, (shown.shownWidth ?? 360) - 2 * MARGIN_PX - extraPx);
  const px = drawnWidth / free;
  return { px, text: 14 * px, small: 12.5 * px, mark: 9 * px, reach: 22 * px, margin: MARGIN_PX * px };
}
