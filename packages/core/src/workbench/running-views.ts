/**
 * What the screens of filling and priming, first start, run-in, compression and leakage tests, ignition and service show, as data. Views that
 * depend on the clock get `now` (RFC 3339 with offset) from the edge. The entries are written by `propose` with the kinds of
 * `record/running-data.ts`; what a person keys as text goes through the `propose…` functions of `workbench/running`.
 */
import type { VerdictWord } from '../assess/index.js';
import type { Figure } from '../drawing/figure.js';
import type { HeardPlace, RunningWhat } from '../plan/index.js';
import type { Caution, Given, Progress } from './views.js';

/** A rule or figure with where it comes from. `origin` is "common practice, no source" where no maker says it. */
export interface CitedWords {
  readonly words: string;
  readonly origin: string;
}

/** `start`: all that has to be so before the key is turned, oil seen at the valves, and what stops the engine at once. */
export interface StartView {
  readonly title: string;
  readonly ready: {
    readonly items: readonly ReadyItemView[];
    readonly progress: Progress;
    /** True once every item is ready. */
    readonly all: boolean;
  };
  /** Oil seen at each rocker or lobe while priming: entry `oil-seen` of the valve. */
  readonly oil: { readonly places: readonly OilPlaceView[]; readonly progress: Progress };
  readonly stop: {
    /** Seconds after which an engine without oil pressure is stopped: what the screen counts down. */
    readonly seconds: number;
    readonly origin: string;
    readonly rules: readonly CitedWords[];
    /** Longest go at the starter: what the screen counts while it only cranks. */
    readonly cranking?: { readonly seconds: number; readonly origin: string };
  };
  /** Newest first. */
  readonly tries: readonly StartTryView[];
  readonly cautions: readonly Caution[];
}
export interface ReadyItemView {
  readonly id: string;
  readonly title: string;
  /** What goes wrong without it. */
  readonly why: string;
  readonly state: 'ready' | 'open' | 'not-ready';
  /** What the record says of it, else what is still missing. */
  readonly words: string;
  readonly given?: Given;
  /** Act of the work plan that answers it, as `extinguisher-held`; absent for what is computed. */
  readonly act?: string;
}
export interface OilPlaceView {
  /** Key of the valve, as in `valveKey`. */
  readonly key: string;
  readonly name: string;
  readonly seen?: Given;
}
export interface StartTryView {
  readonly given: Given;
  /** "8 s on the starter, pressure after 3 s: 3.1 bar" */
  readonly words: string;
  readonly verdict: VerdictWord;
  /** What it means and what to do. */
  readonly says: string;
}

/** `run-in`: the schedule, its clock, the gauges. */
export interface RunInView {
  readonly title: string;
  readonly schedule: {
    readonly origin: string;
    /** False where the sheet prints none and common practice stands in. */
    readonly fromSheet: boolean;
    readonly steps: readonly RunInStepView[];
  };
  readonly clock: {
    readonly state: 'not-begun' | 'running' | 'stopped' | 'finished';
    /** Step that runs, or the one to begin with next (1 = first); absent once finished. */
    readonly step?: number;
    /** At `now`. Of the step: seconds run and left (negative: beyond its time). */
    readonly stepSeconds: number;
    readonly leftSeconds?: number;
    /** Of all timed steps together. */
    readonly totalSeconds: number;
    readonly ofSeconds: number;
    /** "Step 2 of 3: 4 of 20 min run, 16 min left" */
    readonly words: string;
    /** Said when it changes; the screen speaks it: "Go on with step 3: half load". */
    readonly call?: string;
    /** Seconds until the gauges are due again, 0 or less: now. Only while it runs. */
    readonly nextReadingSeconds?: number;
  };
  /** Not empty: the engine is to be stopped at once. */
  readonly stopNow: readonly string[];
  /** Each time that it was stopped, newest first, and what that means. */
  readonly stops: readonly { readonly given: Given; readonly words: string; readonly meaning: string }[];
  readonly gauges: readonly GaugeView[];
  /** Every reading that stands, newest first. */
  readonly readings: readonly {
    readonly given: Given;
    readonly what: RunningWhat;
    readonly title: string;
    readonly text: string;
    readonly verdict?: VerdictWord;
    readonly says: string;
    /** Minute of the run-in, counted over the time run. */
    readonly minute?: number;
  }[];
  /** What is to be done once it has run: oil and filter, head, valves, cold and hot. */
  readonly afterwards: readonly (CitedWords & { readonly id: string; readonly do: 'do' | 'never' | 'look-up' })[];
  /** Reasons with which it can be stopped: `id` goes into the entry as `why` with its words. */
  readonly stopReasons: readonly { readonly id: string; readonly words: string }[];
  readonly cautions: readonly Caution[];
}
export interface RunInStepView {
  /** 1 for the first. */
  readonly number: number;
  readonly words: string;
  /** As printed; empty where nothing is said. */
  readonly time: string;
  readonly speed: string;
  readonly load: string;
  readonly state: 'done' | 'now' | 'later';
  readonly ranSeconds: number;
  readonly ofSeconds?: number;
  readonly origin: string;
}
export interface GaugeView {
  readonly what: RunningWhat;
  readonly title: string;
  /** Units that a figure may carry; the usual one first. Empty for words. */
  readonly units: readonly string[];
  /** Empty where nothing limits it. */
  readonly limit: string;
  readonly origin: string;
  readonly newest?: Given & { readonly text: string };
  readonly verdict: VerdictWord;
  /** "0.4 bar above the low end"; why there is no verdict. */
  readonly says: string;
}

/** `cylinder-tests`: compression and leakage of every cylinder, read against the rule that holds. */
export interface CylinderTestsView {
  readonly title: string;
  readonly compression: {
    readonly rule: CitedWords;
    /** Least share of the highest that the sheet's rule allows, 0 to 1: where the line across the bars stands. */
    readonly share?: number;
    readonly verdict: VerdictWord;
    /** "lowest of highest 0.717: out by 75 %" */
    readonly words: string;
    readonly rows: readonly CompressionRowView[];
    /** What the picture of all cylinders points to. */
    readonly findings: readonly {
      readonly cylinders: readonly number[];
      readonly words: string;
      readonly cause: string;
    }[];
    /** What to do next: "Cylinder 4 wet: about 15 mL of oil, then read again." Empty: nothing. */
    readonly next: string;
    /** Cylinder for which the next reading is wanted, and whether wet. */
    readonly ask?: { readonly cylinder: number; readonly wet: boolean };
    readonly units: readonly string[];
  };
  readonly leakage: {
    readonly rule: CitedWords;
    readonly verdict: VerdictWord;
    readonly words: string;
    readonly rows: readonly LeakageRowView[];
    readonly units: readonly string[];
    readonly heard: readonly { readonly id: HeardPlace; readonly words: string; readonly means: string }[];
  };
  /** Readings that may not be held against each other, and why. */
  readonly doubts: readonly string[];
  readonly cautions: readonly Caution[];
}
export interface CompressionRowView {
  readonly cylinder: number;
  readonly bank: string;
  readonly dry?: Given & { readonly text: string };
  readonly wet?: Given & { readonly text: string };
  /** Of the highest: "72 %"; empty while unknown. */
  readonly share: string;
  /** Length of a bar, 0 to 1 of the highest; absent while unknown. */
  readonly bar?: number;
  readonly verdict: VerdictWord;
  readonly says: string;
}
export interface LeakageRowView {
  readonly cylinder: number;
  readonly bank: string;
  readonly read?: Given & { readonly text: string };
  /** "25 %"; empty while unknown. */
  readonly leak: string;
  readonly verdict: VerdictWord;
  /** Where it was heard and what that means. */
  readonly says: string;
}

/** `ignition`: where cap, rotor and body stand with cylinder one at firing dead centre. */
export interface IgnitionView {
  readonly title: string;
  /** False for an engine without a distributor, or whose sheet says nothing of one: `why` says which. */
  readonly known: boolean;
  readonly why: string;
  /** In the order in which the rotor passes them. `degrees` of the distributor from the post of cylinder one. */
  readonly posts: readonly { readonly cylinder: number; readonly degrees: number; readonly words: string }[];
  readonly rotor: string;
  readonly advance: readonly CitedWords[];
  /** Answers to what was asked: how far to turn the body, how far the mark lies on the rim. */
  readonly answers: readonly { readonly name: string; readonly value: string; readonly working: string }[];
  readonly warnings: readonly string[];
  readonly figure?: Figure;
  readonly cautions: readonly Caution[];
}
/** What a person may ask of `ignitionView`. Texts as typed, with unit. */
export interface IgnitionAsked {
  /** Diameter of the damper's rim on which the mark stands: "165 mm". */
  readonly damperDiameter?: string;
  /** Timing as read with the lamp at idle: "4 deg" before dead centre; after it with a minus. */
  readonly read?: string;
}

/** `service`: what is due by hours or date. */
export interface RemindersView {
  readonly title: string;
  /** Newest hours noted. */
  readonly hours?: Given & { readonly text: string };
  /** "2 overdue, 1 due within 10 h" */
  readonly words: string;
  readonly items: readonly ReminderView[];
  readonly cautions: readonly Caution[];
}
export interface ReminderView {
  /** What the entry `service-done` names. */
  readonly what: string;
  readonly state: 'overdue' | 'due' | 'coming' | 'done' | 'no data';
  /** "at 50 h: 4 h left", "by 2027-03-01" */
  readonly words: string;
  readonly origin: string;
  /** The person planned it; else the sheet asks for it. */
  readonly planned: boolean;
  readonly done?: Given;
}
