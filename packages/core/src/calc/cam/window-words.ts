import { shownDegrees } from '../crank/index.js';
import type { CamEvents } from './events.js';
import type { WindowFault } from './seat-windows.js';

const eventNames: Readonly<Record<keyof CamEvents, string>> = {
  intakeOpens: 'intake opens (BTDC)',
  intakeCloses: 'intake closes (ABDC)',
  exhaustOpens: 'exhaust opens (BBDC)',
  exhaustCloses: 'exhaust closes (ATDC)',
};

/** One clear line: what is wrong with a cam card, where, and what is valid. */
export function describeWindowFault(fault: WindowFault): string {
  switch (fault.code) {
    case 'event-out-of-range':
      return `cam card: ${eventNames[fault.event]} at ${shownDegrees(fault.degrees)} degrees; -180 to 180 is valid`;
    case 'checking-lift-out-of-range':
      return `cam card: checking lift ${shownDegrees(fault.millimetres)} mm; above 0 to 5 mm is valid`;
    case 'advertised-too-short':
      return `cam card: advertised ${fault.valve} duration ${shownDegrees(fault.advertised)} degrees is shorter than the ${shownDegrees(fault.atLift)} degrees between its events at the checking lift`;
    case 'window-impossible':
      return `cam card: the ${fault.valve} valve would be open for ${shownDegrees(fault.openDegrees)} degrees; above 0 and below ${shownDegrees(fault.below)} is valid`;
  }
}
