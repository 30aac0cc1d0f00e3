export { CYCLE, TURN } from './angle.js';
export { rimAngle, rimChord, rimDistance } from './damper.js';
export { type DeadCentres, deadCentres, pistonDrop } from './dead-centres.js';
export { CYCLE_DEGREES, crankDegrees, SAME, samePlace, shownDegrees, snap, wrap } from './degree-circle.js';
export { type FireIntervals, fireIntervals } from './fire-intervals.js';
export { type FiringFault, type FiringTop, firingTops, MOST_CYLINDERS } from './firing.js';
export { describeFiringFault } from './firing-words.js';
export { meanPistonSpeed } from './mean-speed.js';
export { type PistonMotion, pistonMotion } from './motion.js';
export { type PeakSpeed, peakSpeed, peakSpeedAngle } from './peak-speed.js';
export {
  heightAt,
  pinHeight,
  pistonAcceleration,
  pistonSpeed,
  type RodTooShort,
  type SliderCrank,
} from './slider-crank.js';
export { type StopMethod, topFromStop } from './stop-method.js';
export {
  type CylinderThrow,
  firingOrderAgainstThrows,
  type PinDifference,
  pinDifferences,
  type ThrowDisagreement,
  topAngleOfThrow,
} from './throws.js';
