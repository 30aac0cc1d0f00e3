import type { Angle, Length, Ratio } from '../../quantity/index.js';

/**
 * Where the adjusting thread acts.
 * - `stud-nut`: the nut carries the rocker's pivot and moves it up and down.
 * - `pushrod-end-screw`: a screw in the rocker pushes the pushrod cup.
 * - `valve-end-screw`: a screw in the rocker pushes the valve tip.
 */
export type ScrewPlace = 'stud-nut' | 'pushrod-end-screw' | 'valve-end-screw';

export interface Adjuster {
  readonly place: ScrewPlace;
  /** Advance per whole turn. */
  readonly pitch: Length;
  /** Rocker ratio: valve lift over lobe lift. */
  readonly ratio: Ratio;
}

/** Movement at the lifter for one unit of screw advance, the valve tip standing still. */
export function lifterFactor(place: ScrewPlace, ratio: Ratio): number {
  switch (place) {
    case 'stud-nut':
      return 1 + 1 / ratio;
    case 'pushrod-end-screw':
      return 1;
    case 'valve-end-screw':
      return 1 / ratio;
  }
}

/** Screw advance [m] of a turning angle [rad]: n·P with n turns and P the pitch. */
export function screwAdvance(pitch: Length, angle: Angle): Length {
  return ((pitch * angle) / (2 * Math.PI)) as Length;
}

/**
 * Depth by which a hydraulic lifter's plunger goes down when its adjuster is turned past zero lash.
 *
 *   stud nut: t = n·P·(1 + 1/R);  screw at the pushrod: t = n·P;  screw at the valve: t = n·P/R
 *
 * | symbol | argument         | unit  | meaning                                  |
 * |--------|------------------|-------|------------------------------------------|
 * | n·2π   | `angle`          | [rad] | turned past zero lash, + is more preload |
 * | P      | `adjuster.pitch` | [m]   | thread pitch                             |
 * | R      | `adjuster.ratio` |       | rocker ratio, above 0                    |
 *
 * Assumes the valve seated, follower on the base circle, small angles, arm ends in line with the pivot, nothing that
 * bends, and a lifter that has had time to bleed down. A stud nut lowers the pivot; the valve tip cannot move, so the
 * arm turns about it and the cup falls further than the nut.
 * Example: 3/8-24 stud, R = 1.5, half a turn: 0.0347 in, not 0.0208.
 * Source: derived (lever).
 */
export function plungerTravel(adjuster: Adjuster, angle: Angle): Length {
  return (screwAdvance(adjuster.pitch, angle) * lifterFactor(adjuster.place, adjuster.ratio)) as Length;
}

/** Angle [rad] to turn past zero lash for a plunger travel [m]; turns `plungerTravel` round. Source: derived. */
export function turnsForTravel(adjuster: Adjuster, travel: Length): Angle {
  return ((travel / lifterFactor(adjuster.place, adjuster.ratio) / adjuster.pitch) * 2 * Math.PI) as Angle;
}

/**
 * Change of lash at the valve tip for one whole turn of the adjuster [m], the lifter standing still.
 *
 *   stud nut: P·(1 + R);  screw at the pushrod: P·R;  screw at the valve: P
 *
 * It is the lifter movement times the ratio. Assumptions as in `plungerTravel`.
 * Example: 3/8-24 stud nut, R = 1.5: 0.1042 in a turn. Source: derived (lever).
 */
export function lashPerTurn(adjuster: Adjuster): Length {
  return (adjuster.pitch * lifterFactor(adjuster.place, adjuster.ratio) * adjuster.ratio) as Length;
}

/** Angle [rad] to turn so that the lash at the valve changes by `change` [m]; positive tightens. Source: derived. */
export function turnsForLash(adjuster: Adjuster, change: Length): Angle {
  return ((change / lashPerTurn(adjuster)) * 2 * Math.PI) as Angle;
}
