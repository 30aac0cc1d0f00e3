import { shownDegrees } from './degree-circle.js';
import type { FiringFault } from './firing.js';

/** One clear line: what is wrong with a firing order or its intervals, where, and what is valid. */
export function describeFiringFault(fault: FiringFault): string {
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
      return `firing intervals: number ${fault.place} is ${shownDegrees(fault.degrees)} degrees; 0 to 720 is valid`;
    case 'interval-sum':
      return `firing intervals: they add up to ${shownDegrees(fault.degrees)} degrees; 720 is needed`;
  }
}
