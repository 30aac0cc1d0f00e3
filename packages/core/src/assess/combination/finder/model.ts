/**
 * The search for a combination of parts: what is fixed, what can be bought, cut or moved, and what must hold.
 * Plain data in SI, so that it can be handed to a worker as it is.
 */
import type { QuantityKind } from '../../../quantity/index.js';

/** A size with its standard uncertainty; a bare number is one whose doubt nobody stated. */
export type Size = number | { readonly value: number; readonly u?: number };
export type ValveSide = 'intake' | 'exhaust';

/** One cylinder as it stands. */
export interface FinderCylinder {
  readonly number: number;
  readonly bank: string;
  readonly bore: Size;
  readonly deckHeight?: Size;
  /** As measured with the piston of `fixed.piston`; otherwise it follows from the heights. */
  readonly deckClearance?: Size;
  readonly chamber?: Size;
  /** Own piston, where it is not as `fixed.piston`; a piston that is bought stands in for it. */
  readonly compressionHeight?: Size;
  readonly crownVolume?: Size;
  /** Valve pockets that the crown volume does not hold. */
  readonly pockets?: Size;
  /** Crevice and anything else; what takes room is negative. */
  readonly other?: Size;
}
/** How a lobe lifts, crank angle from the top dead centre of overlap. */
export type LobeMotion =
  | {
      readonly kind: 'card';
      readonly peakLift: Size;
      readonly durations: readonly { readonly lift: Size; readonly duration: Size }[];
      /** Intake after, exhaust before the top. */
      readonly centreline: Size;
    }
  | {
      readonly kind: 'modelled';
      readonly peakLift: Size;
      readonly halfDuration: Size;
      readonly exponents: readonly [number, number, number];
      readonly centreline: Size;
    }
  | { readonly kind: 'table'; readonly angles: readonly number[]; readonly lifts: readonly number[] };
export interface FinderValve {
  /** Stem from the axis of the bore. */
  readonly angle?: Size;
  readonly crown?: 'parallel-pocket' | 'flat-crown';
  /** Room along the stem, valve closed, piston at the top, with the gasket and piston of `measuredWith`. */
  readonly gapAtTop?: Size;
  readonly lash?: Size;
  /** Of a hydraulic lifter: pumped up its plunger comes up by so much. */
  readonly preload?: Size;
  readonly lobe?: LobeMotion;
  readonly springHeight?: Size;
  readonly bindHeight?: Size;
  /** Retainer to guide or seal, valve closed. */
  readonly retainerRoom?: Size;
}
export interface FixedFigures {
  readonly stroke: Size;
  readonly rodLength?: Size;
  readonly pinOffset?: Size;
  readonly cylinders: readonly FinderCylinder[];
  readonly piston?: { readonly compressionHeight?: Size; readonly crownVolume?: Size };
  readonly gasket?: { readonly thickness: Size; readonly bore?: Size };
  /** Gaskets and piston with which valve room, pushrod and intake fit were measured; left out: those of `gasket` and `piston`. */
  readonly measuredWith?: {
    readonly room?: Size;
    readonly pushrod?: Size;
    readonly intakeFit?: Size;
    readonly compressionHeight?: Size;
  };
  /** Cuts that are made in any case, by bank; a cut that is on offer stands in for them. */
  readonly cuts?: Readonly<Record<string, { readonly deck?: Size; readonly head?: Size }>>;
  /** Area of the chamber on the face of the head: what a cut takes from its volume. */
  readonly chamberArea?: Size;
  readonly headThickness?: Size;
  /** Bank from vertical, and intake face of the head from vertical. */
  readonly bankAngle?: Size;
  readonly faceAngle?: Size;
  readonly intakeGasketChange?: Size;
  readonly camAdvance?: Size;
  readonly rockerRatio?: Size;
  readonly pushrod?: Size;
  /** Pushrod that takes up all lash without preload, measured with `measuredWith`. */
  readonly zeroLashPushrod?: Size;
  readonly intake?: FinderValve;
  readonly exhaust?: FinderValve;
}

/** What every thing on offer may say. A price left out is not known, which is not 0. */
interface Offered {
  readonly name?: string;
  readonly price?: number;
}
export interface GasketOffered extends Offered {
  readonly thickness: Size;
  readonly bore: Size;
}
export interface PistonOffered extends Offered {
  readonly compressionHeight: Size;
  /** Dish positive, dome negative, valve pockets with it. */
  readonly crownVolume: Size;
  /** Valve pockets deeper, square to their floor, than those of the piston with which the valve room was measured. */
  readonly pocketDeeper?: Size;
}
/** Values to choose from one by one, or evenly stepped, both ends included. */
export type Values =
  | { readonly values: readonly (Offered & { readonly value: Size })[] }
  | { readonly from: number; readonly to: number; readonly step: number; readonly price?: number; readonly u?: number };
/** A cut from nothing to its limit; the price is for cutting at all. */
export interface CutOffered {
  readonly limit: number;
  readonly step: number;
  readonly price?: number;
  readonly u?: number;
}
/** `each`: every bank has a choice of its own. */
type PerBank = { readonly each?: boolean };
export interface Offer {
  readonly gaskets?: PerBank & { readonly options: readonly GasketOffered[] };
  /** `keep`: those that are there may stay, which costs nothing. */
  readonly pistons?: { readonly options: readonly PistonOffered[]; readonly keep?: boolean };
  readonly chambers?: Values;
  readonly deckCut?: PerBank & CutOffered;
  readonly headCut?: PerBank & CutOffered;
  /** Crank angle, earlier positive. */
  readonly camAdvance?: Values;
  readonly rockerRatio?: Values;
  readonly pushrods?: PerBank & Values;
}

export interface WantedWindow {
  readonly low?: number;
  readonly high?: number;
}
export type PerSide = Partial<Readonly<Record<ValveSide, number>>>;
/** What must hold; what is left out is not asked. */
export interface Wanted {
  readonly ratio?: WantedWindow;
  readonly quench?: WantedWindow;
  /** Least room of the valves to the piston. */
  readonly valveRoom?: PerSide;
  readonly deckHeight?: number;
  readonly headThickness?: number;
  /** How far the intake face may be off either way. */
  readonly intakeShift?: number;
  /** Least room to coil bind and under the retainer at full lift. */
  readonly bindRoom?: PerSide;
  readonly retainerRoom?: PerSide;
  /** Plunger travel, or length left for the adjuster. */
  readonly preload?: WantedWindow;
}
export interface FinderInput {
  readonly fixed: FixedFigures;
  readonly offer: Offer;
  readonly wanted: Wanted;
  /** Combinations kept of each ranking. */
  readonly keep: number;
  /** What to do with a requirement that cannot be computed; default: refuse. One left out is named in the answer. */
  readonly lacking?: 'refuse' | 'leave-out';
}

export type ChoiceKind =
  | 'gasket'
  | 'piston'
  | 'chamber'
  | 'deck-cut'
  | 'head-cut'
  | 'cam-advance'
  | 'rocker-ratio'
  | 'pushrod';
/** One option of a choice, of any kind. */
export interface Option {
  readonly name: string;
  readonly sizes: Readonly<Record<string, Size>>;
  readonly price?: number;
  /** Nothing is bought or done: it costs nothing. */
  readonly asIs?: boolean;
}
/** One thing to choose: `gasket`, `deck-cut@left`. */
export interface Choice {
  readonly key: string;
  readonly kind: ChoiceKind;
  readonly title: string;
  readonly options: readonly Option[];
  /** Faces that are cut by it. */
  readonly faces: number;
}

export type FinderFault =
  | { readonly code: 'not-a-number'; readonly where: string }
  | { readonly code: 'no-options'; readonly choice: string }
  | { readonly code: 'steps-unusable'; readonly choice: string; readonly most: number }
  | { readonly code: 'window-upside-down'; readonly what: string; readonly low: number; readonly high: number }
  | { readonly code: 'no-cylinders' }
  | { readonly code: 'missing'; readonly missing: readonly MissingSize[] }
  | { readonly code: 'lobe-unusable'; readonly valve: ValveSide }
  | { readonly code: 'crank-cannot-turn' }
  | { readonly code: 'unsearchable'; readonly text: string };
export interface MissingSize {
  readonly what: string;
  /** What is wanted and cannot be computed without it. */
  readonly for: string;
}

/**
 * What a margin is a share of: half of a window (in its middle the margin is 1); a limit alone by its own size; for a face that is cut
 * what may be taken off it; one whole for a limit of the ratio alone; a millimetre where none of these has a size.
 */
export type ShareOf = 'half of the window' | 'the limit' | 'what may be taken' | 'one whole' | 'a millimetre';
/** A figure of a combination against what is wanted. */
export interface HeldFigure {
  readonly key: string;
  readonly name: string;
  readonly quantity: QuantityKind;
  readonly value: number;
  readonly low?: number;
  readonly high?: number;
  /** Distance to the nearer limit as share of `shareOf`. Negative: outside. */
  readonly margin: number;
  readonly shareOf: ShareOf;
}
export interface FoundCombination {
  /** Option of each choice, counted from 0, in the order of the choices. */
  readonly picked: readonly number[];
  readonly options: readonly { readonly choice: string; readonly option: Option }[];
  readonly figures: readonly HeldFigure[];
  /** Depth of all cuts together [m]. */
  readonly metal: number;
  /** Sum of the known prices, and how many are not known. */
  readonly cost: number;
  readonly unpriced: number;
  /** Smallest margin that a choice can move; 1 at most. */
  readonly worst: number;
}
export type RankingName = 'least-metal' | 'least-cost' | 'most-margin';

export interface FoundLoosening {
  readonly key: string;
  readonly name: string;
  readonly quantity: QuantityKind;
  readonly end: 'low' | 'high';
  readonly from: number;
  readonly to: number;
  readonly share: number;
  readonly shareOf: ShareOf;
}
export interface FoundRelaxation {
  readonly loosened: readonly FoundLoosening[];
  readonly share: number;
  readonly with: FoundCombination;
}
/** An option that is not on offer and would help: one size of it anywhere between two ends, in the steps looked at. */
export interface FoundAddition {
  readonly choice: string;
  readonly kind: ChoiceKind;
  readonly title: string;
  /** Where everything on offer lies beyond the same end: the nearest of it. */
  readonly nearest?: { readonly name: string; readonly value: number; readonly lies: 'above' | 'below' };
  /** Which size is meant, and the sizes of the part that go with it. */
  readonly size: string;
  readonly quantity: QuantityKind;
  readonly from: number;
  readonly to: number;
  readonly step: number;
  readonly beside: Readonly<Record<string, number>>;
}
export interface FinderAnswer {
  /** Combinations before anything is asked of them, and those that keep everything, counted exactly once done. */
  readonly raw: number;
  readonly feasible: number;
  readonly best: Readonly<Record<RankingName, readonly FoundCombination[]>>;
  /** Only where nothing fits: the least that must give way together, each requirement by itself, and what could be added. */
  readonly together?: FoundRelaxation;
  readonly alone: readonly (FoundRelaxation | { readonly key: string; readonly name: string; readonly helps: false })[];
  readonly additions: readonly FoundAddition[];
  /** Requirements that were left out, with what they need: nothing is known of them. */
  readonly missing: readonly MissingSize[];
  /** The same in plain words. */
  readonly words: readonly string[];
}
