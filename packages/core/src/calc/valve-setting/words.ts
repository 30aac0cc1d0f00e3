/** Sentences for readers, in one place so that command line, screens and report say the same. Degrees are crank degrees. */
import { describeWindowFault } from '../cam/index.js';
import { describeFiringFault, shownDegrees } from '../crank/index.js';
import type { MirrorFault } from './mirror-rule.js';
import type { Assumption, PlanFault, RefusedValve, TimingFault } from './types.js';

const shown = shownDegrees;

/** One clear line: what is wrong, where, and what is valid. */
export function describeTimingFault(fault: TimingFault): string {
  switch (fault.code) {
    case 'margin-out-of-range':
      return `margin: ${shown(fault.degrees)} degrees; 0 to below 360 is valid`;
    case 'event-out-of-range':
    case 'checking-lift-out-of-range':
    case 'advertised-too-short':
    case 'window-impossible':
      return describeWindowFault(fault);
    default:
      return describeFiringFault(fault);
  }
}

/** One line about something the plan rests on. */
export function describeAssumption(assumed: Assumption): string {
  switch (assumed.code) {
    case 'cam-unknown': {
      const w = assumed.windows;
      return `cam card unknown: intake taken as open from ${w.intakeOpens} BTDC to ${w.intakeCloses} ABDC, exhaust from ${w.exhaustOpens} BBDC to ${w.exhaustCloses} ATDC; a longer cam needs its card`;
    }
    case 'default-windows-widened':
      return `${assumed.valve} window widened by ${shown(assumed.eachSide)} degrees on each side to the advertised ${shown(assumed.advertised)} degrees`;
    case 'margin-default':
      return `margin taken as ${shown(assumed.degrees)} degrees from opening and from closing`;
    case 'intervals-even':
      return `firing intervals taken as even, ${shown(assumed.degrees)} degrees`;
    case 'checking-lift-unknown':
      return `checking lift not given: taken as 0.050 in (${shown(assumed.millimetres)} mm)`;
    case 'widened-from-advertised':
      return `${assumed.valve} events are at a lift: widened by ${shown(assumed.eachSide)} degrees on each side to the advertised ${shown(assumed.advertised)} degrees`;
    case 'widened-by-allowance':
      return `${assumed.valve} events are at ${shown(assumed.millimetres)} mm lift: widened by ${shown(assumed.eachSide)} degrees on each side (common practice, no source)`;
  }
}

/** Why a valve may not be set, without its name: which of its events is how near. */
export function describeReason(valve: RefusedValve): string {
  const distance = `${shown(Math.abs(valve.degrees))} degrees`;
  if (valve.code === 'too-near') {
    const end = valve.nearest === 'opening' ? `opens in ${distance}` : `closed ${distance} ago`;
    return `${end}, the margin is ${shown(valve.marginDegrees)} degrees`;
  }
  const event = valve.nearest === 'opening' ? `it opened ${distance} ago` : `it closes in ${distance}`;
  return `off its base circle, ${event}`;
}

/** Why a valve may not be set: cylinder, valve, phase, and which of its events is how near. */
export const describeRefusal = (valve: RefusedValve): string =>
  `${valve.valve} ${valve.cylinder} at crank ${shown(valve.crankDegrees)} (phase ${shown(valve.phase)}): ${describeReason(valve)}`;

/** One clear line about stops that cannot be used. */
export function describePlanFault(fault: PlanFault): string {
  return fault.code === 'no-stops'
    ? 'stops: none given; list crank degrees such as 0,360'
    : `stops: ${fault.given} is not a crank angle from 0 to below 720 degrees`;
}

/** Why the rule of nine or thirteen does not hold for a head. */
export function describeMirrorFault(fault: MirrorFault): string {
  if (fault.code === 'valves-do-not-fit')
    return `valve row: cylinder ${fault.cylinder} needs exactly one intake and one exhaust valve in the row, and a place in the firing order`;
  const { open, set } = fault;
  const why = fault.reason === 'other-kind' ? 'they are not of the same kind' : 'their cylinders are not running mates';
  return `with valve ${open.number} (${open.valve} ${open.cylinder}) at full lift, valve ${set.number} (${set.valve} ${set.cylinder}) is only ${shown(fault.fromFullLift)} degrees from its own full lift: ${why}`;
}
