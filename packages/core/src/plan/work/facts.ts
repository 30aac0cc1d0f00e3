/**
 * What the record tells the work plan, as plain data. `at` and `by` are of the entry: core has no clock, and a second look
 * rests on who looked and when.
 */
import type { AnswerKind, Asked } from './model.js';

/** What was measured, felt or seen. A photo and what another part of the record holds are named, not copied. */
export type WorkAnswer =
  | { readonly kind: 'value'; readonly text: string; readonly result?: 'good' | 'bad' }
  | { readonly kind: 'felt-or-seen'; readonly words: string; readonly result: 'good' | 'bad' }
  | {
      readonly kind: 'photo';
      readonly photo: string;
      readonly words?: string;
      readonly result?: 'good' | 'bad';
    }
  /** Position, end, face and state of a part that must return. */
  | {
      readonly kind: 'register';
      readonly words: string;
      readonly marks?: {
        readonly position: string;
        readonly end: string;
        readonly face: string;
        readonly condition: string;
      };
      readonly result?: 'good' | 'bad';
    }
  | {
      readonly kind: Exclude<AnswerKind, 'value' | 'felt-or-seen' | 'photo' | 'register' | 'sign-off'>;
      readonly words: string;
      readonly result?: 'good' | 'bad';
    };

/** Kind -> data of every fact about the work plan. */
export interface WorkFactData {
  'work-act-done': {
    readonly act: string;
    readonly answer: WorkAnswer;
    /** How it was found: by feel, by which gauge. A second look alone must use another. */
    readonly method: string;
  };
  'work-act-skipped': { readonly act: string; readonly reason: string };
  /** `rule` names a rule of `reopenings`; `place` is the id of a place of the plan, absent for the whole engine. */
  'work-reopened': { readonly rule: string; readonly place?: string; readonly why: string };
  'second-look': {
    readonly act: string;
    /** Who looked; the same as who did it when alone. */
    readonly looker: string;
    readonly method: string;
    readonly result: 'good' | 'bad';
    readonly seen: string;
  };
  /** Checking springs, clay, solid lifters, piston stop, rod sleeves, rags: what must not stay inside. */
  'mock-up-aid-out': { readonly aid: string; readonly count: number; readonly where: string };
  'mock-up-aid-returned': { readonly aid: string; readonly count: number };
  /** `skips` are the open skips that the person has read. */
  /**
   * The book was begun in the middle of the work: what comes before this operation was done, or not, without a record. It is left out for that
   * reason, never counted as good.
   */
  'work-begun': { readonly operation: string; readonly why: string };
  /** An act of the person's own, at the place of `after`: it comes after that one and before `before`, the signature where absent. */
  'work-act-added': {
    readonly id: string;
    readonly after: string;
    readonly before?: string;
    readonly does: string;
    readonly ask: string;
    readonly answer: 'value' | 'felt-or-seen' | 'photo' | 'list';
    readonly asked?: Asked;
    readonly minutes: number;
    readonly critical: boolean;
    readonly why: string;
  };
  /** The person holds an act for critical: it owes a second look from then on. */
  'work-act-critical': { readonly act: string; readonly why: string };
  /** The card of whoever stopped: what is half done, loose, missing, not oiled or covered, in doubt. */
  'work-left': {
    readonly halfDone: string;
    readonly loose: string;
    readonly missing: string;
    readonly uncovered: string;
    readonly doubt: string;
  };
  /** Back at the work: these acts were touched and are as recorded. */
  'work-resumed': {
    readonly why: 'opened-again' | 'paused' | 'other-person';
    readonly verified: readonly string[];
  };
  'work-signed-off': { readonly words: string; readonly skips: readonly string[] };
}
export type WorkFactKind = keyof WorkFactData;
export type WorkFact = {
  [K in WorkFactKind]: {
    readonly kind: K;
    readonly data: WorkFactData[K];
    readonly at: string;
    readonly by: string;
    readonly entry?: string;
  };
}[WorkFactKind];
