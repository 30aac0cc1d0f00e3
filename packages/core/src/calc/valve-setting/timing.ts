import { done, type Outcome, refused } from '../../quantity/index.js';
import { openDegrees, seatEvents } from './cam-windows.js';
import { CYCLE, crankDegrees, snap } from './crank-circle.js';
import { firingPlaces } from './firing.js';
import type {
  Assumption,
  EventDegrees,
  OpenWindow,
  TimingFault,
  ValveSide,
  ValveTiming,
  ValveTimingInput,
} from './types.js';

/** Margin used when none is given, in crank degrees. Common practice, no source. */
export const DEFAULT_MARGIN = 5;

/** Open windows in phase: exhaust from 180 - EO to 360 + EC, intake from 360 - IO to 540 + IC. */
function openWindows(events: EventDegrees): Readonly<Record<ValveSide, OpenWindow>> {
  return {
    intake: { opens: snap(360 - events.intakeOpens), closes: snap(540 + events.intakeCloses) },
    exhaust: { opens: snap(180 - events.exhaustOpens), closes: snap(360 + events.exhaustCloses) },
  };
}

/** A valve must open at all, and leave room between its margins where it can be set. */
function windowFaults(events: EventDegrees, margin: number): TimingFault[] {
  const below = CYCLE - 2 * margin;
  return (['intake', 'exhaust'] as const).flatMap((valve) => {
    const open = openDegrees(events, valve);
    return open > 0 && open < below ? [] : [{ code: 'window-impossible', valve, openDegrees: open, below } as const];
  });
}

function listAssumptions(input: ValveTimingInput, ofCam: readonly Assumption[]): readonly Assumption[] {
  const even = { code: 'intervals-even', degrees: snap(CYCLE / input.firingOrder.length) } as const;
  const margin = { code: 'margin-default', degrees: DEFAULT_MARGIN } as const;
  const firingKnown = input.firingIntervals !== undefined || input.firingOrder.length === 1;
  return [...ofCam, ...(input.margin === undefined ? [margin] : []), ...(firingKnown ? [] : [even])];
}

/**
 * Makes an engine ready for the questions of valve setting.
 *
 *   phase of a cylinder = (A - firesAt) mod 720
 *   exhaust open from 180 - EO to 360 + EC, intake open from 360 - IO to 540 + IC
 *
 * | symbol | argument          | unit  | meaning                                                       |
 * |--------|-------------------|-------|---------------------------------------------------------------|
 * | A      |                   | deg   | crank angle after the first cylinder of the order fires        |
 * | EO, IC | `cam.events`      | rad   | before / after bottom dead centre, -180 to 180 deg             |
 * | IO, EC | `cam.events`      | rad   | before / after top dead centre, -180 to 180 deg                |
 * |        | `firingIntervals` | rad   | one for each cylinder, 0 or more, 720 deg in all; absent: even |
 * |        | `margin`          | rad   | 0 up to what the cam leaves; absent: 5 deg                     |
 *
 * Assumes a four-stroke cycle and the same events in every cylinder. What else was assumed is in `assumed`.
 * Refuses with every fault found: order, intervals, margin, card, or a window that can never be set
 * (open for 0 deg or less, or for 720 - 2 x margin or more).
 * Source: definitions of cam card events; frame of reference in reference mechanism-open.md section 8.0.
 */
export function valveTiming(input: ValveTimingInput): Outcome<ValveTiming, readonly TimingFault[]> {
  const firing = firingPlaces(input);
  const seat = seatEvents(input.cam);
  const marginDegrees = input.margin === undefined ? DEFAULT_MARGIN : crankDegrees(input.margin);
  const faults: TimingFault[] = [];
  if (!firing.ok) faults.push(...firing.fault);
  if (!seat.ok) faults.push(...seat.fault);
  if (!(marginDegrees >= 0 && marginDegrees < CYCLE / 2))
    faults.push({ code: 'margin-out-of-range', degrees: marginDegrees });
  else if (seat.ok) faults.push(...windowFaults(seat.value.events, marginDegrees));
  if (!firing.ok || !seat.ok || faults.length > 0) return refused(faults);
  return done({
    cylinders: firing.value,
    open: openWindows(seat.value.events),
    marginDegrees,
    assumed: listAssumptions(input, seat.value.assumed),
  });
}
