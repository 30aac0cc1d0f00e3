/**
 * What the screens under Combination show. A what-if is a set of changed figures (`Scratch`) that lives on the device until the person
 * decides; every view is computed from engine + log + scratch.
 */
import type { VerdictWord } from '../assess/index.js';
import type { Plot } from '../drawing/plots/index.js';
import type { Caution, Given } from './views.js';

/** Figure key (`chamber-volume@3`, `stroke`) to SI value. */
export type Scratch = ReadonlyMap<string, number>;

export type SubjectId =
  | 'compression'
  | 'degreeing'
  | 'valve-room'
  | 'motion'
  | 'springs'
  | 'rockers'
  | 'timing'
  | 'balance'
  | 'find';

export interface CombinationView {
  readonly title: string;
  readonly subjects: readonly {
    readonly id: SubjectId;
    readonly title: string;
    readonly question: string;
    /** Absent for a subject that judges nothing by itself. */
    readonly verdict?: VerdictWord;
    /** "9.1:1, 8.8 to 9.4 wanted" or "3 figures missing". */
    readonly words: string;
  }[];
  readonly scratch: readonly {
    readonly key: string;
    readonly title: string;
    readonly now: string;
    readonly was: string;
  }[];
  readonly decided?: NonNullable<SubjectView['decided']>;
  readonly cautions: readonly Caution[];
}

/** A figure that goes in, with where it comes from; those with `slider` can be changed on the scratch copy by a slider. */
export interface InputView {
  readonly key: string;
  readonly title: string;
  readonly meaning: string;
  /** Empty where it is missing. */
  readonly value: string;
  readonly unit: string;
  /** "scratch", "stated", "measured", "sheet", "assumed", "missing". */
  readonly origin: string;
  readonly from: string;
  /** Where it is one of several words and no number; `value` is one of them. */
  readonly choices?: readonly string[];
  /** In `unit`. */
  readonly slider?: { readonly now: number; readonly from: number; readonly to: number; readonly step: number };
}
export interface AnswerRow {
  readonly key: string;
  readonly name: string;
  readonly value: string;
  readonly doubt: string;
  readonly verdict?: VerdictWord;
  readonly limit: string;
  readonly origin: string;
  readonly distance?: string;
  readonly nearEnd?: 'low' | 'high';
  /** Chance that the limit holds, where the doubt is known: "97 %". */
  readonly chance?: string;
}
/** One of several alike places with its own number: a cylinder, a crankpin, a valve. */
export interface PlaceView {
  readonly id: string;
  readonly name: string;
  /** Empty where it cannot be computed. */
  readonly value: string;
  readonly verdict?: VerdictWord;
}
export interface SubjectView {
  readonly id: SubjectId;
  readonly title: string;
  readonly question: string;
  readonly inputs: readonly InputView[];
  readonly answers: readonly AnswerRow[];
  readonly plots: readonly Plot[];
  readonly missing: readonly { readonly key: string; readonly title: string; readonly for: string }[];
  readonly working: readonly string[];
  readonly sources: readonly string[];
  readonly assumed: readonly string[];
  readonly cautions: readonly string[];
  /** The decision about this subject that stands. */
  readonly decided?: Given & { readonly words: string; readonly reason: string; readonly differs: readonly string[] };
}
