export { type Afterwards, afterRunIn } from './afterwards.js';
export { percentOf } from './banks.js';
export {
  CLEAR_RISE,
  type CompressionOfCylinder,
  type CompressionTest,
  type CylinderFinding,
  compressionTest,
} from './compression-test.js';
export {
  factsOf,
  HEARD_PLACES,
  type HeardPlace,
  RUNNING_FACT_KINDS,
  RUNNING_WHATS,
  type RunningFact,
  type RunningFactData,
  type RunningFactKind,
  type RunningFactOf,
  type RunningWhat,
} from './facts.js';
export { judgeStart, LONGEST_CRANKING, type StartJudgement, type StopRule, stopRule } from './first-start.js';
export { GAUGES, type Gauge, type GaugeJudgement, type GaugeLimit } from './gauge-limit.js';
export { judgeGauge, limitShown, newestReadings, STOPS_AT_ONCE, stopNow } from './gauges.js';
export {
  type BodyTurn,
  bodyTurn,
  type CapPost,
  distributorAngle,
  type IgnitionPlan,
  ignitionPlan,
  type NoIgnitionPlan,
  oneTooth,
  type Sense,
} from './ignition.js';
export { HEARD, type LeakageOfCylinder, type LeakageTest, leakageTest } from './leakage-test.js';
export { type ActAnswer, oiledValves, type ReadyItem, readyItems } from './ready.js';
export { addMonths, daysBetween, type Reminder, type Reminders, reminders } from './reminders.js';
export {
  type BrokenOff,
  momentsOfReadings,
  READING_EVERY,
  type RunInClock,
  runInClock,
  secondsBetween,
} from './run-in-clock.js';
export { COMMON_PRACTICE, type Schedule, type ScheduledStep, scheduleOf } from './schedules.js';
export { meaningOfStop, STOP_REASONS, type StopReason, stopReason } from './stops.js';
