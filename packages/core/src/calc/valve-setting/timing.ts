import { type Angle, degrees, done, type Outcome, refused } from '../../quantity/index.js';
import { type OpenWindow as OpenAngles, roomFaults } from '../cam/index.js';
import { CYCLE_DEGREES, crankDegrees, firingTops, snap } from '../crank/index.js';
import { seatOf } from './seat.js';
import type { Assumption, OpenWindow, TimingFault, ValveTiming, ValveTimingInput } from './types.js';

/** Margin used when none is given, in crank degrees. Common practice, no source. */
export const DEFAULT_MARGIN = 5;

const inDegrees = (window: OpenAngles): OpenWindow => ({
  opens: crankDegrees(window.opens),
  closes: crankDegrees(window.closes),
});

/** A margin is less than the half cycle that two of them would fill. */
function marginFaults(margin: Angle): readonly TimingFault[] {
  const given = crankDegrees(margin);
  return given >= 0 && given < CYCLE_DEGREES / 2 ? [] : [{ code: 'margin-out-of-range', degrees: given }];
}

function listAssumptions(input: ValveTimingInput, ofCam: readonly Assumption[]): readonly Assumption[] {
  const even = { code: 'intervals-even', degrees: snap(CYCLE_DEGREES / input.firingOrder.length) } as const;
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
 * |        | `margin`          | rad   | 0 to below 360 deg; absent: 5 deg                              |
 *
 * Assumes a four-stroke cycle and the same events in every cylinder. What else was assumed is in `assumed`.
 * Refuses with every fault found: order, intervals, margin, card, or a valve open for 0 deg or less or for the whole
 * cycle. A margin that a long cam leaves no room for is no fault of the card: the plan then refuses those valves by name.
 * Source: definitions of cam card events; frame of reference in reference mechanism-open.md section 8.0.
 */
export function valveTiming(input: ValveTimingInput): Outcome<ValveTiming, readonly TimingFault[]> {
  const margin = input.margin ?? degrees(DEFAULT_MARGIN);
  const tops = firingTops(input.firingOrder, input.firingIntervals);
  const seat = seatOf(input.cam);
  const wrongMargin = marginFaults(margin);
  const noRoom = seat.ok && wrongMargin.length === 0 ? roomFaults(seat.value.windows) : [];
  const faults = [...(tops.ok ? [] : tops.fault), ...(seat.ok ? [] : seat.fault), ...wrongMargin, ...noRoom];
  if (!tops.ok || !seat.ok || faults.length > 0) return refused(faults);
  const { intake, exhaust } = seat.value.windows;
  return done({
    cylinders: tops.value.map(({ cylinder, angle }) => ({ cylinder, firesAt: crankDegrees(angle) })),
    open: { intake: inDegrees(intake), exhaust: inDegrees(exhaust) },
    marginDegrees: crankDegrees(margin),
    assumed: listAssumptions(input, seat.value.assumed),
  });
}
