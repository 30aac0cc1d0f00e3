/**
 * What the screens of the whole work show, as data; computed whole from engine + log. `plan/work` says what may be done; here it gets its words, the
 * screen that answers it, and who did what.
 */
import type { AnswerKind, Asked, Phase, WorkFactData } from '../plan/index.js';
import type { Caution, Given, Progress } from './views.js';

/** Who acts and when, from the edge: a second look rests on both. RFC 3339 with offset. */
export interface Moment {
  readonly at: string;
  readonly by: string;
}

export type WorkActState = 'done' | 'skipped' | 'ready' | 'away' | 'waiting';
export interface WorkWait {
  readonly kind: 'act' | 'second-look' | 'aid';
  /** "Tighten the main caps, main bearing 2: it is the step before" */
  readonly words: string;
  /** The act that is waited for, or that owes its look. */
  readonly act?: string;
}
/** One act at one place, with all that a person needs who does it. */
export interface WorkActView {
  /** `caps-on@main-3`. */
  readonly id: string;
  readonly operation: string;
  readonly operationTitle: string;
  readonly phase: Phase;
  /** "main bearing 3"; empty where it is the engine as a whole. */
  readonly place: string;
  /** What the hand does. */
  readonly does: string;
  /** What is recorded. */
  readonly ask: string;
  readonly answer: AnswerKind;
  readonly asked?: Asked;
  /** Units that a figure may carry, the usual one of this device first: "mm", "in". */
  readonly units: readonly string[];
  /** Usual length: common practice, no source. */
  readonly minutes: number;
  readonly state: WorkActState;
  /** What was answered, newest; kept too where it was found bad. */
  readonly given?: Given & {
    readonly words: string;
    readonly method: string;
    readonly result: 'good' | 'bad';
    readonly photo?: string;
  };
  readonly skipped?: Given & { readonly reason: string };
  /** Finished before, and open again: why. */
  readonly again?: { readonly title: string; readonly because: string; readonly why: string };
  readonly waitsFor: readonly WorkWait[];
  readonly critical: boolean;
  readonly look?: 'owed' | 'independent' | 'alone';
  readonly looked?: Given & { readonly looker: string; readonly method: string; readonly seen: string };
  readonly closes: boolean;
  readonly noReturn?: string;
  readonly two?: string;
  readonly badPause?: string;
  readonly mustDo?: string;
  readonly awaits?: 'shop' | 'parts';
  /** What the sheet leaves open about whether this engine has it. */
  readonly unsure?: string;
  /** The person put it into the plan. */
  readonly added?: { readonly why: string };
  /**
   * A screen that answers it (`answers: true`: its own record finishes this act, nothing is typed here) or that helps: place in the
   * program, as in `measure/cylinder-bore`, and words for the way there.
   */
  readonly opens?: { readonly place: string; readonly words: string; readonly answers: boolean };
  /** Where photos of it are tied to: `act:<id>`. */
  readonly photos: string;
}
/** What holds for all acts of an operation: told before the first of them. */
export interface OperationView {
  readonly id: string;
  readonly title: string;
  readonly phase: Phase;
  readonly progress: Progress;
  readonly finished: boolean;
  readonly consumables: readonly { readonly surface: string; readonly use: string; readonly mistake: string }[];
  readonly tools: readonly string[];
  readonly cautions: readonly Caution[];
  readonly mistakes: readonly { readonly wrong: string; readonly cost: string }[];
  /** Operations that come before as a whole and are not finished. */
  readonly waitsFor: readonly string[];
}
export interface PhaseView {
  readonly phase: Phase;
  readonly title: string;
  readonly progress: Progress;
  readonly operations: readonly OperationView[];
}
/** An act that can be begun now. */
export interface WorkOfferView {
  readonly act: WorkActView;
  /** It, and what has to follow at once, fits into the time there is. */
  readonly fits: boolean;
  /** Minutes from here to the next place where one may stop. */
  readonly minutesToSafe: number;
  readonly safeAfter: boolean;
  /** "You may stop after it", or why not. */
  readonly pause: string;
  /** So many more of the same at other places, this one left out; absent where it is the only one. */
  readonly alike?: number;
}
export interface AidView {
  readonly aid: string;
  readonly count: number;
  readonly where: string;
}

/** The whole work: screen `work`. */
export interface WorkView {
  readonly title: string;
  readonly progress: Progress;
  /** Offers of the same operation and rule at many places are one group: its first act is begun, the rest are counted. */
  readonly now: readonly {
    readonly operation: string;
    readonly operationTitle: string;
    readonly offers: readonly WorkOfferView[];
    /** Kinds of acts beyond those shown: they are at `work/<operation>`. */
    readonly more?: number;
  }[];
  readonly looks: readonly WorkActView[];
  readonly aids: readonly AidView[];
  readonly away: { readonly shop: readonly WorkActView[]; readonly parts: readonly WorkActView[] };
  readonly reopened: readonly WorkActView[];
  readonly skips: readonly WorkActView[];
  readonly phases: readonly PhaseView[];
  readonly assumptions: readonly string[];
  /** What the log names and this plan has not: kept and shown. */
  readonly unknown: readonly string[];
  readonly left?: LeftView;
  readonly signedOff: boolean;
}
/** The card that the person wrote who stopped last. */
export interface LeftView extends Given {
  readonly lines: readonly { readonly about: string; readonly text: string }[];
}

/** Acts of one operation in the order of the plan, cut into chunks of five to nine: screen `work/<operation>`. */
export interface OperationActsView {
  readonly operation: OperationView;
  readonly chunks: readonly {
    readonly number: number;
    readonly title: string;
    readonly acts: readonly WorkActView[];
  }[];
}

export type Arrival = 'opened-again' | 'paused' | 'other-person';
/** "You were here" for the whole work. */
export interface WorkReturnView {
  readonly words: string;
  readonly left?: LeftView;
  /** Stopped where nobody should stop, and why. */
  readonly leftBadly?: string;
  /** Up to three acts to touch and compare, most recent last; never done again here. */
  readonly verify: readonly {
    readonly act: string;
    readonly title: string;
    readonly was: string;
    readonly words: string;
    /** False: it cannot be undone; where it is not as recorded, the plan says what is open again. */
    readonly mayRepeat: boolean;
  }[];
  /** Acts that cannot be undone and may have been begun without a record: looked at before they are offered. */
  readonly mayHaveBegun: readonly { readonly act: string; readonly title: string; readonly noReturn: string }[];
  /** After a month or more: what standing does to an open engine, to be looked at. */
  readonly stood: readonly string[];
}

/** One act, very large: screen `bench`. */
export interface WorkBenchView {
  readonly title: string;
  readonly operation?: OperationView;
  readonly current?: WorkOfferView;
  /** Greyed below: what comes next when this is done. */
  readonly next?: { readonly id: string; readonly does: string; readonly place: string };
  /** "7 of 10" within the chunk, and the chunk of its operation. */
  readonly progress: Progress;
  /** Said once, when the act done last ended its chunk: "Main bearings 1 to 5: shells in. Complete." */
  readonly complete?: string;
  readonly looksOwed: number;
  readonly cautions: readonly Caution[];
  readonly spoken: string;
  readonly resume?: WorkReturnView;
  /** Nothing can be begun: what it waits for, or that all is signed. */
  readonly nothing?: string;
}

/** What a finding opens again, before it is recorded: screen `work`, "Something changed". */
export interface ReopeningView {
  readonly rule: string;
  readonly title: string;
  readonly because: string;
  /** Places to choose from; empty where it is the engine as a whole. */
  readonly places: readonly { readonly id: string; readonly name: string }[];
}
export interface ReopenedPreview {
  readonly words: string;
  /** Acts that were finished and would be open again. */
  readonly acts: readonly { readonly id: string; readonly does: string; readonly place: string }[];
}

/** Tear-down registers: screen `registers`. */
export interface RegistersView {
  /** Position, end, face and state of every part that must return. */
  readonly parts: readonly {
    readonly part: string;
    readonly place: string;
    readonly position: string;
    readonly end: string;
    readonly face: string;
    readonly condition: string;
    /** `left-out`: it does not return. `not-told`: nobody told it apart, and the plan does without; `why` says the reason. */
    readonly state: 'open' | 'tagged' | 'back' | 'left-out' | 'not-told';
    readonly why?: string;
    readonly given?: Given;
    readonly act?: string;
  }[];
  /** Fastener by hole: what was in it, what is in it. */
  readonly fasteners: readonly {
    readonly joint: string;
    readonly jointName: string;
    readonly hole: string;
    readonly fastener: string;
    readonly length: string;
    readonly opensInto: string;
    readonly given?: Given;
  }[];
  /** Photos by what they are tied to. */
  readonly photos: readonly {
    readonly about: string;
    readonly aboutWords: string;
    readonly photo: string;
    readonly words: string;
    readonly given: Given;
  }[];
}

/** A wish of the person about the work; `proposeWork` makes entries of it or one clear line why not. */
export type WorkWish =
  | {
      readonly kind: 'done';
      readonly act: string;
      readonly answer:
        | { readonly kind: 'value'; readonly text: string; readonly result: 'good' | 'bad' }
        | { readonly kind: 'felt-or-seen' | 'list'; readonly words: string; readonly result: 'good' | 'bad' }
        | { readonly kind: 'photo'; readonly photo: string; readonly words?: string; readonly result: 'good' | 'bad' }
        | {
            readonly kind: 'register';
            readonly position: string;
            readonly end: string;
            readonly face: string;
            readonly condition: string;
            readonly result: 'good' | 'bad';
          };
      /** By feel, by which gauge: a second look alone must use another. */
      readonly method: string;
    }
  /** The book is begun in the middle: what comes before this operation is left out, because nobody recorded it. */
  | { readonly kind: 'begin-at'; readonly operation: string; readonly why: string }
  /** Several at once: a worksheet that nobody will fill is left out with one reason. */
  | { readonly kind: 'skip'; readonly acts: readonly string[]; readonly reason: string }
  | { readonly kind: 'reopen'; readonly rule: string; readonly place?: string; readonly why: string }
  /** The act itself once more, and all that is built on it. */
  | { readonly kind: 'again'; readonly act: string; readonly why: string }
  | {
      readonly kind: 'look';
      readonly act: string;
      readonly looker: string;
      readonly method: string;
      readonly result: 'good' | 'bad';
      readonly seen: string;
    }
  | { readonly kind: 'aid-out'; readonly aid: string; readonly count: number; readonly where: string }
  | { readonly kind: 'aid-back'; readonly aid: string; readonly count: number }
  | ({ readonly kind: 'add' } & Omit<WorkFactData['work-act-added'], 'id'>)
  /** The person holds it for critical: a second look is owed from now on. */
  | { readonly kind: 'make-critical'; readonly act: string; readonly why: string }
  /** The card for whoever comes back. */
  | ({ readonly kind: 'leave' } & WorkFactData['work-left'])
  /** Back at the work: all touched, nothing done again; acts that are not as recorded are named, with what was found. */
  | {
      readonly kind: 'resume';
      readonly arrival: Arrival;
      readonly verified: readonly string[];
      readonly notAsRecorded: readonly { readonly act: string; readonly found: string }[];
    }
  | { readonly kind: 'sign'; readonly words: string; readonly skips: readonly string[] };
