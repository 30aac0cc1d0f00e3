/** What is asked of the number gate, and what it says. */
import type { Window } from '../../engine/index.js';
import type { Expected, InstrumentKind, Measured } from '../model.js';

/** What is said of a keyed figure before it is recorded. */
export type NumberGate =
  | { readonly level: 'fine' }
  | { readonly level: 'unlikely'; readonly expected: string; readonly hint?: string }
  | { readonly level: 'impossible'; readonly reason: string };

/** Readings of like places. */
export interface Sisters {
  /** "the other cylinders", "the other readings here". */
  readonly words: string;
  /** SI. */
  readonly values: readonly number[];
}
/** The gauge in hand: unit, smallest step and reach. */
export interface GaugeInHand {
  readonly name: string;
  readonly unit: string;
  /** SI. */
  readonly resolution: number;
  readonly range?: Window<number>;
}
export interface GateQuestion {
  /** As keyed, with its unit. */
  readonly text: string;
  /** "bore of cylinder 3": for the sentences. */
  readonly what: string;
  readonly measured: Measured;
  readonly kind: InstrumentKind;
  /** Usual smallest step of such a gauge, SI; the gauge in hand knows better. */
  readonly step: number;
  readonly gauge?: GaugeInHand;
  /** A reading of a like place as keyed: how many places such a figure has, where no gauge says so. */
  readonly written?: string;
  readonly expected?: Expected;
  /** Groups of readings with which it can be compared; being like one of them is enough. */
  readonly sisters: readonly Sisters[];
  readonly decimalMark?: '.' | ',';
}
