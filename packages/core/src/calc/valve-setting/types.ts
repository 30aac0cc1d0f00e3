/**
 * Public shapes of valve setting. Inputs come in SI like everywhere in the core; from there on this room counts in
 * crank degrees, in fields that say so, because dead centres, printed cam events and the inclusive margin are whole
 * numbers in degrees and would not be in radians.
 */
import type { Angle } from '../../quantity/index.js';
import type { CamEvents, CardBasis, ValveSide, WindowFault } from '../cam/index.js';
import type { FiringFault } from '../crank/index.js';

export type { ValveSide } from '../cam/index.js';
/** All valves of one kind in one cylinder: they share the cam events, so they are set together. */
export interface ValveGroup {
  readonly cylinder: number;
  readonly valve: ValveSide;
}

/** Crank angle of each event: intake opens BTDC, closes ABDC; exhaust opens BBDC, closes ATDC. Negative: on the other side of the dead centre. */
export type ValveEvents = CamEvents;
/** A cam card, as far as it is known. */
export interface ValveCard extends CardBasis {
  readonly events?: ValveEvents;
}
/** What a person gives. The layout and cam card of an engine sheet fit as they are. */
export interface ValveTimingInput {
  readonly firingOrder: readonly number[];
  /** Crank angle from each firing to the next, in firing order, the last one back to the first; absent: even. */
  readonly firingIntervals?: readonly Angle[];
  readonly cam?: ValveCard;
  /** Least distance from opening and from closing at which a valve may be set; absent: 5 degrees, and said so. */
  readonly margin?: Angle;
}

/** What the plan rests on besides the figures given. Each is to be shown with the plan. */
export type Assumption =
  | { readonly code: 'cam-unknown'; readonly windows: EventDegrees }
  | {
      readonly code: 'default-windows-widened';
      readonly valve: ValveSide;
      readonly eachSide: number;
      readonly advertised: number;
    }
  | { readonly code: 'margin-default'; readonly degrees: number }
  | { readonly code: 'intervals-even'; readonly degrees: number }
  | { readonly code: 'checking-lift-unknown'; readonly millimetres: number }
  | {
      readonly code: 'widened-from-advertised';
      readonly valve: ValveSide;
      readonly eachSide: number;
      readonly advertised: number;
    }
  | {
      readonly code: 'widened-by-allowance';
      readonly valve: ValveSide;
      readonly eachSide: number;
      readonly millimetres: number;
    };
export type EventDegrees = Readonly<Record<keyof CamEvents, number>>;

export type TimingFault =
  | FiringFault
  | WindowFault
  | { readonly code: 'margin-out-of-range'; readonly degrees: number };

/** Phase window in crank degrees after a cylinder's own firing dead centre, `opens` < `closes`, seat to seat. */
export interface OpenWindow {
  readonly opens: number;
  readonly closes: number;
}
/** An engine ready to be asked: where each cylinder fires, when its valves are off their base circles, and how near one may go. */
export interface ValveTiming {
  /** In firing order; `firesAt` is crank degrees after the first cylinder of the order fires, 0 to 720. */
  readonly cylinders: readonly { readonly cylinder: number; readonly firesAt: number }[];
  readonly open: Readonly<Record<ValveSide, OpenWindow>>;
  readonly marginDegrees: number;
  readonly assumed: readonly Assumption[];
}

/** Where one valve stands at one crank angle. */
export interface ValvePosition extends ValveGroup {
  /** Crank degrees after the cylinder's own firing dead centre, 0 to 720. */
  readonly phase: number;
  /** Crank degrees to the nearest end of the open window; negative when the valve is off its base circle. */
  readonly degrees: number;
  readonly nearest: 'opening' | 'closing';
}
/** A valve that may be set here, with how far it is from its own open window. */
export type PermittedValve = ValvePosition;
/** A valve that may not be set, and why: it is open, or its opening or closing is nearer than the margin. */
export interface RefusedValve extends ValvePosition {
  readonly code: 'open' | 'too-near';
  readonly crankDegrees: number;
  readonly marginDegrees: number;
}
export interface CrankVerdict {
  readonly crankDegrees: number;
  readonly permitted: readonly PermittedValve[];
  readonly refused: readonly RefusedValve[];
}

/** Which marks a person needs in order to find a stop. */
export type StopMark = 'dead-centre' | 'quarter-turn' | 'damper-degrees' | 'given';
export interface PlannedStop {
  readonly crankDegrees: number;
  /** Forward turn from the stop before; from the first cylinder's firing dead centre for the first stop. */
  readonly turnDegrees: number;
  readonly mark: StopMark;
  /** Valves to set at this stop, each valve of the engine at one stop only, in cylinder order. */
  readonly set: readonly PermittedValve[];
  /** Every valve that may be set here. */
  readonly permitted: readonly PermittedValve[];
}
export interface ValvePlan {
  readonly stops: readonly PlannedStop[];
  /** Valves that may be set at none of the stops offered; each with its best stop among them. */
  readonly refused: readonly RefusedValve[];
  /** The tightest valve of the plan in crank degrees; absent when no valve could be planned. */
  readonly smallestDegrees?: number;
  readonly marginDegrees: number;
  readonly assumed: readonly Assumption[];
}
export interface PlanOptions {
  /** Plan over exactly these stops, crank degrees from 0 to below 720. */
  readonly stops?: readonly number[];
  /** Choose from these stops only, instead of the usual tiers. */
  readonly candidates?: readonly number[];
}
export type PlanFault = { readonly code: 'stop-out-of-range'; readonly given: number } | { readonly code: 'no-stops' };
