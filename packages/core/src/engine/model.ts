/**
 * The engine as the rest of the core reads it: plain JSON-able data in SI units, made from a sheet by `engine/load`.
 * Every figure keeps the text that was printed and where it came from. A figure that the sheet does not give is
 * absent: unknown is never zero.
 */
import type {
  Angle,
  AngularSpeed,
  Length,
  Mass,
  Pressure,
  Quantity,
  Ratio,
  Temperature,
  Time,
  Torque,
  Volume,
} from '../quantity/quantity.js';

/** Where a figure comes from. `standing` says how far to trust it; the engine maker's manual outranks the rest. */
export type Standing = 'manual' | 'part-maker' | 'measured' | 'rule-of-thumb' | 'memory' | 'invented' | 'unstated';
export interface From {
  readonly standing: Standing;
  /** As written in the sheet, e.g. "manual p. 4-38". */
  readonly text: string;
  /** Key into `Engine.sources` when the sheet names one. */
  readonly source?: string;
}

/** A printed figure: the text as typed, its value in SI, and its origin. */
export interface Stated<Q> {
  readonly text: string;
  readonly value: Q;
  /** Where the sheet prints a window for a single size: `value` is then its middle. */
  readonly window?: Window<Q>;
  readonly from: From;
  readonly note?: string;
}
/** A printed window; either end may be open. `low` and `high` are inclusive. */
export interface Window<Q> {
  readonly low?: Q;
  readonly high?: Q;
}

export type BankId = string;
export type CylinderNumber = number;
export type ValveKind = 'intake' | 'exhaust';
/** One valve: `index` counts from the front of the engine among valves of its kind in that cylinder, from 1. */
export interface ValveId {
  readonly cylinder: CylinderNumber;
  readonly kind: ValveKind;
  readonly index: number;
}

export interface Bank {
  readonly id: BankId;
  /** From straight up, positive clockwise seen from the front of the engine. */
  readonly angle: Angle;
}
export interface Cylinder {
  readonly number: CylinderNumber;
  readonly bank: BankId;
  /** Place along the crank from the front, from 1; two cylinders on one crankpin share nothing but the throw. */
  readonly place: number;
  /** Crankpin counted from the front, from 1, where the sheet says which cylinders share one. */
  readonly crankpin?: number;
  /** Crankpin direction relative to the crank's reference (throw of cylinder 1 = 0 unless stated), in the running sense. */
  readonly throwAngle?: Angle;
}
export interface Layout {
  readonly form: 'inline' | 'vee' | 'opposed';
  readonly banks: readonly Bank[];
  readonly cylinders: readonly Cylinder[];
  /** Running sense seen from the front. */
  readonly rotation: 'clockwise' | 'anticlockwise';
  /** Empty where the sheet does not print it: then no crank angle of any cylinder is known. */
  readonly firingOrder: readonly CylinderNumber[];
  readonly firingOrderFrom?: From;
  /** Crank angle from each firing to the next, in firing order, summing to 720 degrees; absent means even. */
  readonly firingIntervals?: readonly Angle[];
  /** Cylinder pitch along the crank where known; drawings assume one otherwise. */
  readonly borePitch?: Stated<Length>;
  /** Origin of the arrangement: banks, numbering, crankpins. */
  readonly from?: From;
}

export interface CrankTrain {
  readonly bore?: Stated<Length>;
  readonly stroke?: Stated<Length>;
  readonly rodLength?: Stated<Length>;
  readonly pinOffset?: Stated<Length>;
  readonly compressionHeight?: Stated<Length>;
  readonly deckHeight?: Stated<Length>;
  readonly compressionRatio?: Stated<Ratio>;
  readonly chamberVolume?: Stated<Volume>;
  /** As printed for the whole engine; the loader compares it with bore, stroke and count. */
  readonly displacement?: Stated<Volume>;
  readonly wetLiners?: boolean;
}

/** Cam card. Events in crank degrees: intake opens BTDC, closes ABDC; exhaust opens BBDC, closes ATDC. */
export interface CamEvents {
  readonly intakeOpens: Angle;
  readonly intakeCloses: Angle;
  readonly exhaustOpens: Angle;
  readonly exhaustCloses: Angle;
}
export interface CamCard {
  /** `seat` events bound the whole open window; `at-lift` events were printed at a lift such as 0.050 in or 1 mm. */
  readonly basis: 'seat' | 'at-lift';
  readonly checkingLift?: Stated<Length>;
  readonly events?: CamEvents;
  /** Advertised (seat to seat) duration, where the card has it. */
  readonly advertisedDuration?: { readonly intake: Angle; readonly exhaust: Angle };
  readonly lobeLift?: { readonly intake?: Stated<Length>; readonly exhaust?: Stated<Length> };
  readonly from: From;
}

export type ValveGearKind = 'pushrod' | 'overhead-rocker' | 'overhead-finger' | 'overhead-bucket';
export type AdjusterPlace =
  | 'stud-nut'
  | 'pushrod-end-screw'
  | 'valve-end-screw'
  | 'shim-over-bucket'
  | 'shim-under-bucket'
  | 'finger-pivot'
  | 'none';
export interface ValveGear {
  readonly kind: ValveGearKind;
  readonly follower: 'flat' | 'roller';
  readonly adjustment: 'hydraulic' | 'mechanical';
  readonly intakeValves: number;
  readonly exhaustValves: number;
  readonly ratio?: Stated<Ratio>;
  readonly adjuster: { readonly place: AdjusterPlace; readonly thread?: string; readonly pitch?: Stated<Length> };
  /** Hydraulic: what the maker asks for. `turns` past zero lash and/or plunger travel window. */
  readonly preload?: {
    readonly turns?: Stated<Angle>;
    readonly plungerTravel?: { readonly text: string; readonly window: Window<Length>; readonly from: From };
  };
  /** Mechanical: lash at the valve. A bare hot or cold figure leaves the other unknown. */
  readonly lash?: {
    readonly intake: LashFigures;
    readonly exhaust: LashFigures;
  };
  readonly shims?: ShimStock;
}
export interface LashFigures {
  readonly cold?: { readonly text: string; readonly window: Window<Length>; readonly from: From };
  readonly hot?: { readonly text: string; readonly window: Window<Length>; readonly from: From };
}
export interface ShimStock {
  readonly thinnest: Stated<Length>;
  readonly thickest: Stated<Length>;
  readonly step: Stated<Length>;
  readonly rounding: 'nearest' | 'next-thinner' | 'next-thicker';
}

/** Plan position on a head or deck face, seen looking at the gasket face of the block from above the bank. */
export interface Place {
  /** Along the crank from the front end of the head. */
  readonly x: Length;
  /** Across, positive toward the exhaust side. */
  readonly y: Length;
}
export type OpeningKind = 'bore' | 'water' | 'oil' | 'pushrod' | 'bolt' | 'dowel' | 'timing-drive';
/** A hole in the gasket that must line up with head and block. */
export interface Opening {
  readonly id: string;
  readonly kind: OpeningKind;
  readonly at: Place;
  readonly diameter: Length;
  /** The gasket maker may block or meter an opening on purpose; then a match is "closed as drawn". */
  readonly intent: 'open' | 'metered' | 'closed';
}
export interface Head {
  readonly id: string;
  readonly name: string;
  readonly bank: BankId;
  readonly cylinders: readonly CylinderNumber[];
  readonly length: Length;
  readonly width: Length;
  readonly cylinderCentres: Readonly<Record<string, Place>>;
  readonly valves: readonly (ValveId & { readonly at: Place; readonly diameter?: Length })[];
  readonly gasket: {
    readonly wayUp: string;
    readonly thickness?: Stated<Length>;
    readonly openings: readonly Opening[];
    /** What goes on the gasket faces; dry unless the maker says otherwise. */
    readonly dressing: string;
    readonly from: From;
  };
}

/** `not-stated`: the sheet does not say; a person must look it up before the fastener goes in. */
export type ThreadTreatment =
  | 'oil'
  | 'sealer'
  | 'locker'
  | 'dry'
  | 'assembly-lube'
  | 'anti-seize'
  | 'as-supplied'
  | 'not-stated';
export interface FastenerKind {
  readonly id: string;
  readonly name: string;
  readonly thread: string;
  /** Under-head length. */
  readonly length?: Stated<Length>;
  readonly strengthClass?: string;
  readonly use: 'once' | 'reuse' | 'reuse-to-length' | 'not-stated';
  /** Longest allowed length for `reuse-to-length`. */
  readonly lengthLimit?: Stated<Length>;
}
export interface Hole {
  readonly id: string;
  readonly fastener: string;
  readonly at?: Place;
  readonly opensInto: 'blind' | 'water' | 'oil' | 'air' | 'not-stated';
  /** How deep the hole takes a fastener, from the face in which it begins. */
  readonly depth?: Stated<Length>;
  /** What the fastener passes through before that face: head or cap, gasket, washer. */
  readonly clamped?: Stated<Length>;
  readonly onThread: ThreadTreatment;
  readonly underHead: ThreadTreatment;
}

/** What one stage asks of each fastener it names. */
export type StageAct =
  | { readonly kind: 'torque'; readonly target: Window<Torque>; readonly text: string }
  | { readonly kind: 'angle'; readonly target: Window<Angle>; readonly text: string }
  | { readonly kind: 'loosen'; readonly amount: 'fully' | Angle; readonly text: string }
  | { readonly kind: 'verify'; readonly target: Window<Torque>; readonly text: string }
  | { readonly kind: 'stretch'; readonly target: Window<Length>; readonly text: string }
  | { readonly kind: 'renew'; readonly text: string }
  | { readonly kind: 'instruct'; readonly text: string }
  /** Something is turned by hand, and how it turned is the answer. */
  | { readonly kind: 'feel'; readonly text: string };
export interface Stage {
  /** Counting from 1 over the joint's list. */
  readonly number: number;
  /** The manual's own stage label where several entries make one printed stage. */
  readonly label?: string;
  /** `all` holes of the joint, or the named ones. */
  readonly holes: 'all' | readonly string[];
  /** Name of the cap that the stage is about, where the joint is tightened cap by cap. */
  readonly cap?: string;
  /** `in-order` and `reverse` follow the joint's visiting order; `as-listed` follows `holes`. */
  readonly direction: 'in-order' | 'reverse' | 'as-listed';
  readonly act: StageAct;
  readonly note?: string;
  readonly from: From;
}
export interface Joint {
  readonly id: string;
  readonly name: string;
  readonly head?: string;
  readonly fasteners: readonly FastenerKind[];
  readonly holes: readonly Hole[];
  /** Visiting order of a whole pass as printed. Absent when the manual prints none: `plan/tightening` then computes one and says so. */
  readonly order?: { readonly holes: readonly string[]; readonly from: From };
  readonly stages: readonly Stage[];
  /** What the sheet says to do when a fastener turned by angle or stretch is in doubt. */
  readonly whenInDoubt: string;
  readonly wrench?: string;
  readonly cautions: readonly string[];
}

/** The three forms in which manuals print a wear limit; the sheet's own form is kept, never turned into another. */
export type WearLimit =
  | { readonly form: 'absolute'; readonly window: Window<number>; readonly text: string }
  | { readonly form: 'change-from-new'; readonly change: number; readonly text: string }
  | { readonly form: 'clearance'; readonly window: Window<number>; readonly text: string };
export interface InspectionLimit {
  readonly part: string;
  readonly what: string;
  readonly quantity:
    | 'length'
    | 'angle'
    | 'force'
    | 'torque'
    | 'pressure'
    | 'mass'
    | 'volume'
    | 'ratio'
    | 'stiffness'
    | 'temperature'
    | 'angular-speed';
  readonly whenNew?: { readonly window: Window<number>; readonly text: string };
  readonly wear?: WearLimit;
  /** Narrower scope: a cylinder, bank, grade or depth that the manual treats apart. */
  readonly scope?: string;
  /** The same scope in parts, where the sheet gives it so. */
  readonly applies?: {
    readonly cylinders?: readonly CylinderNumber[];
    readonly bank?: BankId;
    readonly grade?: string;
    readonly depth?: Stated<Length>;
  };
  /**
   * The size of `assess/features` that this row limits, e.g. `cylinder-bore.taper`, where the sheet says so; else it is
   * found from `part` and `what`.
   */
  readonly property?: string;
  /** How the maker forms the figure (a rule of out-of-round or taper, e.g. `same-height-radial`); part of the limit. */
  readonly rule?: string;
  readonly from: From;
  readonly note?: string;
}

/** Where bores and journals are measured, and what the parts are made of, where the sheet says so. */
export interface Inspection {
  /** Depths from the deck, top first. */
  readonly boreHeights?: readonly { readonly name: string; readonly depth?: Stated<Length> }[];
  readonly boreDirections?: readonly string[];
  readonly mainJournals?: number;
  /** On each camshaft. */
  readonly camJournals?: number;
  /** In the whole engine. */
  readonly camshafts?: number;
  /** Main bearing that carries the thrust faces, from the front. */
  readonly thrustAt?: number;
  /** Height from the skirt's lower edge at which the piston is measured. */
  readonly pistonHeight?: Stated<Length>;
  /** Depth at which rings are gapped. */
  readonly ringDepth?: Stated<Length>;
  readonly materials?: {
    readonly block?: Material;
    readonly liner?: Material;
    readonly head?: Material;
    readonly piston?: Material;
    readonly crankshaft?: Material;
    readonly rod?: Material;
  };
}
export type Material = 'cast-iron' | 'steel' | 'aluminium';

/** One part that can be had. Its place in the sheet says what for. */
export interface StockPart {
  readonly id: string;
  readonly name: string;
  readonly partNumber?: string;
  /** Pieces on hand; absent: can be bought as often as needed. */
  readonly count?: number;
  /** Price of one, in the shop's own money; for comparing only. */
  readonly price?: number;
  readonly from: From;
}
export interface PistonStock extends StockPart {
  /** On diameter; 0 is standard. */
  readonly oversize: Length;
  readonly skirt?: Window<Length>;
  readonly grade?: string;
  /** Name of another form than the maker fits: `flat`; absent: the maker's own, its sizes those of the engine where it states none. */
  readonly form?: string;
  readonly compressionHeight?: Length;
  /** Dish and valve pockets positive, dome negative. */
  readonly crownVolume?: Volume;
  /** Valve pockets deeper than those of the maker's own piston, square to their floor. */
  readonly pocketDeeper?: Length;
  readonly mass?: Mass;
}
/** A key, bushing or sprocket that turns the cam against the crank. */
export interface CamOffsetStock extends StockPart {
  /** Crank angle that it gives, either way round. */
  readonly offset: Angle;
}
export interface ShellStock extends StockPart {
  /** Of the journal; 0 is standard. */
  readonly undersize: Length;
  /** Wall of one half at its middle. */
  readonly wall: Window<Length>;
  readonly grade?: string;
}
export interface ThicknessStock extends StockPart {
  readonly thickness: Length;
}
export interface HeadGasketStock extends ThicknessStock {
  /** Piston protrusion for which the maker gives this one. */
  readonly protrusion?: Window<Length>;
  readonly bore?: Length;
}
export interface RingStock extends StockPart {
  readonly oversize: Length;
  /** Gap as delivered, in a bore of the nominal size. */
  readonly gap?: Window<Length>;
  readonly ring: 'top' | 'second' | 'oil';
}
/** Printed chart: which shell grade goes with which housing and journal mark. */
export interface GradeChart {
  readonly for: 'main' | 'rod';
  readonly rows: readonly { readonly housing: string; readonly journal: string; readonly shell: string }[];
  readonly from: From;
}
/** What can be bought or lies on the bench. */
export interface Stock {
  readonly pistons: readonly PistonStock[];
  readonly mainShells: readonly ShellStock[];
  readonly rodShells: readonly ShellStock[];
  readonly thrustWashers: readonly ThicknessStock[];
  readonly headGaskets: readonly HeadGasketStock[];
  readonly springShims: readonly ThicknessStock[];
  readonly linerShims: readonly ThicknessStock[];
  readonly rings: readonly RingStock[];
  readonly camOffsets: readonly CamOffsetStock[];
  readonly gradeCharts: readonly GradeChart[];
}
/** What the machine shop is told besides sizes, and what may not be passed. */
export interface Machining {
  /** Cutting allowance that a bore needs to clean up, on diameter. */
  readonly boreCleanUp?: Stated<Length>;
  readonly honeAllowance?: Stated<Length>;
  readonly journalCleanUp?: Stated<Length>;
  readonly boreFinish?: string;
  readonly journalFinish?: string;
  readonly deckFinish?: string;
  readonly torquePlate?: string;
  /** Smallest deck height, head thickness and bore wall that may be left. */
  readonly leastDeckHeight?: Stated<Length>;
  readonly leastHeadThickness?: Stated<Length>;
  readonly leastBoreWall?: Stated<Length>;
  /** Ring gap asked for per unit of bore, e.g. 0.0040 (in/in). */
  readonly ringGapFactor?: { readonly top?: Stated<Ratio>; readonly second?: Stated<Ratio> };
  /** Largest difference between the two halves of one bearing. */
  readonly widestShellMix?: Stated<Length>;
  readonly massMatch?: { readonly text: string; readonly value: number; readonly from: From };
}

/** What it burns; a gas engine is lit by a spark, as a petrol engine is. */
export type Fuel = 'petrol' | 'diesel' | 'gas';
/** A printed window that carries its text and origin. */
export interface StatedWindow<Q> {
  readonly text: string;
  readonly window: Window<Q>;
  readonly from: From;
}
/** One line of the maker's run-in. */
export interface RunInStep {
  readonly text: string;
  readonly time?: Stated<Time>;
  readonly speed?: { readonly text: string; readonly window: Window<AngularSpeed> };
  readonly load?: string;
  readonly from: From;
}
/** Spark from a distributor. Advance in crank degrees before top dead centre. */
export interface Ignition {
  readonly staticAdvance?: Stated<Angle>;
  /** With all that the governor of the distributor adds, and the speed from which it is there. */
  readonly fullAdvance?: Stated<Angle>;
  readonly fullAdvanceSpeed?: Stated<AngularSpeed>;
  /** Running sense of the rotor, seen from above the cap. */
  readonly rotor?: 'clockwise' | 'anticlockwise';
  /** Post of cylinder one, clockwise from the front of the engine, seen from above the cap. */
  readonly postOfFirst?: Stated<Angle>;
  readonly from: From;
}
export interface OilPressureWindow {
  readonly pressure: StatedWindow<Pressure>;
  /** At which it holds; absent: at any. */
  readonly speed?: Stated<AngularSpeed>;
  readonly temperature?: Stated<Temperature>;
}
/** How the maker reads a compression test. */
export interface CompressionRule {
  /** Least share of the highest cylinder. */
  readonly share?: Stated<Ratio>;
  /** Least pressure of any cylinder. */
  readonly floor?: Stated<Pressure>;
  /** Largest difference from the highest. */
  readonly difference?: Stated<Pressure>;
  /** As the maker prints it for a sound engine. */
  readonly printed?: StatedWindow<Pressure>;
  readonly crankingSpeed?: Stated<AngularSpeed>;
  readonly from: From;
}
/** Whether head bolts are turned again: what the maker of the gasket says. */
export interface HeadAgain {
  readonly when: 'never' | 'cold-after-first-heat' | 'hot-after-first-heat' | 'at-first-service';
  readonly text?: string;
  readonly from: From;
}
export interface ServiceDue {
  readonly what: string;
  readonly hours?: Stated<Time>;
  readonly months?: number;
  /** As printed: the log counts hours and days, no distance. */
  readonly distance?: string;
  readonly from: From;
}
/** What is watched and asked while the engine is started, run in and tested. */
export interface Running {
  readonly ignition?: Ignition;
  readonly oilPressure: readonly OilPressureWindow[];
  readonly idleSpeed?: StatedWindow<AngularSpeed>;
  readonly fullLoadSpeed?: Stated<AngularSpeed>;
  readonly exhaustMost?: Stated<Temperature>;
  readonly oilTemperatureMost?: Stated<Temperature>;
  readonly coolantMost?: Stated<Temperature>;
  /** After this time without oil pressure the engine is stopped. */
  readonly stopWithoutPressure?: Stated<Time>;
  readonly compression?: CompressionRule;
  readonly leakageMost?: Stated<Ratio>;
  readonly headAgain?: HeadAgain;
  readonly service: readonly ServiceDue[];
}

export interface SheetSource {
  readonly title: string;
  readonly locator?: string;
  readonly standing: Standing;
}
/** A disagreement that does not stop the work: what was printed is kept, and the person decides. */
export interface SheetCaution {
  readonly code: string;
  readonly message: string;
  readonly line?: number;
  readonly path: string;
}
export interface Engine {
  readonly format: 1;
  readonly name: string;
  readonly invented: boolean;
  readonly description: string;
  readonly sources: Readonly<Record<string, SheetSource>>;
  readonly layout: Layout;
  readonly crankTrain: CrankTrain;
  readonly cam?: CamCard;
  readonly valveGear?: ValveGear;
  readonly heads: readonly Head[];
  readonly joints: readonly Joint[];
  readonly limits: readonly InspectionLimit[];
  readonly inspection?: Inspection;
  readonly stock?: Stock;
  readonly machining?: Machining;
  /** Figures of the combination that have no section of their own, by key: `gasket-bore`, `valve-angle@intake`. */
  readonly figures?: Readonly<Record<string, Stated<number>>>;
  readonly fluids: readonly {
    readonly name: string;
    readonly amount?: Stated<Volume>;
    readonly grade?: string;
    readonly from: From;
  }[];
  readonly fuel?: Fuel;
  readonly runIn: readonly RunInStep[];
  readonly running?: Running;
  /** Figures that the sheet says its maker did not print or that could not be read. */
  readonly gaps: readonly string[];
  readonly cautions: readonly SheetCaution[];
}
export type { Pressure, Quantity, Temperature };
