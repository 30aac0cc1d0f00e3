import { CYCLE_DEGREES, SAME, snap, wrap } from '../crank/index.js';
import { distanceFromOpen } from './position.js';
import type { ValveGroup, ValveSide, ValveTiming } from './types.js';

/** How long the watched valve counts as just moving, in crank degrees. Common practice, no source. */
export const JUST_MOVING = 30;

/** One step of the per-cylinder method: turn until `watch` does what is said, then set the other valve of that cylinder. */
export interface NeighbourStep extends ValveGroup {
  readonly watch: ValveSide;
  /** The exhaust valve begins to open, or the intake valve has nearly closed. */
  readonly until: 'begins-to-open' | 'nearly-closed';
  /** Crank degrees of the watching window, 0 to below 720; `to` may be past 720 in the next turn and is then smaller. */
  readonly from: number;
  readonly to: number;
  /** At the event itself: crank degrees since the valve to set closed, and until it opens. */
  readonly sinceClosing: number;
  readonly untilOpening: number;
  /** Least distance from its own open window anywhere in the watching window; negative: it is off its base circle. */
  readonly degrees: number;
  readonly permitted: boolean;
}

function step(timing: ValveTiming, valve: ValveSide, at: { cylinder: number; firesAt: number }): NeighbourStep {
  const own = timing.open[valve];
  const other = timing.open[valve === 'intake' ? 'exhaust' : 'intake'];
  const opening = valve === 'intake';
  const event = opening ? other.opens : other.closes;
  const [first, last] = opening ? [event, event + JUST_MOVING] : [event - JUST_MOVING, event];
  // Away from the middle of the window the distance rises and then falls, so it is least at an end of the range.
  const degrees = Math.min(distanceFromOpen(own, first).degrees, distanceFromOpen(own, last).degrees);
  return {
    cylinder: at.cylinder,
    valve,
    watch: opening ? 'exhaust' : 'intake',
    until: opening ? 'begins-to-open' : 'nearly-closed',
    from: wrap(at.firesAt + first),
    to: wrap(at.firesAt + last),
    sinceClosing: wrap(event - own.closes),
    untilOpening: wrap(own.opens - event),
    degrees: holdsMiddle(own, first) ? snap(-(own.closes - own.opens) / 2) : degrees,
    permitted: !holdsMiddle(own, first) && degrees >= timing.marginDegrees - SAME,
  };
}

/** The middle of the open window lies within the watching range: the valve is then at its highest there. */
function holdsMiddle(own: { opens: number; closes: number }, first: number): boolean {
  return wrap((own.opens + own.closes) / 2 - first) <= JUST_MOVING;
}

/**
 * The per-cylinder method: as the exhaust valve of a cylinder begins to open set its intake; when its intake valve has
 * nearly closed set its exhaust. Two steps for each cylinder, in the order in which they come when the crank is turned
 * forward from the first cylinder's firing dead centre.
 *
 * Each step carries the crank window in which the watched valve is just moving (30 degrees after opening, or before
 * closing) and checks that the valve to set is on its base circle there, with the margin of `timing`.
 * Example: events 10/50/50/10: at exhaust opening the intake closed 260 degrees ago and opens in 220.
 * Source: reference mechanism-open.md section 8.2; the 30 degrees are common practice, no source.
 */
export function neighbourSteps(timing: ValveTiming): readonly NeighbourStep[] {
  return timing.cylinders
    .flatMap((at) => [step(timing, 'intake', at), step(timing, 'exhaust', at)])
    .sort((a, b) => a.from - b.from || a.cylinder - b.cylinder);
}

/** Crank degrees during which a valve may be set, from its closing plus the margin to its opening less the margin. */
export interface BaseCircleSpan extends ValveGroup {
  readonly from: number;
  readonly to: number;
  readonly length: number;
}

/**
 * The whole span of crank angle in which each valve may be set, by cylinder. `to` is smaller than `from` when it passes
 * 720; the length is negative where the cam leaves no room for the margin.
 */
export function baseCircleSpans(timing: ValveTiming): readonly BaseCircleSpan[] {
  return timing.cylinders.flatMap(({ cylinder, firesAt }) =>
    (['intake', 'exhaust'] as const).map((valve) => {
      const { opens, closes } = timing.open[valve];
      return {
        cylinder,
        valve,
        from: wrap(firesAt + closes + timing.marginDegrees),
        to: wrap(firesAt + opens - timing.marginDegrees),
        length: snap(CYCLE_DEGREES - (closes - opens) - 2 * timing.marginDegrees),
      };
    }),
  );
}
