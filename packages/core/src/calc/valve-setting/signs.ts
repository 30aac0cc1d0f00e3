import { CYCLE_DEGREES, SAME, samePlace, wrap } from '../crank/index.js';
import { positionOf, valvesOf } from './position.js';
import type { ValveGroup, ValveTiming } from './types.js';

/** What a person can see and feel with the crank at one place, as data; the sentence is the screen's. */
export interface CrankSigns {
  readonly crankDegrees: number;
  /** Piston up with pressure or free rockers: the cylinder has just come to its firing dead centre. */
  readonly firing: readonly number[];
  /**
   * Piston up at the end of its exhaust stroke with both valves off their seats. Rocking the crank a little lets one
   * close as the other opens; nothing of that cylinder may be set.
   */
  readonly rocking: readonly number[];
  /** Piston up at the end of its exhaust stroke, but the cam has no overlap there: nothing rocks. */
  readonly exhaustDeadCentre: readonly number[];
  /** Cylinders whose two rockers (or followers) are both free. */
  readonly bothFree: readonly number[];
  /** Valves that the cam holds off their seats. */
  readonly heldOpen: readonly ValveGroup[];
}

/**
 * Signs by which the crank position can be told from its double one turn later. `crank` in degrees after the first
 * cylinder of the order fires, any finite number.
 * Source: definitions of the four strokes; rocking at the exhaust dead centre, reference mechanism-open.md section 8.2.
 */
export function signsAt(timing: ValveTiming, crank: number): CrankSigns {
  const at = wrap(crank);
  const positions = valvesOf(timing).map((valve) => positionOf(timing, valve, at));
  const isOpen = (position: { degrees: number }) => position.degrees < -SAME;
  const cylinders = timing.cylinders.map(({ cylinder, firesAt }) => {
    const own = positions.filter((position) => position.cylinder === cylinder);
    return { cylinder, phase: wrap(at - firesAt), open: own.filter(isOpen).length };
  });
  const where = (fits: (c: (typeof cylinders)[number]) => boolean) => cylinders.filter(fits).map((c) => c.cylinder);
  return {
    crankDegrees: at,
    firing: where((c) => samePlace(c.phase, 0)),
    rocking: where((c) => samePlace(c.phase, CYCLE_DEGREES / 2) && c.open === 2),
    exhaustDeadCentre: where((c) => samePlace(c.phase, CYCLE_DEGREES / 2) && c.open < 2),
    bothFree: where((c) => c.open === 0),
    heldOpen: positions.filter(isOpen).map(({ cylinder, valve }) => ({ cylinder, valve })),
  };
}
