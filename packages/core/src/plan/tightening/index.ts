export {
  type Act,
  type ActTarget,
  actKey,
  byTorqueValue,
  skipName,
  type TighteningActs,
  tighteningActs,
  type VisitingOrder,
  visitingOrder,
  WHOLE_JOINT,
} from './acts.js';
export { answersFor, finishes } from './answers.js';
export type { HoleFastener } from './fastener-now.js';
export type { ActDone, FastenerPlaced, RecordedAct } from './ledger.js';
export type { Again, Offer, OfferedAct, Waits } from './offer.js';
export {
  type Arrival,
  answerLook,
  answerResume,
  type ResumeAnswer,
  type ResumeQuestion,
  type ResumeRefusal,
  resumeQuestion,
} from './resume.js';
export { type HoleMark, type HoleStand, type SkippedAct, type Walk, type WalkProgress, walk } from './walk.js';
export {
  aimOf,
  judgeWrench,
  LEAST_SHARE_OF_TOP,
  type WrenchJudgement,
  type WrenchOnHand,
  type WrenchVerdict,
} from './wrench.js';
