/** What is kept of single facts while a joint is folded. */
import type { FactData } from '../facts.js';
import type { Act } from './acts.js';

export type ActDone = FactData['act-done'];
export type FastenerPlaced = FactData['fastener-placed'];

export interface RecordedAct {
  readonly act: Act;
  readonly done: ActDone;
  readonly entry?: string;
  /** Place among the facts; later acts have higher ones. */
  readonly at: number;
}
/** `twice`: two records say that it was turned by angle in one stage. `cap-off`: its cap comes off to be looked at. */
export type OutWhy = 'doubted' | 'renewed' | 'beyond' | 'twice' | 'cap-off';
/** A fastener instance that must leave its hole, and why. */
export interface Ended {
  readonly hole: string;
  readonly instance: number;
  readonly stage: number;
  readonly why: OutWhy;
}
/** Records of a fastener made before this place, in later stages, that do not count any more. */
export interface Voided {
  readonly hole: string;
  readonly instance: number;
  readonly stage: number;
  readonly at: number;
}
export interface Placed {
  readonly data: FastenerPlaced;
  readonly entry?: string;
}
