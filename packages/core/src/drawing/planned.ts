/** Signatures of the figures while they are being drawn; each moves to its own file, and this one goes away. */
import type { CamEvents, Engine, ValveId } from '../engine/index.js';
import type { Angle } from '../quantity/index.js';
import type { Figure } from './figure.js';
import type { CamDialOptions, FrontViewOptions, HeadOptions, Marks, PlanOptions, Shown, StopShown } from './options.js';

/** All crank angles: from firing TDC of cylinder 1, in the running sense. */
export interface Figures {
  frontView(engine: Engine, crankAngle: Angle, options?: FrontViewOptions): Figure;
  headFromAbove(engine: Engine, headId: string, marks?: Marks, options?: HeadOptions): Figure;
  gasketFigure(engine: Engine, headId: string, marks?: Marks, options?: PlanOptions): Figure;
  valveGearSection(engine: Engine, valve: ValveId, crankAngle: Angle, events?: CamEvents, options?: Shown): Figure;
  /** Marks and touches by cylinder number. */
  camDial(
    engine: Engine,
    crankAngle: Angle,
    events: CamEvents | undefined,
    margin: Angle,
    marks?: Marks,
    options?: CamDialOptions,
  ): Figure;
  stopFigure(engine: Engine, stop: StopShown, options?: Shown): Figure;
  /** Marks and touches by `valveKey`. */
  valveMap(engine: Engine, marks?: Marks, options?: Shown): Figure;
  /** Marks and touches by `valveKey`. */
  registerTray(engine: Engine, part: 'lifter' | 'pushrod' | 'rocker', marks?: Marks, options?: Shown): Figure;
  figureToSvg(figure: Figure, style?: object): string;
  figureToText(figure: Figure): string;
}
