import { type Angle, wrapped } from '../../quantity/index.js';
import { CYCLE, TURN } from '../crank/index.js';
import type { CamEvents } from './events.js';

const HALF_TURN = Math.PI;
/** Share of the cycle within which a phase counts as midway: rounding must not decide which end is named. */
const MIDWAY = 1e-12;

/** A stretch of the cycle from `opens` to `closes`, `opens` < `closes`, counted in any one unit of angle. */
export interface Span {
  readonly opens: number;
  readonly closes: number;
}
/**
 * Open window of a valve in its cylinder's own phase [rad]: crank angle after that cylinder's firing top dead centre,
 * 0 to 4π. `opens` < `closes`; outside of it the follower is on the base circle.
 */
export interface OpenWindow extends Span {
  readonly opens: Angle;
  readonly closes: Angle;
}
export interface ValveWindows {
  readonly intake: OpenWindow;
  readonly exhaust: OpenWindow;
}

/**
 * Open windows of both valves from events: exhaust 180° − EO to 360° + EC, intake 360° − IO to 540° + IC.
 *
 * Events [rad] as in `CamEvents`, signed. Source: definition of the events.
 */
export function openWindows(events: CamEvents): ValveWindows {
  return {
    intake: {
      opens: (TURN - events.intakeOpens) as Angle,
      closes: (TURN + HALF_TURN + events.intakeCloses) as Angle,
    },
    exhaust: {
      opens: (HALF_TURN - events.exhaustOpens) as Angle,
      closes: (TURN + events.exhaustCloses) as Angle,
    },
  };
}

/** Crank angle for which a valve is open [rad]. */
export const openFor = (window: OpenWindow): Angle => (window.closes - window.opens) as Angle;

/** A window with both of its ends moved out by `eachSide` [rad]. */
export function widened(window: OpenWindow, eachSide: Angle): OpenWindow {
  return { opens: (window.opens - eachSide) as Angle, closes: (window.closes + eachSide) as Angle };
}

/**
 * Base-circle window of a valve: from its closing to its next opening, `opens` of the next cycle being 4π later.
 * Phase as in `OpenWindow` [rad]; the end may pass 4π. Source: definition.
 */
export function baseCircleWindow(open: OpenWindow): { readonly from: Angle; readonly to: Angle } {
  return { from: open.closes, to: (open.opens + CYCLE) as Angle };
}

/** How far a phase is from a valve's open window, and which end of the window it is nearer to. */
export interface WindowDistance {
  /** Positive on the base circle, negative while the valve is open, 0 on an edge. */
  readonly distance: number;
  readonly nearest: 'opening' | 'closing';
}

/**
 * Distance from a phase to the nearer end of an open window.
 *
 *   d = |phase − middle of the window| around the circle − half the window's length
 *
 * Window, phase and cycle in one unit of angle; the phase may have any value, the window is longer than 0 and shorter
 * than the cycle. Midway between both ends the opening is named. Example: a window from 330° to 610° seen from phase 0 gives 110°, nearer to its closing.
 * Source: derived, docs/derivations/base-circle-windows.md.
 */
export function distanceFromWindow(window: Span, phase: number, cycle: number): WindowDistance {
  const half = (window.closes - window.opens) / 2;
  const forward = wrapped(window.opens + half - phase, cycle);
  const away = Math.min(forward, cycle - forward);
  return { distance: away - half, nearest: forward <= cycle / 2 + MIDWAY * cycle ? 'opening' : 'closing' };
}

/**
 * How far a phase is from the nearer edge of a valve's open window [rad]: positive on the base circle, negative while
 * the valve is open, 0 on an edge. Phase [rad] of the valve's own cylinder, any value; taken modulo 4π.
 *
 * Source: derived; see `distanceFromWindow`.
 */
export function marginOnBaseCircle(open: OpenWindow, phase: Angle): Angle {
  return distanceFromWindow(open, phase, CYCLE).distance as Angle;
}
