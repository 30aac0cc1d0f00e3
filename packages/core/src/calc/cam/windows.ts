import { type Angle, done, type Length, type Outcome, refused } from '../../quantity/index.js';
import type { CamEvents } from './events.js';

const HALF_TURN = Math.PI;
const TURN = 2 * Math.PI;
const CYCLE = 4 * Math.PI;

/**
 * Open window of a valve in its cylinder's own phase [rad]: crank angle after that cylinder's firing top dead centre,
 * 0 to 4π. `opens` < `closes`; outside of it the follower is on the base circle.
 */
export interface OpenWindow {
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

/** How the events of a card are bounded, and what is known of the seat. */
export interface CardBasis {
  /** `seat` events bound the whole open window; `at-lift` events were taken at a checking lift such as 1 mm. */
  readonly basis: 'seat' | 'at-lift';
  readonly checkingLift?: Length;
  /** Seat-to-seat durations, where the card has them. */
  readonly advertisedDuration?: { readonly intake: Angle; readonly exhaust: Angle };
}

/** Where the edges of the windows come from: the screen says so beside the plan. */
export type WindowBasis = 'seat-events' | 'widened-to-advertised-duration' | 'widened-by-allowance';

export interface SeatWindows extends ValveWindows {
  readonly basis: WindowBasis;
}

export type WindowFault =
  | { readonly code: 'always-open'; readonly valve: 'intake' | 'exhaust'; readonly window: OpenWindow }
  | { readonly code: 'never-open'; readonly valve: 'intake' | 'exhaust'; readonly window: OpenWindow }
  | {
      readonly code: 'advertised-shorter';
      readonly valve: 'intake' | 'exhaust';
      readonly advertised: Angle;
      readonly atLift: Angle;
    };

/**
 * Seat-to-seat open windows of a cam card: what decides when a follower is on the base circle.
 *
 * Seat events are used as printed. Events at a checking lift are widened about the middle of their window: to the
 * advertised duration where the card has it, else by `allowance` [rad of crank] at each end. Widening about the middle
 * assumes ramps of equal length; leave a margin when setting valves.
 * Refuses windows that never open or never close (0 < duration < 720°) and an advertised duration below the one at lift.
 * Example: 0.050 in duration 214°, advertised 270°: 28° wider at each end.
 * Source: derived; the allowance without an advertised figure is common practice, no source.
 */
export function seatWindows(events: CamEvents, card: CardBasis, allowance: Angle): Outcome<SeatWindows, WindowFault> {
  const printed = openWindows(events);
  const basis = basisOf(card);
  const intake = widened('intake', printed.intake, wideningOf(printed.intake, card, 'intake', allowance));
  if (!intake.ok) return intake;
  const exhaust = widened('exhaust', printed.exhaust, wideningOf(printed.exhaust, card, 'exhaust', allowance));
  if (!exhaust.ok) return exhaust;
  return done({ basis, intake: intake.value, exhaust: exhaust.value });
}

function basisOf(card: CardBasis): WindowBasis {
  if (card.basis === 'seat') return 'seat-events';
  return card.advertisedDuration ? 'widened-to-advertised-duration' : 'widened-by-allowance';
}

/** Crank angle to add at each end of a window. Negative when the card contradicts itself. */
function wideningOf(window: OpenWindow, card: CardBasis, valve: 'intake' | 'exhaust', allowance: Angle): Angle {
  if (card.basis === 'seat') return 0 as Angle;
  const advertised = card.advertisedDuration?.[valve];
  return advertised === undefined ? allowance : (((advertised - (window.closes - window.opens)) / 2) as Angle);
}

function widened(valve: 'intake' | 'exhaust', window: OpenWindow, widening: Angle): Outcome<OpenWindow, WindowFault> {
  const atLift = (window.closes - window.opens) as Angle;
  if (!(atLift > 0)) return refused({ code: 'never-open', valve, window });
  if (!(widening >= 0)) {
    return refused({ code: 'advertised-shorter', valve, advertised: (atLift + 2 * widening) as Angle, atLift });
  }
  const wide = { opens: (window.opens - widening) as Angle, closes: (window.closes + widening) as Angle };
  return wide.closes - wide.opens < CYCLE ? done(wide) : refused({ code: 'always-open', valve, window: wide });
}

/**
 * Base-circle window of a valve: from its closing to its next opening, `opens` of the next cycle being 4π later.
 * Phase as in `OpenWindow` [rad]; the end may pass 4π. Source: definition.
 */
export function baseCircleWindow(open: OpenWindow): { readonly from: Angle; readonly to: Angle } {
  return { from: open.closes, to: (open.opens + CYCLE) as Angle };
}

/**
 * How far a phase is from the nearer edge of a valve's open window [rad]: positive on the base circle, negative while
 * the valve is open, 0 on an edge. Phase [rad] of the valve's own cylinder, any value; taken modulo 4π.
 *
 * Source: derived.
 */
export function marginOnBaseCircle(open: OpenWindow, phase: Angle): Angle {
  const duration = open.closes - open.opens;
  const sinceOpening = (((phase - open.opens) % CYCLE) + CYCLE) % CYCLE;
  if (sinceOpening <= duration) return -Math.min(sinceOpening, duration - sinceOpening) as Angle;
  return Math.min(sinceOpening - duration, CYCLE - sinceOpening) as Angle;
}
