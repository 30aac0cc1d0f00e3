/** Sentences for readers, in one place so that command line, screens and report say the same. Degrees are crank degrees. */
import type { MirrorFault } from './mirror-rule.js';
import type { Assumption, EventDegrees, PlanFault, RefusedValve, TimingFault } from './types.js';

const shown = (degrees: number) => String(Math.round(degrees * 1000) / 1000);
const eventNames: Readonly<Record<keyof EventDegrees, string>> = {
  intakeOpens: 'intake opens (BTDC)',
  intakeCloses: 'intake closes (ABDC)',
  exhaustOpens: 'exhaust opens (BBDC)',
  exhaustCloses: 'exhaust closes (ATDC)',
};

/** One clear line: what is wrong, where, and what is valid. */
export function describeTimingFault(fault: TimingFault): string {
  switch (fault.code) {
    case 'order-empty':
      return 'firing order: empty; list every cylinder once, such as 1,3,4,2';
    case 'cylinder-out-of-range':
      return `firing order: cylinder ${fault.cylinder} is not a whole number from 1 to ${fault.most}`;
    case 'cylinder-repeated':
      return `firing order: cylinder ${fault.cylinder} stands more than once; each cylinder fires once in two turns`;
    case 'cylinder-missing':
      return `firing order: cylinder ${fault.cylinder} is missing; every cylinder from 1 to ${fault.highest} is needed`;
    case 'interval-count':
      return `firing intervals: ${fault.given} given, ${fault.needed} needed, one after each cylinder of the order`;
    case 'interval-out-of-range':
      return `firing intervals: number ${fault.place} is ${shown(fault.degrees)} degrees; 0 to 720 is valid`;
    case 'interval-sum':
      return `firing intervals: they add up to ${shown(fault.degrees)} degrees; 720 is needed`;
    case 'margin-out-of-range':
      return `margin: ${shown(fault.degrees)} degrees; 0 to below 360 is valid`;
    case 'event-out-of-range':
      return `cam card: ${eventNames[fault.event]} at ${shown(fault.degrees)} degrees; -180 to 180 is valid`;
    case 'checking-lift-out-of-range':
      return `cam card: checking lift ${shown(fault.millimetres)} mm; above 0 to 5 mm is valid`;
    case 'advertised-too-short':
      return `cam card: advertised ${fault.valve} duration ${shown(fault.advertised)} degrees is shorter than the ${shown(fault.atLift)} degrees between its events at the checking lift`;
    case 'window-impossible':
      return `cam card: the ${fault.valve} valve would be open for ${shown(fault.openDegrees)} degrees; above 0 and below ${shown(fault.below)} is valid with this margin`;
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

/** Why a valve may not be set: cylinder, valve, phase, and which of its events is how near. */
export function describeRefusal(valve: RefusedValve): string {
  const who = `${valve.valve} ${valve.cylinder} at crank ${shown(valve.crankDegrees)} (phase ${shown(valve.phase)})`;
  const distance = `${shown(Math.abs(valve.degrees))} degrees`;
  if (valve.code === 'too-near') {
    const end = valve.nearest === 'opening' ? `opens in ${distance}` : `closed ${distance} ago`;
    return `${who}: ${end}, the margin is ${shown(valve.marginDegrees)} degrees`;
  }
  return valve.nearest === 'opening'
    ? `${who}: off its base circle, it opened ${distance} ago`
    : `${who}: off its base circle, it closes in ${distance}`;
}

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
