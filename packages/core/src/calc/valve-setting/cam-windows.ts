import { done, type Outcome, refused } from '../../quantity/index.js';
import { crankDegrees, snap } from './crank-circle.js';
import type { Assumption, EventDegrees, TimingFault, ValveCard, ValveSide } from './types.js';

/**
 * Windows used when no cam card is known: the longest set against which the published lists were checked
 * (reference mechanism-open.md section 8.0). Common practice, no source; a longer cam needs its card.
 */
export const UNKNOWN_CAM: EventDegrees = { intakeOpens: 35, intakeCloses: 75, exhaustOpens: 80, exhaustCloses: 35 };

const FIFTY_THOU = 1.27e-3;
/** Crank degrees between the seat and 0.050 in of lift, each side. Common practice, no source. */
const ALLOWANCE_AT_FIFTY_THOU = 25;
const HIGHEST_CHECKING_LIFT = 5e-3;
const sides = ['intake', 'exhaust'] as const;

type EventName = keyof EventDegrees;
const ends: Readonly<Record<ValveSide, readonly [EventName, EventName]>> = {
  intake: ['intakeOpens', 'intakeCloses'],
  exhaust: ['exhaustOpens', 'exhaustCloses'],
};

/** Events from seat to seat, with what had to be assumed for them. */
export interface SeatEvents {
  readonly events: EventDegrees;
  readonly assumed: readonly Assumption[];
}

/** Crank degrees during which a valve is open: 180 plus both of its events. */
export function openDegrees(events: EventDegrees, side: ValveSide): number {
  const [opens, closes] = ends[side];
  return snap(180 + events[opens] + events[closes]);
}

function widened(events: EventDegrees, side: ValveSide, eachSide: number): EventDegrees {
  const [opens, closes] = ends[side];
  return { ...events, [opens]: snap(events[opens] + eachSide), [closes]: snap(events[closes] + eachSide) };
}

/**
 * Degrees by which each end of an open window is moved out when its events were printed at a lift.
 *
 *   allowance = 25 deg x sqrt(lift / 0.050 in), rounded up to the whole degree
 *
 * A follower that leaves the base circle under constant acceleration rises with the square of the angle, so the angle
 * goes with the root of the lift. 0.050 in gives 25 deg, 1 mm gives 23 deg. Lift in metres, above 0 to 5 mm.
 * Source: the 25 deg are common practice, no source; the root is derived. The margin comes on top of it.
 */
export function seatAllowance(checkingLift: number): number {
  return Math.ceil(snap(ALLOWANCE_AT_FIFTY_THOU * Math.sqrt(checkingLift / FIFTY_THOU)));
}

function withoutCard(card: ValveCard | undefined): SeatEvents {
  let events = UNKNOWN_CAM;
  const assumed: Assumption[] = [{ code: 'cam-unknown', windows: UNKNOWN_CAM }];
  for (const valve of sides) {
    const advertised = card?.advertisedDuration ? crankDegrees(card.advertisedDuration[valve]) : 0;
    const eachSide = snap((advertised - openDegrees(events, valve)) / 2);
    if (eachSide <= 0) continue;
    events = widened(events, valve, eachSide);
    assumed.push({ code: 'default-windows-widened', valve, eachSide, advertised });
  }
  return { events, assumed };
}

function fromAdvertised(
  printed: EventDegrees,
  durations: Readonly<Record<ValveSide, number>>,
): Outcome<SeatEvents, TimingFault[]> {
  let events = printed;
  const assumed: Assumption[] = [];
  const faults: TimingFault[] = [];
  for (const valve of sides) {
    const advertised = crankDegrees(durations[valve]);
    const atLift = openDegrees(printed, valve);
    const eachSide = snap((advertised - atLift) / 2);
    if (eachSide < 0) faults.push({ code: 'advertised-too-short', valve, advertised, atLift });
    events = widened(events, valve, eachSide);
    assumed.push({ code: 'widened-from-advertised', valve, eachSide, advertised });
  }
  return faults.length > 0 ? refused(faults) : done({ events, assumed });
}

function byAllowance(printed: EventDegrees, card: ValveCard): Outcome<SeatEvents, TimingFault[]> {
  const lift = card.checkingLift?.value ?? FIFTY_THOU;
  const millimetres = snap(lift * 1000);
  if (!(lift > 0 && lift <= HIGHEST_CHECKING_LIFT))
    return refused([{ code: 'checking-lift-out-of-range', millimetres }]);
  const eachSide = seatAllowance(lift);
  const events = sides.reduce((all, valve) => widened(all, valve, eachSide), printed);
  const unknown: Assumption[] = card.checkingLift ? [] : [{ code: 'checking-lift-unknown', millimetres }];
  const widenings = sides.map((valve) => ({ code: 'widened-by-allowance', valve, eachSide, millimetres }) as const);
  return done({ events, assumed: [...unknown, ...widenings] });
}

/** Each printed event must lie within half a turn of its dead centre; beyond that it belongs to another stroke. */
function eventFaults(events: EventDegrees): TimingFault[] {
  return (Object.keys(UNKNOWN_CAM) as EventName[]).flatMap((event) =>
    Math.abs(events[event]) <= 180 ? [] : [{ code: 'event-out-of-range', event, degrees: events[event] } as const],
  );
}

/**
 * Seat-to-seat events of a cam card.
 *
 * Seat events are taken as printed. Events at a lift are widened on both sides by half of (advertised duration - printed
 * duration) where the card has it, else by `seatAllowance`. Without events the stated windows of `UNKNOWN_CAM` are used,
 * widened when an advertised duration is longer than they are. All of it is listed in `assumed`.
 * Refuses events beyond 180 deg of their dead centre (NaN included), a checking lift outside 0 to 5 mm, and an advertised
 * duration shorter than the events.
 */
export function seatEvents(card: ValveCard | undefined): Outcome<SeatEvents, readonly TimingFault[]> {
  if (!card?.events) return done(withoutCard(card));
  const { intakeOpens, intakeCloses, exhaustOpens, exhaustCloses } = card.events;
  const printed: EventDegrees = {
    intakeOpens: crankDegrees(intakeOpens),
    intakeCloses: crankDegrees(intakeCloses),
    exhaustOpens: crankDegrees(exhaustOpens),
    exhaustCloses: crankDegrees(exhaustCloses),
  };
  const faults = eventFaults(printed);
  if (faults.length > 0) return refused(faults);
  if (card.basis === 'seat') return done({ events: printed, assumed: [] });
  return card.advertisedDuration ? fromAdvertised(printed, card.advertisedDuration) : byAllowance(printed, card);
}
