/** Degreeing a cam: what is read at the wheel and the indicator, and what is told of each lobe. */
import type { ValveId } from '../../engine/index.js';
import type { Answered } from './model.js';
import type { DeadCentre } from './true-dead-centre.js';

/** Where the indicator stands. */
export type CamReadAt = 'lifter' | 'valve';
/** One reading of wheel [rad, rising in the running sense] and lift [m, 0 on the base circle]. */
export interface CamReading {
  readonly lobe: ValveId;
  readonly wheel: number;
  readonly lift: number;
  readonly at: CamReadAt;
  /** Whether the lobe was lifting or closing, where the person says so. */
  readonly sense?: 'opening' | 'closing';
  readonly entry?: string;
}
/** A reading in its place: crank angle [rad] after the lobe's own top dead centre of overlap, lift at the lobe [m]. */
export interface PlacedReading {
  readonly angle: number;
  readonly lift: number;
  readonly wheel: number;
  readonly sense?: CamReading['sense'];
  readonly entry?: string;
}

/** How far a lobe has grown: nothing to go by, readings without a middle, a middle by equal lifts, the whole lobe. */
export type LobeStage = 'too-few' | 'equal-lifts' | 'whole-lobe';

/** A reading that the others do not bear out. */
export interface SuspectReading {
  readonly reading: PlacedReading;
  /** Read less the curve [m]. */
  readonly off: number;
  /** In standard deviations of that distance, the curve made of the other readings. */
  readonly deviations: number;
  /** By how much the centreline moves without it [rad]; absent where the rest makes no curve. */
  readonly moves?: number;
}
/** A reading that would help. */
export interface NextReading {
  /** Crank angle after the lobe's own top of overlap, and what the wheel reads there [rad]. */
  readonly angle: number;
  readonly wheel: number;
  readonly flank: 'opening' | 'closing' | 'nose';
  /** Share of the centreline's doubt that would be left; absent before there is a curve. */
  readonly share?: number;
  readonly why: string;
}
/** x in crank degrees after the lobe's own top of overlap, y in metres at the lobe. */
export type LobeCurve = readonly (readonly [degrees: number, lift: number])[];

export interface LobeDegreed {
  readonly lobe: ValveId;
  readonly stage: LobeStage;
  readonly readings: readonly PlacedReading[];
  /** Middle of the lobe [rad after its own top of overlap], before it negative; with the doubt of the dead centre in `u`. */
  readonly middle?: { readonly value: number; readonly u?: number; readonly uOfReadings: number };
  /** Where the middle should be by card or wish [rad after its own top of overlap]; absent where nobody says. */
  readonly wanted?: number;
  /** Middle of each pair of equal lifts [rad], and the lift [m] at which it was taken. */
  readonly pairs: readonly { readonly lift: number; readonly middle: number; readonly read: boolean }[];
  /** Lift at which the middle was taken, where there is a curve [m]. */
  readonly checkedAt?: number;
  readonly curve: LobeCurve;
  /** One standard uncertainty of the curve either way [m], at the same places; empty without readings to spare. */
  readonly band: readonly number[];
  /** Read less the curve [m], of the readings that made it. */
  readonly residuals: LobeCurve;
  readonly card: LobeCurve;
  readonly suspects: readonly SuspectReading[];
  readonly next: readonly NextReading[];
}
export interface DegreeingAnswer extends Answered {
  readonly deadCentre?: DeadCentre;
  readonly lobes: readonly LobeDegreed[];
}
