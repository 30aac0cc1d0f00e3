export { type BalanceAnswer, balanceOf } from './balance.js';
export type { PinPart, PinStack } from './bobweights.js';
export {
  type Correction,
  type CorrectionAnswer,
  type CorrectionOptions,
  camCorrection,
  type TimingPart,
} from './cam-correction.js';
export { type CamWindowAnswer, type CamWindowOptions, camWindowOf, type RoomAtAdvance } from './cam-window.js';
export { type CompressionAnswer, type CylinderStack, compressionOf, type StackPart } from './compression.js';
export { PART_NAMES, ROOM_PARTS, type RoomPart } from './cylinder-room.js';
export { type DegreeingOptions, degreeing } from './degreeing.js';
export { CENTRELINE_AIM } from './degreeing-figures.js';
export type * from './degreeing-model.js';
export { intakeFacesOf } from './intake-face.js';
export { type MotionAnswer, type MotionOfKind, type MotionOptions, motionOf, motionsOf } from './lift-motion.js';
export { type ReadCurve, type ReadCurves, readCurves } from './lift-motion-curve.js';
export type { MeasuredLobes } from './lobe.js';
export { figure, makeupOf, type Spot } from './makeup.js';
export type * from './model.js';
export { preloadOf } from './preload.js';
export { type PushrodOptions, type PushrodTrial, pushrodOf } from './pushrod.js';
export { type ContactPath, type RockerAnswer, rockersOf } from './rockers.js';
export { type ShakingTurn, shakingTurn, type TurningVector } from './shaking.js';
export { type RatioGoal, solveCompression } from './solve-compression.js';
export { type NoCurve, type SpringCurve, springCurve } from './spring-curve.js';
export { springOf, springsOf } from './springs.js';
export { type TimingAnswer, type TimingArc, type TimingBasis, timingOf } from './timing.js';
export { type DeadCentre, type StopReading, trueDeadCentre, WHEEL_DOUBT } from './true-dead-centre.js';
export { type RoomOfKind, roomSweep, type ValveRoomAnswer, type ValveRoomOptions, valveRoomOf } from './valve-room.js';
export { type MeasuredRoom, type MeasuredRoomAnswer, measuredRooms, type RoomReading } from './valve-room-measured.js';
export type { RoomOptions } from './valve-room-model.js';
export type { RoomSensitivity } from './valve-room-sensitivity.js';
