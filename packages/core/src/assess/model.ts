/**
 * What measuring is made of: features of an engine, the places where each is read, the readings, the sizes that follow and what is
 * found about them. Plain data in SI units. A reading that nobody took is absent: unknown is never zero and never good.
 */
import type { BankId, CylinderNumber, Engine, InspectionLimit, ValveId, Window } from '../engine/index.js';

export type Area =
  | 'block'
  | 'crankshaft'
  | 'rods'
  | 'pistons'
  | 'rings'
  | 'camshaft'
  | 'followers'
  | 'heads'
  | 'valves'
  | 'springs'
  | 'assembly';
/** SI units of what is read: m, m3, kg, N, rad, N·m. */
export type Measured = 'length' | 'volume' | 'mass' | 'force' | 'angle' | 'torque';
export type InstrumentKind =
  | 'outside-micrometer'
  | 'bore-gauge'
  | 'small-bore-gauge'
  | 'depth-micrometer'
  | 'dial-indicator'
  | 'height-gauge'
  | 'straightedge-and-feeler'
  | 'feeler-gauge'
  | 'caliper'
  | 'burette'
  | 'scale'
  | 'spring-tester'
  | 'gauging-strip'
  | 'protractor'
  | 'radius-gauge'
  | 'ultrasonic-gauge'
  | 'torque-wrench';

/** One thing to measure wherever the engine has it: the same words for every engine. */
export interface FeatureKind {
  /** e.g. `cylinder-bore`; first part of every slot. */
  readonly id: string;
  /** "Cylinder bores". */
  readonly title: string;
  /** "bore": for "bore of cylinder 3". */
  readonly one: string;
  readonly area: Area;
  readonly measured: Measured;
  readonly instrument: InstrumentKind;
  /** Usual resolution of that instrument, SI. */
  readonly resolution: number;
  /** What must hold while it is read: "caps on and tightened, shells out". */
  readonly condition: string;
  /** How it is read, in one or two sentences. */
  readonly how: string;
  /** Which drawing shows where; `drawing/measuring` has one for each. */
  readonly figure: FigureKind;
  /** Sizes formed from the readings of one place, main size first. */
  readonly sizes: readonly SizeRule[];
  /** Reading that the strip-down destroys: it is asked for first. */
  readonly vanishes?: boolean;
  /** A cross-check or a look: nothing that is decided waits for it. */
  readonly optional?: boolean;
  /** A hole wears larger, a shaft smaller; neither for a figure that has no such sense. */
  readonly sense: 'hole' | 'shaft' | 'neither';
  /** Of which part of the engine the material matters for temperature. */
  readonly material?: 'block' | 'liner' | 'head' | 'piston' | 'crankshaft' | 'rod';
}
export type FigureKind =
  | 'bore'
  | 'journal'
  | 'housing'
  | 'shell'
  | 'piston'
  | 'pin'
  | 'ring-gap'
  | 'ring-groove'
  | 'face'
  | 'deck-height'
  | 'protrusion'
  | 'chamber'
  | 'cam-lobe'
  | 'follower-bore'
  | 'valve-stem'
  | 'valve-guide'
  | 'valve-seat'
  | 'spring'
  | 'runout'
  | 'float'
  | 'backlash'
  | 'mass'
  | 'length';

/**
 * How a size follows from the readings of a place. `property` is its name in limits and findings (`cylinder-bore.taper`).
 * `mean`, `largest`, `smallest`, `spread` of all readings; `out-of-round` and `taper` of a grid of heights and directions by the
 * rule of the limit that applies (default `same-height` and `ends`); `single`: the one reading.
 */
export interface SizeRule {
  readonly property: string;
  readonly title: string;
  readonly form: 'mean' | 'largest' | 'smallest' | 'spread' | 'out-of-round' | 'taper' | 'single';
  /** Readings that form it, by station id; all when left out. */
  readonly stations?: readonly string[];
}

/** One place of a feature: cylinder 3, main 2, exhaust valve of cylinder 5, the left deck. */
export interface Place {
  /** Short and stable: `3`, `main-2`, `5-exhaust-1`, `left`. */
  readonly id: string;
  readonly name: string;
  readonly cylinder?: CylinderNumber;
  readonly bank?: BankId;
  readonly journal?: number;
  readonly valve?: ValveId;
  /** Which one of several at the place: a ring, an end. */
  readonly grade?: string;
  readonly stations: readonly Station[];
  /** What such a part can be, from the sheet; for the question "is that right?". */
  readonly expected?: Expected;
}
export interface Station {
  /** `top-thrust`, `front-a`. */
  readonly id: string;
  /** "top, thrust direction". */
  readonly name: string;
  /** Row and column in a grid of heights and directions, from 0. */
  readonly height?: number;
  readonly direction?: number;
}
/** Expected size with where it comes from. `usual` is what good and worn parts are, `possible` what the part can be at all. */
export interface Expected {
  readonly nominal: number;
  readonly usual: Window<number>;
  readonly possible: Window<number>;
  readonly why: string;
}
export interface Feature {
  readonly kind: FeatureKind;
  readonly places: readonly Place[];
}
/** Everything that this engine has to be measured, in the order in which a person walks round it. */
export interface InspectionPlan {
  readonly features: readonly Feature[];
  /** Features of the trade that this engine has but the sheet cannot place, each with what is missing. */
  readonly missing: readonly { readonly feature: string; readonly why: string }[];
  /** What was taken for granted where the sheet is silent, e.g. how many main journals there are. */
  readonly assumptions?: readonly { readonly feature: string; readonly words: string }[];
}
/** `cylinder-bore/3/top-thrust`. */
export type Slot = string;

export interface Instrument {
  readonly id: string;
  readonly name: string;
  readonly kind: InstrumentKind;
  readonly measured: Measured;
  /** The person's unit of this gauge, e.g. `in`. */
  readonly unit: string;
  readonly resolution: number;
  readonly range?: Window<number>;
  /** Expanded uncertainty (k = 2) of the maker or certificate, where known. */
  readonly expanded?: number;
  /** Torque wrench: from the middle of the grip to the middle of the square drive [m]. */
  readonly gripLength?: number;
  /** Day of the last certificate, year-month-day. */
  readonly certified?: string;
}
/** A standard (ring, block, setting rod) read with the instrument. */
export interface InstrumentCheck {
  readonly instrument: string;
  readonly moment: 'start' | 'between' | 'end';
  readonly standard: number;
  readonly read: number;
  readonly at: string;
  readonly entry: string;
}
/** One reading that stands: not struck out, of the newest occasion of its feature and place. */
export interface SlotReading {
  readonly slot: Slot;
  readonly entry: string;
  readonly text: string;
  readonly value: number;
  readonly instrument?: string;
  /** 1 as found; one more each time that the place was worked on. */
  readonly occasion: number;
  readonly at: string;
  readonly by: string;
  /** Kelvin; of the part, else of the room. */
  readonly temperature?: number;
  /** Kelvin; of the room and so of the gauge, where noted apart. Absent: part and gauge lay together. */
  readonly room?: number;
}
/** What the log holds about measuring, as `record/measuring` folds it. */
export interface Readings {
  /** All standing readings of a slot in order; a repeat is a second one. */
  readonly bySlot: ReadonlyMap<Slot, readonly SlotReading[]>;
  /** Readings of earlier occasions. */
  readonly before: ReadonlyMap<Slot, readonly SlotReading[]>;
  readonly instruments: ReadonlyMap<string, Instrument>;
  readonly checks: readonly InstrumentCheck[];
  readonly choices: readonly Choice[];
  /** `feature/place` -> number of the occasion that counts now. */
  readonly occasions: ReadonlyMap<string, number>;
  /** Where readings were added to others and nothing else: those others, and the slots that were read since. */
  readonly grewFrom?: { readonly bySlot: Readings['bySlot']; readonly slots: readonly Slot[] };
}
/** A decision taken, with the numbers that the person saw. */
export interface Choice {
  readonly decision: string;
  /** Which of the decision's scopes, e.g. `all` or `main`. */
  readonly scope: string;
  readonly alternative: string;
  readonly words: string;
  readonly figures: readonly ShownFigure[];
  readonly orders: readonly OrderLine[];
  readonly buys: readonly BuyLine[];
  readonly reason: string;
  readonly entry: string;
  readonly at: string;
  readonly by: string;
}
export interface ShownFigure {
  readonly name: string;
  readonly text: string;
}

/** A size with its standard uncertainty. `u` absent: not known, and no verdict rests on it. */
export interface Size {
  /** `cylinder-bore.diameter@3`. */
  readonly key: string;
  readonly property: string;
  readonly place: string;
  readonly title: string;
  readonly measured: Measured;
  readonly value: number;
  readonly u?: number;
  /** Reading or size that feeds it, with the change per unit of it and its own u: for "measure this again first". */
  readonly parts: readonly {
    readonly key: string;
    readonly name: string;
    readonly sensitivity: number;
    readonly u?: number;
  }[];
  /** Lines of the working, ready to read. */
  readonly working: readonly string[];
  /** Keys of the catalogue or bibliography behind it. */
  readonly sources: readonly string[];
  /** Something beside the number: drift of the gauge, no temperature noted. */
  readonly cautions: readonly string[];
}
export type VerdictWord = 'in' | 'near' | 'out' | 'no data' | 'check again';
/** A size held against one limit. */
export interface Held {
  readonly against: 'new' | 'wear';
  readonly verdict: VerdictWord;
  readonly limit: InspectionLimit;
  /** Window in SI as applied; a change from new is turned into a size here. */
  readonly window: Window<number>;
  readonly distance?: number;
  readonly nearEnd?: 'low' | 'high';
  /** Chance that the true size is inside, 0 to 1, where u is known. */
  readonly inside?: number;
}
export interface Finding {
  readonly key: string;
  readonly property: string;
  readonly place: string;
  readonly placeName: string;
  readonly title: string;
  readonly measured: Measured;
  /** Absent: readings are missing. */
  readonly size?: Size;
  /** Slots still to read before there is a size. */
  readonly missing: readonly Slot[];
  readonly held: readonly Held[];
  /** Without a size: what it will be held against, where that does not hang on its grade. */
  readonly ahead?: readonly Pick<Held, 'against' | 'limit' | 'window'>[];
  /** Whether it may be used: against the wear limit where one is printed, else against the new window. */
  readonly verdict: VerdictWord;
  /** "as new", "worn, usable", "past the wear limit", "no limit printed". */
  readonly words: string;
  /** For `near` and `check again`: the reading that decides, and the share of the doubt that is its. */
  readonly again?: { readonly key: string; readonly name: string; readonly share: number };
  /** What a general rule of wear says where no wear limit is printed: never the maker's limit. `source` is a bibliography key. */
  readonly advice?: { readonly words: string; readonly source: string };
}
/** Engine and readings seen together. */
export interface Assessment {
  readonly engine: Engine;
  readonly plan: InspectionPlan;
  readonly readings: Readings;
  readonly sizes: ReadonlyMap<string, Size>;
  readonly findings: readonly Finding[];
}

/** One line of the order to the machine shop. */
export interface OrderLine {
  /** `bore/all`, `main-journals/all`: stable, so that a changed choice replaces the line. */
  readonly id: string;
  readonly operation: string;
  readonly part: string;
  /** Property and places that are measured again when the work comes back. */
  readonly property?: string;
  readonly places: readonly string[];
  readonly target?: Window<number>;
  readonly measured?: Measured;
  /** Target for each place where they differ, e.g. a bore to its own piston. */
  readonly targets?: readonly { readonly place: string; readonly window: Window<number>; readonly fittedTo?: string }[];
  readonly finish?: string;
  /** The part it is fitted to. */
  readonly fittedTo?: string;
  /** Plate, caps, bolts: what must be on while it is done. */
  readonly with?: string;
  readonly notes: readonly string[];
}
export interface BuyLine {
  readonly part: string;
  readonly partNumber?: string;
  readonly size: string;
  readonly count: number;
  readonly for: string;
}
/** One way to decide, with what would follow. */
export interface Alternative {
  readonly id: string;
  readonly words: string;
  readonly figures: readonly ShownFigure[];
  readonly verdict: VerdictWord;
  /** Why it cannot be taken, or what speaks against it. */
  readonly against: readonly string[];
  readonly possible: boolean;
  readonly orders: readonly OrderLine[];
  readonly buys: readonly BuyLine[];
}
export interface Decision {
  /** `bore-oversize`. */
  readonly id: string;
  readonly scope: string;
  readonly title: string;
  readonly question: string;
  readonly area: Area;
  /** What must be measured or stated before it can be decided, in plain words; empty when it can. */
  readonly missing: readonly string[];
  /** Side by side; the recommended one first. */
  readonly alternatives: readonly Alternative[];
  readonly recommended?: string;
  /** Why it is best, or the bound that was reached. */
  readonly proof: string;
  readonly working: readonly string[];
  readonly sources: readonly string[];
  readonly cautions: readonly string[];
}
export type { InspectionLimit };
