/**
 * The facts that plans are folded from, as plain data. The record keeps them as entries (`record/entry.ts` builds its
 * kinds on these shapes); a plan sees only what happened, in order, without envelopes, hashes or struck-out entries.
 */
import type { ValveId } from '../engine/model.js';

/** A typed reading: as keyed, and its value in the SI unit named. */
export interface Reading {
  readonly text: string;
  readonly value: number;
  readonly unit: 'm' | 'N.m' | 'rad' | 'm3' | 'kg' | 'N' | 'K' | 'Pa' | 's' | 'rad/s';
}
export type PartKind = 'lifter' | 'pushrod' | 'rocker' | 'follower' | 'shim';

/** What was seen when an act was done; which answers fit which act is `answersFor` in `plan/tightening`. */
export type Seen =
  | 'reached'
  | 'turned-and-marked'
  | 'loosened'
  | 'held'
  | 'moved'
  | 'within'
  | 'short'
  | 'beyond'
  | 'renewed'
  | 'followed'
  | 'free'
  | 'stiff'
  | 'mark-found';
/** What brought the person back to a joint that was under way. */
export type ArrivalReason = 'opened-again' | 'paused' | 'other-person';
/** The answer to "has it been turned? look for the paint mark". */
export type MarkAnswer = 'found' | 'clean' | 'unknown';

/** Kind -> data of every fact that a plan reads. */
export interface FactData {
  'gasket-checked': {
    readonly head: string;
    /** `way-up`, `faces`, `dowels`, `holes-dry` or `opening:<id>`. */
    readonly item: string;
    readonly result: 'good' | 'bad';
    readonly seen: string;
  };
  'fastener-placed': {
    readonly joint: string;
    readonly hole: string;
    /** Counts the fasteners that have been in this hole, from 1; one taken out and put back counts again. */
    readonly instance: number;
    readonly fastener: string;
    /** Absent where nobody said; a hole that asks for a new fastener needs `new`. */
    readonly condition?: 'new' | 'used';
    readonly length?: Reading;
    readonly onThread: string;
    readonly underHead: string;
  };
  'act-done': {
    readonly joint: string;
    readonly stage: number;
    /** `all` for an instruction to the whole joint. */
    readonly hole: string;
    readonly instance: number;
    /** Counts the times that this stage has been gone round, from 1. */
    readonly round: number;
    /** The target that the person saw. */
    readonly target: string;
    readonly seen: Seen;
    readonly reading?: Reading;
  };
  'walk-resumed': {
    readonly joint: string;
    readonly stage: number;
    readonly why: ArrivalReason | 'struck-out';
    /** Acts touched again on return, as `stage/hole`. */
    readonly verified: readonly string[];
    /** True when a stage by torque value starts again from its first fastener. */
    readonly roundAgain: boolean;
    /** What the paint mark on the next fastener told, where that had to be asked. */
    readonly mark?: {
      readonly stage: number;
      readonly hole: string;
      readonly instance: number;
      readonly answer: MarkAnswer;
    };
  };
  'fastener-doubted': {
    readonly joint: string;
    readonly stage: number;
    readonly hole: string;
    readonly instance: number;
    readonly why: string;
  };
  'joint-opened': { readonly joint: string; readonly reason: string };
  'part-tagged': {
    readonly part: PartKind;
    readonly valve: ValveId;
    readonly end?: string;
    readonly face?: string;
    readonly condition: string;
  };
  'part-fitted': {
    readonly part: PartKind;
    readonly to: ValveId;
    /** The place that a used part came from, or `new`. */
    readonly from: ValveId | 'new';
    readonly end?: string;
    readonly face?: string;
    readonly lubricant?: string;
  };
  'valve-set': {
    readonly valve: ValveId;
    readonly method: 'stop' | 'crank-here' | 'neighbour';
    readonly crankDegrees?: number;
    readonly adjustment: 'preload' | 'lash' | 'shim' | 'fixed';
    readonly turns?: number;
    readonly plungerTravel?: Reading;
    readonly lash?: Reading;
    readonly shim?: Reading;
    readonly condition: 'cold' | 'hot';
  };
  'valve-rechecked': {
    readonly valve: ValveId;
    readonly result: 'good' | 'bad';
    readonly lash?: Reading;
    readonly seen: string;
  };
  /** `what` is `act:<joint>/<stage>/<hole>` for a tightening act, else free words. */
  skipped: { readonly what: string; readonly reason: string };
}
export type FactKind = keyof FactData;
type RecordedFact = {
  [K in FactKind]: { readonly kind: K; readonly data: FactData[K]; readonly entry?: string };
}[FactKind];

/** The record of an act was struck out. Whether the fastener was turned is then open, so the walk must ask. */
export interface ActStruck {
  readonly kind: 'act-struck';
  readonly data: Pick<FactData['act-done'], 'joint' | 'stage' | 'hole' | 'instance'>;
  readonly entry?: string;
}
export type Fact = RecordedFact | ActStruck;
/** A fact still to be recorded. */
export type NewFact = { [K in FactKind]: { readonly kind: K; readonly data: FactData[K] } }[FactKind];
