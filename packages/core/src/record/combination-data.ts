/** What is recorded about the combination of parts: the cam as it was read, and figures that a person states. */
import type { CylinderNumber, ValveId } from '../engine/model.js';
import type { Reading } from '../plan/facts.js';

/** SI units of figures of the combination; `1` for ratios, and for one of several words its place in their list. */
export type FigureUnit = 'm' | 'm2' | 'm3' | 'rad' | 'rad/s' | 'N' | 'N/m' | 'kg' | 'kg/m3' | 'Pa' | 'K' | '1/K' | '1';
export interface StatedReading extends Pick<Reading, 'text' | 'value'> {
  readonly unit: FigureUnit;
}

/** Kind -> data. No plan waits for any of it, so they are not among its facts. */
export interface CombinationData {
  /** Wheel readings at which a piston meets a fixed stop, one on either side of its highest place. */
  'dead-centre-read': { readonly cylinder: CylinderNumber; readonly first: Reading; readonly second: Reading };
  /** Wheel and indicator at one place of a lobe; the same place again is a repeat. */
  'cam-read': {
    readonly lobe: ValveId;
    readonly wheel: Reading;
    readonly lift: Reading;
    readonly at: 'lifter' | 'valve';
    readonly sense?: 'opening' | 'closing';
  };
  /** Mark that a rocker left on the tip of a valve with a pushrod of one length; the newest of a length holds. */
  'pushrod-tried': {
    readonly valve: ValveId;
    readonly length: Reading;
    readonly width: Reading;
    /** Middle of the mark from the middle of the stem, away from the pivot positive. */
    readonly offset?: Reading;
  };
  /**
   * Room between a valve and its piston as it was found in the metal: by the travel of the indicator until the valve meets the piston, with the
   * crank at a place of the wheel, or by the thinnest place of clay that was turned through, which has no place.
   */
  'valve-room-read': {
    readonly valve: ValveId;
    readonly room: Reading;
    readonly method: 'clay' | 'drop';
    readonly wheel?: Reading;
  };
  /** A figure as a person states it, by its key; the newest of a key holds. */
  'figure-stated': { readonly key: string; readonly reading: StatedReading; readonly why: string };
}
