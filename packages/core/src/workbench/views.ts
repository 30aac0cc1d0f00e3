/**
 * What each screen shows, as data. Every view is computed whole from engine + log; a screen adds layout and nothing else.
 * Texts here are plain words for the person at the bench; values carry their unit.
 */
import type { NumberGate } from '../assess/index.js';
import type { Figure } from '../drawing/index.js';
import type { CamEvents, Engine, ValveId } from '../engine/index.js';
import type { PartKind, Reading } from '../plan/index.js';
import type { Angle } from '../quantity/index.js';
import type { PhotoTaken } from '../record/index.js';

/** A reason why something cannot be done now, and what to do about it. */
export interface Hindrance {
  readonly code: string;
  readonly words: string;
}
/** Hazard text in three parts; `word` has the fixed meaning of ANSI Z535.4. */
export interface Caution {
  readonly word: 'WARNING' | 'CAUTION' | 'NOTICE';
  readonly can: string;
  readonly because: string;
  readonly act: string;
}
export interface Progress {
  readonly done: number;
  readonly of: number;
  readonly words: string;
}
/** An answer that a person can give; the screen makes one button and one key of it. */
export interface Answer {
  readonly id: string;
  readonly label: string;
  readonly key: string;
  /** True for answers that say something is wrong; kept apart from the usual one. */
  readonly unlike: boolean;
}
export interface Given {
  readonly by: string;
  readonly at: string;
  readonly entry: string;
}

export interface NextAction {
  readonly words: string;
  /** Place in the program, e.g. `tighten/head-left`. */
  readonly place: string;
  readonly finished: boolean;
}

export interface GasketItemView {
  readonly item: string;
  readonly part?: string;
  readonly title: string;
  readonly instruction: string;
  readonly state: 'open' | 'good' | 'bad';
  readonly answers: readonly Answer[];
  readonly given?: Given & { readonly seen: string };
}
export interface GasketView {
  readonly head: string;
  readonly title: string;
  readonly dressing: string;
  readonly origin: string;
  readonly items: readonly GasketItemView[];
  readonly current?: string;
  readonly progress: Progress;
  readonly finished: boolean;
  readonly cautions: readonly Caution[];
  readonly figure: Figure;
}

export interface LayOut {
  readonly fastener: string;
  readonly name: string;
  readonly thread: string;
  readonly length: string;
  readonly use: string;
  readonly count: number;
}
export interface HoleView {
  readonly hole: string;
  readonly expected: string;
  readonly fastener: string;
  readonly length: string;
  readonly opensInto: string;
  readonly onThread: string;
  readonly underHead: string;
  readonly mustBeNew: boolean;
  readonly state: 'empty' | 'right' | 'wrong';
  readonly reason?: string;
  readonly instance: number;
  readonly given?: Given;
}
export interface FastenersView {
  readonly joint: string;
  readonly title: string;
  readonly layOut: readonly LayOut[];
  readonly holes: readonly HoleView[];
  readonly current?: string;
  readonly progress: Progress;
  readonly finished: boolean;
  readonly hindrances: readonly Hindrance[];
  readonly cautions: readonly Caution[];
  /** Absent for a joint that holds no head. */
  readonly figure?: Figure;
}

export interface ActView {
  readonly key: string;
  readonly stage: number;
  readonly stageName: string;
  readonly kind: string;
  readonly hole: string;
  readonly instance: number;
  readonly round: number;
  /** "Tighten hole 7 to" */
  readonly lead: string;
  /** "95" or "37 to 43" or "+90": the very large number. Empty when the act has none. */
  readonly number: string;
  readonly unit: string;
  /** As printed in the sheet. */
  readonly printed: string;
  readonly spoken: string;
  readonly dressing: string;
  readonly note?: string;
  readonly origin: string;
  readonly answers: readonly Answer[];
  /** Set when the person reads a figure off a gauge (stretch): what the figure is. */
  readonly reading?: { readonly name: string; readonly unit: string };
}
export interface ResumeView {
  readonly words: string;
  /** Acts to touch again, most recent last. */
  readonly verify: readonly { readonly key: string; readonly hole: string; readonly words: string }[];
  readonly roundAgain: boolean;
  /** Set when the next fastener's stage is by angle or stretch: has it been turned already? */
  readonly ask?: { readonly hole: string; readonly words: string; readonly answers: readonly Answer[] };
}
/** A computed figure shown beside the sheet's; never an instruction. */
export interface Advisory {
  readonly words: string;
  readonly working: readonly string[];
  readonly sources: readonly string[];
}
/** What the person says of the wrench in the hand, and of an adapter on it, as typed. */
export interface WrenchInHand {
  /** Day on which the screen is looked at, year-month-day: how old a check is depends on it. */
  readonly today: string;
  readonly wrench?: string;
  /** From the square drive to the fastener, and the angle from straight ahead; with their units. */
  readonly adapter?: { readonly reach: string; readonly angle: string };
}
export interface WrenchLine {
  readonly id: string;
  readonly name: string;
  readonly chosen: boolean;
  /** Undefined where it is not known. */
  readonly fits?: boolean;
  /** "20 N·m lies below its range, 40..200 N·m" */
  readonly words: string;
}
export interface WrenchView {
  readonly state: 'none-kept' | 'not-chosen' | 'fits' | 'does-not-fit' | 'unknown';
  readonly words: string;
  /** What to set on the wrench in the hand, in the unit that it reads in. The sheet's figure stays the target. */
  readonly set?: {
    readonly number: string;
    readonly unit: string;
    readonly working: string;
    /** Absent where it is the sheet's own figure, which is said already. */
    readonly spoken?: string;
  };
  /** Said aloud of the wrench in the hand: what a check found, what is not known. */
  readonly warnings: readonly string[];
  readonly notes: readonly string[];
  readonly kept: readonly WrenchLine[];
}
export interface TightenView {
  readonly joint: string;
  readonly title: string;
  readonly order: string;
  readonly orderOrigin: 'sheet' | 'computed' | 'as-listed';
  readonly hindrances: readonly Hindrance[];
  readonly resume?: ResumeView;
  /** The record of the current act was struck out: look for its paint mark before anything is turned. */
  readonly look?: NonNullable<ResumeView['ask']>;
  /** A hole that waits for its fastener comes before any act. */
  readonly place?: { readonly hole: string; readonly words: string };
  readonly current?: ActView;
  readonly next?: ActView;
  readonly progress: Progress;
  readonly finished: boolean;
  /** Acts left out with a reason: finished is then not complete. */
  readonly skipped: readonly string[];
  readonly cautions: readonly Caution[];
  /** Notes of the sheet itself. */
  readonly notes: readonly string[];
  readonly advisory?: Advisory;
  /** For an act by torque value: the person's wrenches against its target. */
  readonly wrench?: WrenchView;
  /** Absent for a joint that holds no head. */
  readonly figure?: Figure;
  readonly done: readonly { readonly key: string; readonly words: string; readonly given: Given }[];
}

export interface PartPlaceView {
  readonly part: PartKind;
  readonly valve: ValveId;
  readonly place: string;
  /** Cylinder and letter as the tray has them, "4 E": to be read from the far side of the block. */
  readonly short: string;
  readonly tag?: string;
  /** As tagged when it came out: which end is up, which face looks to the front. */
  readonly end?: string;
  readonly face?: string;
  readonly condition?: string;
  /** False where it was tagged as not to be used again. */
  readonly mayReturn: boolean;
  readonly rule: string;
  readonly state: 'open' | 'fitted' | 'hindered';
  readonly fitted?: Given & { readonly words: string };
}
export interface PartsView {
  readonly parts: readonly PartKind[];
  readonly places: readonly PartPlaceView[];
  readonly notes: readonly string[];
  readonly progress: Progress;
  readonly finished: boolean;
  readonly cautions: readonly Caution[];
  /** Trays with what is fitted. */
  readonly figures: Readonly<Partial<Record<PartKind, Figure>>>;
  /** Trays with what is tagged as found. */
  readonly tagFigures: Readonly<Partial<Record<PartKind, Figure>>>;
}

export interface ValveSettingView {
  readonly valve: ValveId;
  /** As `valveKey` writes it: key of marks and touches in drawings. */
  readonly key: string;
  readonly place: string;
  readonly marginDegrees: number;
  readonly state: 'open' | 'set' | 'checked' | 'bad';
  readonly given?: Given & { readonly words: string };
}
export interface CrankStopView {
  /** From the firing dead centre of the first cylinder of the firing order. */
  readonly crankDegrees: number;
  /** The same place as drawings count it, from firing dead centre of cylinder 1. */
  readonly crankAngle: Angle;
  readonly turnDegrees: number;
  readonly turn: string;
  readonly sight: readonly string[];
  readonly valves: readonly ValveSettingView[];
  readonly finished: boolean;
  /** Damper and pointer. */
  readonly figure: Figure;
  /** All valves from above; those to set here are lit. */
  readonly map: Figure;
}
export interface ShimsView {
  /** Loose shims on hand; `entry` is what to strike out when one is gone. */
  readonly spares: readonly { readonly entry: string; readonly text: string }[];
  readonly measured: readonly {
    readonly valve: ValveId;
    readonly key: string;
    readonly place: string;
    readonly gap?: string;
    readonly shim?: string;
  }[];
  readonly progress: Progress;
  readonly hindrances: readonly string[];
  readonly choices: readonly {
    readonly key: string;
    readonly place: string;
    readonly shim: string;
    readonly gap: string;
    readonly from: string;
  }[];
  readonly buy: readonly string[];
  readonly unserved: readonly string[];
  readonly proof: string;
}
export interface SettingRule {
  readonly adjustment: 'preload' | 'lash' | 'shim' | 'fixed';
  readonly words: string;
  /** Working lines of the computed travel or lash per turn. */
  readonly working: readonly string[];
  readonly origin: string;
  readonly intake: string;
  readonly exhaust: string;
}
export interface ValvesView {
  readonly rule: SettingRule;
  /** Why there is no plan of stops; empty when there is one. */
  readonly hindrances: readonly string[];
  readonly assumed: readonly string[];
  readonly marginDegrees?: number;
  /** Seat events that the plan uses, for the drawings. */
  readonly events?: CamEvents;
  readonly stops: readonly CrankStopView[];
  readonly refused: readonly { readonly valve: string; readonly reason: string }[];
  readonly neighbour: readonly {
    readonly valve: ValveId;
    readonly key: string;
    readonly place: string;
    readonly words: string;
    readonly permitted: boolean;
    /** Absent where nothing could be computed: the eye alone decides then. */
    readonly marginDegrees?: number;
    /** The valve to watch, and a crank angle as drawings count it at which it is just moving; absent with the margin. */
    readonly watch?: ValveId;
    readonly crankAngle?: Angle;
  }[];
  /** Every valve of the engine with what is recorded. */
  readonly valves: readonly ValveSettingView[];
  readonly shims?: ShimsView;
  readonly progress: Progress;
  readonly recheck: { readonly due: boolean; readonly words: string; readonly progress: Progress };
  readonly finished: boolean;
  readonly cautions: readonly Caution[];
}
/** What one valve asks for, to be read from the far side of the block. */
export interface ValveAsk {
  readonly adjustment: SettingRule['adjustment'];
  readonly lead: string;
  /** The very large figure; empty where the sheet gives none. */
  readonly number: string;
  readonly unit: string;
  readonly note: string;
  readonly origin: string;
  readonly spoken: string;
  /** Preload: turns past zero lash, as a number to begin from. */
  readonly turns?: number;
}
/** A measured gap against its printed window. */
export interface GapVerdict {
  readonly state: 'in' | 'near' | 'out' | 'no-data';
  readonly value: string;
  readonly limit: string;
  readonly distance?: string;
  readonly nearEnd?: 'low' | 'high';
}
export interface PreloadTravel {
  readonly words: string;
  /** Absent where pitch, ratio or screw place are unknown. */
  readonly reading?: Reading;
}
export interface ValveTask {
  readonly phase: 'measure' | 'set' | 'look-again' | 'finished';
  readonly stops: readonly {
    readonly stop: CrankStopView;
    /** Number of the stop in the plan, from 0. */
    readonly place: number;
    readonly left: readonly ValveSettingView[];
  }[];
}
export interface CrankApproach {
  readonly words: string;
  /** The very large figure, e.g. "360°", and what stands small beside it. */
  readonly number: string;
  readonly beside: string;
  readonly turnDegrees: number;
  /** Angles as drawings count them; `from` is `to` less the turn. */
  readonly from: Angle;
  readonly to: Angle;
  readonly figure: Figure;
}
export interface PartChoices {
  readonly conditions: readonly string[];
  readonly ends: readonly string[];
  readonly faces: readonly string[];
}
export interface HereView {
  readonly crankDegrees: number;
  readonly crankAngle: Angle;
  readonly may: readonly ValveSettingView[];
  readonly mayNot: readonly { readonly valve: ValveId; readonly place: string; readonly reason: string }[];
  readonly sight: readonly string[];
  readonly figure: Figure;
  readonly map: Figure;
}

export interface RecordRow {
  readonly what: string;
  readonly value: string;
  readonly limit: string;
  readonly origin: string;
  readonly by: string;
  readonly at: string;
  readonly entry: string;
  readonly struck?: string;
  /** The picture that the row shows, kept by its hash beside the log. */
  readonly photo?: PhotoTaken;
}
export interface RecordView {
  readonly title: string;
  readonly invented: boolean;
  readonly headCode: string;
  readonly chain: string;
  readonly entries: number;
  readonly sections: readonly {
    readonly key: string;
    readonly title: string;
    readonly rows: readonly RecordRow[];
    readonly open: readonly string[];
  }[];
  readonly notUnderstood: readonly string[];
  readonly cautions: readonly string[];
}
export type { Engine, NumberGate };
