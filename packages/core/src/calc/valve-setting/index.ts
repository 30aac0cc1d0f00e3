export { crankDegrees, MOST_CYLINDERS } from '../crank/index.js';
export { type MirrorFault, type MirrorRule, mirrorRule } from './mirror-rule.js';
export { type BaseCircleSpan, baseCircleSpans, JUST_MOVING, type NeighbourStep, neighbourSteps } from './neighbour.js';
export { planValveStops } from './plan-stops.js';
export { distanceFromOpen, permittedAt } from './position.js';
export { type Mates, mateOf, type RunningMates, runningMates } from './running-mates.js';
export { seatAllowance, UNKNOWN_CAM } from './seat.js';
export { type CrankSigns, signsAt } from './signs.js';
export { DEFAULT_MARGIN, valveTiming } from './timing.js';
export type * from './types.js';
export {
  describeAssumption,
  describeMirrorFault,
  describePlanFault,
  describeReason,
  describeRefusal,
  describeTimingFault,
} from './words.js';
