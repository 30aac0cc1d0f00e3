/**
 * A plot as data: axes, curves, limits and marks in the reader's units. One plot is drawn on the screen, printed in black and white, saved as
 * SVG and as CSV, and told in words. Curves differ by dash and symbol, never by colour alone.
 */
export interface Axis {
  readonly name: string;
  readonly unit: string;
  readonly from: number;
  readonly to: number;
  /** Places of its numbers. */
  readonly places: number;
}
export interface Curve {
  readonly id: string;
  readonly name: string;
  readonly axis: 'left' | 'right';
  /** By rising x; a gap is two curves. */
  readonly points: readonly (readonly [x: number, y: number])[];
  readonly line: 'solid' | 'dashed' | 'chain' | 'dotted' | 'none';
  readonly symbol?: 'circle' | 'square' | 'triangle' | 'cross';
}
/** A limit line, with the side that is allowed. */
export interface PlotLimit {
  readonly name: string;
  readonly axis: 'left' | 'right';
  readonly at: number;
  readonly allowed: 'above' | 'below';
  readonly from: string;
}
/** A place on the plot with its meaning: a minimum, an event, a dead centre. */
export interface PlotMark {
  readonly id: string;
  readonly name: string;
  readonly x: number;
  /** Absent: a line over the whole height. */
  readonly y?: number;
  readonly axis: 'left' | 'right';
}
export interface Plot {
  readonly id: string;
  readonly title: string;
  /** The plot in words, for those who do not see it. */
  readonly description: string;
  readonly x: Axis;
  readonly left: Axis;
  readonly right?: Axis;
  readonly curves: readonly Curve[];
  readonly limits: readonly PlotLimit[];
  readonly marks: readonly PlotMark[];
}
