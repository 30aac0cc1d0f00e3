import type { FigureKind } from '../../assess/index.js';

/** What is known at a station: nothing, a figure, a figure with its verdict, or two figures that disagree. */
export type ReadingState = 'empty' | 'read' | 'in' | 'near' | 'out' | 'disagrees';

/** One station of a place, as the drawing needs it. */
export interface StationShown {
  /** Key of its mark and of its touch. */
  readonly slot: string;
  /** "top, across the crank". */
  readonly name: string;
  /** Row and column in a grid of heights (or planes) and directions, from 0. */
  readonly height?: number;
  readonly direction?: number;
  readonly state: ReadingState;
  /** End of the limit that a `near` reading is close to. */
  readonly nearEnd?: 'low' | 'high';
  /** Figure as read, without unit. */
  readonly text?: string;
}
/** A place with its stations: bore of cylinder 3, main journal 2, the left deck. */
export interface PlaceShown {
  readonly figure: FigureKind;
  /** "Bore of cylinder 3". */
  readonly title: string;
  readonly stations: readonly StationShown[];
  /** Slot that is asked for now. */
  readonly current?: string;
  /** Bores in a deck or head face. */
  readonly bores?: number;
}
