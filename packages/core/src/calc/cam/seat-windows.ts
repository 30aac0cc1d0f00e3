import { type Angle, done, type Length, type Outcome, refused } from '../../quantity/index.js';
import { CYCLE_DEGREES, crankDegrees, snap } from '../crank/index.js';
import { type CamEvents, VALVE_SIDES, type ValveSide } from './events.js';
import { seatAllowance, USUAL_CHECKING_LIFT } from './seat-allowance.js';
import { openFor, openWindows, type ValveWindows, widened } from './windows.js';

/** How the events of a card are bounded, and what is known of the seat. */
export interface CardBasis {
  /** `seat` events bound the whole open window; `at-lift` events were taken at a checking lift such as 1 mm. */
  readonly basis: 'seat' | 'at-lift';
  /** Absent: taken as 0.050 in. */
  readonly checkingLift?: { readonly value: Length };
  /** Seat-to-seat durations, where the card has them. */
  readonly advertisedDuration?: { readonly intake: Angle; readonly exhaust: Angle };
}

/** Where the edges of the windows come from: the screen says so beside the plan. */
export type WindowBasis = 'seat-events' | 'widened-to-advertised-duration' | 'widened-by-allowance';

export interface SeatWindows extends ValveWindows {
  readonly basis: WindowBasis;
  /** Crank angle added at each end of the window that the events give. */
  readonly eachSide: Readonly<Record<ValveSide, Angle>>;
}

/** What is wrong with a card. Angles are in crank degrees, as printed. */
export type WindowFault =
  | { readonly code: 'event-out-of-range'; readonly event: keyof CamEvents; readonly degrees: number }
  | { readonly code: 'checking-lift-out-of-range'; readonly millimetres: number }
  | {
      readonly code: 'advertised-too-short';
      readonly valve: ValveSide;
      readonly advertised: number;
      readonly atLift: number;
    }
  | {
      readonly code: 'window-impossible';
      readonly valve: ValveSide;
      readonly openDegrees: number;
      /** Open windows must be longer than 0 and shorter than this. */
      readonly below: number;
    };

const HIGHEST_CHECKING_LIFT = 5e-3;
const EVENTS = ['intakeOpens', 'intakeCloses', 'exhaustOpens', 'exhaustCloses'] as const satisfies (keyof CamEvents)[];

/**
 * Seat-to-seat open windows of a cam card: what decides when a follower is on the base circle.
 *
 * Seat events are used as printed. Events at a checking lift are widened about the middle of their window: to the
 * advertised duration where the card has it, else by `allowance` [rad of crank] at each end, else by `seatAllowance` of
 * the checking lift. Widening about the middle assumes ramps of equal length; leave a margin when setting valves.
 * Refuses events more than 180° from their dead centre (they belong to another stroke), a checking lift outside 0 to
 * 5 mm, and an advertised duration below the one at lift. Whether the windows leave room is asked by `roomFaults`.
 * Example: 0.050 in duration 214°, advertised 270°: 28° wider at each end.
 * Source: derived, docs/derivations/base-circle-windows.md; the allowance is common practice, no source.
 */
export function seatWindows(
  events: CamEvents,
  card: CardBasis,
  allowance?: Angle,
): Outcome<SeatWindows, readonly WindowFault[]> {
  const strange = eventFaults(events);
  if (strange.length > 0) return refused(strange);
  const printed = openWindows(events);
  const nothing = 0 as Angle;
  if (card.basis === 'seat') {
    return done({ ...printed, basis: 'seat-events', eachSide: { intake: nothing, exhaust: nothing } });
  }
  const { advertisedDuration } = card;
  return advertisedDuration ? toAdvertised(printed, advertisedDuration) : byAllowance(printed, card, allowance);
}

/** Each printed event must lie within half a turn of its dead centre; beyond that it belongs to another stroke. */
function eventFaults(events: CamEvents): readonly WindowFault[] {
  return EVENTS.flatMap((event) => {
    const degrees = crankDegrees(events[event]);
    return Math.abs(degrees) <= 180 ? [] : [{ code: 'event-out-of-range', event, degrees } as const];
  });
}

function toAdvertised(
  printed: ValveWindows,
  durations: Readonly<Record<ValveSide, Angle>>,
): Outcome<SeatWindows, readonly WindowFault[]> {
  const faults = VALVE_SIDES.flatMap((valve) => {
    const advertised = crankDegrees(durations[valve]);
    const atLift = crankDegrees(openFor(printed[valve]));
    return advertised < atLift ? [{ code: 'advertised-too-short', valve, advertised, atLift } as const] : [];
  });
  if (faults.length > 0) return refused(faults);
  const missing = (valve: ValveSide) => ((durations[valve] - openFor(printed[valve])) / 2) as Angle;
  const eachSide = { intake: missing('intake'), exhaust: missing('exhaust') };
  return done({ ...wideBy(printed, eachSide), basis: 'widened-to-advertised-duration', eachSide });
}

function byAllowance(
  printed: ValveWindows,
  card: CardBasis,
  allowance: Angle | undefined,
): Outcome<SeatWindows, readonly WindowFault[]> {
  const lift = card.checkingLift?.value ?? USUAL_CHECKING_LIFT;
  if (!(lift > 0 && lift <= HIGHEST_CHECKING_LIFT)) {
    return refused([{ code: 'checking-lift-out-of-range', millimetres: snap(lift * 1000) }]);
  }
  const each = allowance ?? seatAllowance(lift);
  const eachSide = { intake: each, exhaust: each };
  return done({ ...wideBy(printed, eachSide), basis: 'widened-by-allowance', eachSide });
}

const wideBy = (windows: ValveWindows, eachSide: Readonly<Record<ValveSide, Angle>>): ValveWindows => ({
  intake: widened(windows.intake, eachSide.intake),
  exhaust: widened(windows.exhaust, eachSide.exhaust),
});

/** Valves that never open or never rest on the base circle: open for 0 or less, or for 720° or more. */
export function roomFaults(windows: ValveWindows): readonly WindowFault[] {
  const below = CYCLE_DEGREES;
  return VALVE_SIDES.flatMap((valve) => {
    const openDegrees = crankDegrees(openFor(windows[valve]));
    const fits = openDegrees > 0 && openDegrees < below;
    return fits ? [] : [{ code: 'window-impossible', valve, openDegrees, below } as const];
  });
}
