export { SIGNED_OFF, workPlan } from './build-plan.js';
export { chunksOf } from './chunks.js';
export type { WorkAnswer, WorkFact, WorkFactData, WorkFactKind } from './facts.js';
export type { Held, Left, OpenAgain, Resumed } from './fold.js';
export { HAZARDS } from './hazards.js';
export { momentOf, roleOfJoint } from './homes.js';
export { judgeWork, type WorkRefusal } from './judge.js';
export type * from './model.js';
export { offers, type Pause, type WorkOffer } from './offers.js';
export { withOwnActs } from './own-acts.js';
export { placesIn, type Reopened, type ReopeningRefusal, reopenedBy } from './reopening.js';
export { DONE_AGAIN, REOPENING_RULES, type ReopeningRule } from './reopenings/index.js';
export { type ActToVerify, returnToWork, type Verify, type WorkReturn } from './return-to-work.js';
export { ALONE_AFTER_MINUTES, type LookKind, type LookRefusal, lookKind } from './second-look.js';
export {
  type ActStand,
  type ActState,
  type Blocker,
  type OpenSkip,
  type WorkStanding,
  workStanding,
} from './standing.js';
export { traitsOf } from './traits.js';
