import { degrees, done, type Length, type Outcome, refused } from '../../quantity/index.js';
import {
  seatAllowance as allowanceAngle,
  openFor,
  openWindows,
  type SeatWindows,
  seatWindows,
  USUAL_CHECKING_LIFT,
  VALVE_SIDES,
  type ValveSide,
  type ValveWindows,
  widened,
} from '../cam/index.js';
import { crankDegrees, snap } from '../crank/index.js';
import type { Assumption, EventDegrees, TimingFault, ValveCard } from './types.js';

/**
 * Windows used when no cam card is known: the longest set against which the published lists were checked
 * (reference mechanism-open.md section 8.0). Common practice, no source; a longer cam needs its card.
 */
export const UNKNOWN_CAM: EventDegrees = { intakeOpens: 35, intakeCloses: 75, exhaustOpens: 80, exhaustCloses: 35 };

/** The allowance of `calc/cam` for events at a lift [m], in crank degrees. */
export const seatAllowance = (checkingLift: Length): number => crankDegrees(allowanceAngle(checkingLift));

/** Open windows from seat to seat, with what had to be assumed for them. */
export interface KnownSeat {
  readonly windows: ValveWindows;
  readonly assumed: readonly Assumption[];
}

/**
 * Seat-to-seat windows of a cam card, and everything that was assumed for them.
 *
 * With events they are those of `seatWindows`. Without events the stated windows of `UNKNOWN_CAM` are used, widened when
 * an advertised duration is longer than they are. Refuses what `seatWindows` refuses.
 */
export function seatOf(card: ValveCard | undefined): Outcome<KnownSeat, readonly TimingFault[]> {
  if (!card?.events) return done(withoutEvents(card));
  const seat = seatWindows(card.events, card);
  return seat.ok ? done({ windows: seat.value, assumed: assumedFor(card, seat.value) }) : refused(seat.fault);
}

function withoutEvents(card: ValveCard | undefined): KnownSeat {
  const { intakeOpens, intakeCloses, exhaustOpens, exhaustCloses } = UNKNOWN_CAM;
  let windows = openWindows({
    intakeOpens: degrees(intakeOpens),
    intakeCloses: degrees(intakeCloses),
    exhaustOpens: degrees(exhaustOpens),
    exhaustCloses: degrees(exhaustCloses),
  });
  const assumed: Assumption[] = [{ code: 'cam-unknown', windows: UNKNOWN_CAM }];
  for (const valve of VALVE_SIDES) {
    const advertised = card?.advertisedDuration ? crankDegrees(card.advertisedDuration[valve]) : 0;
    const eachSide = snap((advertised - crankDegrees(openFor(windows[valve]))) / 2);
    if (eachSide <= 0) continue;
    windows = { ...windows, [valve]: widened(windows[valve], degrees(eachSide)) };
    assumed.push({ code: 'default-windows-widened', valve, eachSide, advertised });
  }
  return { windows, assumed };
}

function assumedFor(card: ValveCard, seat: SeatWindows): readonly Assumption[] {
  const { advertisedDuration } = card;
  const eachSide = (valve: ValveSide) => crankDegrees(seat.eachSide[valve]);
  if (seat.basis === 'seat-events') return [];
  if (advertisedDuration) {
    return VALVE_SIDES.map((valve) => {
      const advertised = crankDegrees(advertisedDuration[valve]);
      return { code: 'widened-from-advertised', valve, eachSide: eachSide(valve), advertised };
    });
  }
  const millimetres = snap((card.checkingLift?.value ?? USUAL_CHECKING_LIFT) * 1000);
  const unknown: readonly Assumption[] = card.checkingLift ? [] : [{ code: 'checking-lift-unknown', millimetres }];
  const widenings = VALVE_SIDES.map(
    (valve) => ({ code: 'widened-by-allowance', valve, eachSide: eachSide(valve), millimetres }) as const,
  );
  return [...unknown, ...widenings];
}
