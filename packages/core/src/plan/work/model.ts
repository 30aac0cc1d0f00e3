/**
 * The work plan as data. An *operation* is a piece of the job that a person would name; its *acts* are what a hand does and a
 * person then records. Acts are written once as rules and expanded to the places of an engine: each main, rod, valve, head.
 */
import type { CylinderNumber, ValveId } from '../../engine/model.js';

export type Phase =
  | 'as-found'
  | 'tear-down'
  | 'inspection'
  | 'trial-assembly'
  | 'permanent-parts'
  | 'top-end'
  | 'start-and-run-in';

/** How an act is answered: never by a tick. `felt-or-seen` is words with good or bad; `sign-off` closes the whole work. */
export type AnswerKind =
  | 'value'
  | 'felt-or-seen'
  | 'photo'
  | 'worksheet'
  | 'joint-walk'
  | 'register'
  | 'list'
  | 'sign-off';
/** What a `value` is a value of. */
export type Asked =
  | 'length'
  | 'angle'
  | 'torque'
  | 'pressure'
  | 'mass'
  | 'force'
  | 'volume'
  | 'ratio'
  | 'time'
  | 'speed'
  | 'temperature'
  | 'count';

/** The four words of the workbench's cautions; told before the step that needs it. */
export interface WorkCaution {
  readonly word: 'WARNING' | 'CAUTION' | 'NOTICE';
  readonly can: string;
  readonly because: string;
  readonly act: string;
}
/** What goes on which surface: general types; the sheet that comes with the part wins. */
export interface Consumable {
  readonly surface: string;
  readonly use: string;
  readonly mistake: string;
}
/** A mistake that the trade knows, and what it costs. */
export interface Mistake {
  readonly wrong: string;
  readonly cost: string;
}

/** What an engine has or has not, as far as the sheet says. */
export type Trait =
  | 'pushrod'
  | 'overhead-cam'
  | 'rockers'
  | 'flat-followers'
  | 'roller-followers'
  | 'hydraulic'
  | 'mechanical'
  | 'shims'
  | 'wet-liners'
  | 'petrol'
  | 'diesel'
  | 'several-banks';
export type Known = 'yes' | 'no' | 'unknown';

export type PlaceKind =
  | 'engine'
  | 'head'
  | 'main'
  | 'cylinder'
  | 'valve'
  | 'camshaft'
  | 'joint'
  | 'worksheet'
  | 'run-in';
/** Where an act is done. `cylinders` says what it touches; absent: the engine as a whole, or a part that serves all cylinders. */
export interface WorkPlace {
  readonly kind: PlaceKind;
  readonly id: string;
  readonly name: string;
  readonly cylinders?: readonly CylinderNumber[];
  /** Key of the valve, number of the main journal, where the place is at one. */
  readonly valve?: string;
  readonly main?: number;
}

/** Fastened joints of the sheet are sorted to the act that tightens them. */
export type JointRole =
  | 'head'
  | 'mains'
  | 'rods'
  | 'cam-gear'
  | 'cam-caps'
  | 'pump'
  | 'pan'
  | 'timing-cover'
  | 'damper'
  | 'flywheel'
  | 'rockers'
  | 'valve-covers'
  | 'intake'
  | 'other';
/** The moment at which a thing is measured. */
export type MeasuringMoment =
  | 'as-found'
  | 'parts-apart'
  | 'new-parts'
  | 'main-bearings'
  | 'rod-bearings'
  | 'combination'
  | 'rings'
  | 'heads';

/** One act of an operation, before it is expanded to the engine's places. */
export interface ActRule {
  readonly id: string;
  /** Every main, valve and so on gets its own act; `engine` when left out. */
  readonly per?: Exclude<PlaceKind, 'joint' | 'worksheet'>;
  /** What the hand does. */
  readonly does: string;
  /** What is recorded: the value or state itself, not "checked". */
  readonly ask: string;
  readonly answer: AnswerKind;
  readonly asked?: Asked;
  /** Usual length for one place, in minutes: common practice, no source. */
  readonly minutes: number;
  /** Traits that must all hold; where the sheet does not say, the act stays in and says so. */
  readonly when?: readonly Trait[];
  /** In a free operation: before, or after, all its other acts. */
  readonly position?: 'first' | 'join';
  /** The step from the act before it is an order only, though the operation builds each act on the last. */
  readonly chain?: 'order';
  /** The joints of that role are tightened here; where the sheet has none, the act asks for the value used and whence. */
  readonly joint?: JointRole;
  /** The worksheets of that moment are filled in here. */
  readonly worksheets?: MeasuringMoment;
  /** This act sets a valve. */
  readonly setsValve?: boolean;
  /** Undoing it costs parts, a machine visit or a strip-down, and why: on return it is looked at, never done again. */
  readonly noReturn?: string;
  /** Losing it loses the engine or starts a fire: a second look is owed. */
  readonly critical?: boolean;
  /** Covers what lies behind: tools counted, aids returned and second looks given first. */
  readonly closes?: boolean;
  /** Better, or necessarily, two people. */
  readonly two?: string;
  readonly awaits?: 'shop' | 'parts';
  /** Why nobody should stop after this act. */
  readonly badPause?: string;
  /** Why it cannot be skipped. */
  readonly mustDo?: string;
}

export interface Operation {
  readonly id: string;
  /** Number in the trade map, O01 to O38. */
  readonly key: string;
  readonly title: string;
  readonly phase: Phase;
  /**
   * `built-on`: each act rests on the one before; `in-turn`: one after the other, but redoing one leaves the next as it is;
   * `free`: in any order between those marked first and join.
   */
  readonly chain: 'built-on' | 'in-turn' | 'free';
  /** Operations that come before as a whole. */
  readonly needs: readonly string[];
  readonly consumables: readonly Consumable[];
  readonly tools: readonly string[];
  readonly cautions: readonly WorkCaution[];
  readonly mistakes: readonly Mistake[];
  readonly acts: readonly ActRule[];
}

/** What another part of the record answers for an act: its screen is opened from there. */
export type Subject =
  | { readonly kind: 'joint'; readonly joint: string }
  | { readonly kind: 'worksheet'; readonly feature: string; readonly place: string }
  | { readonly kind: 'valve'; readonly valve: ValveId };

/** One act at one place. */
export interface WorkAct extends Omit<ActRule, 'per' | 'when' | 'position' | 'chain' | 'joint' | 'worksheets'> {
  /** `caps-on@main-3`, unique in the plan. */
  readonly id: string;
  readonly rule: string;
  readonly operation: string;
  readonly place: WorkPlace;
  readonly subject?: Subject;
  /** What the sheet leaves open about whether this engine has it. */
  readonly unsure?: string;
  /** The person put it into the plan: why. */
  readonly own?: string;
  /** Counts the chunks of an operation, from 1. */
  readonly chunk: number;
}
/** `order`: comes first; `built-on`: comes first, and redoing it makes the later one open again. */
export type EdgeKind = 'order' | 'built-on';
export interface Edge {
  readonly from: string;
  readonly to: string;
  readonly kind: EdgeKind;
  readonly why: string;
}
export interface WorkPlan {
  /** In an order that breaks no precedence. */
  readonly acts: readonly WorkAct[];
  readonly operations: readonly Operation[];
  readonly byId: ReadonlyMap<string, WorkAct>;
  readonly before: ReadonlyMap<string, readonly Edge[]>;
  readonly after: ReadonlyMap<string, readonly Edge[]>;
  /** What was taken for granted where the sheet is silent. */
  readonly assumptions: readonly string[];
}

/** What the inspection plan has to measure, as the work plan needs to know it. */
export interface WorksheetToFill {
  readonly feature: string;
  readonly title: string;
  /** The strip-down destroys it. */
  readonly vanishes: boolean;
  readonly places: readonly {
    readonly id: string;
    readonly name: string;
    readonly cylinder?: CylinderNumber;
    readonly bank?: string;
    readonly journal?: number;
    readonly valve?: ValveId;
  }[];
}
