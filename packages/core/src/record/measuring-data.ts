/**
 * What is recorded about measuring and deciding, as plain data. `assess/model.ts` has the same shapes under its own names,
 * because judging knows no log; the workbench, which uses both, does not compile when they drift apart.
 */
import type { Reading } from '../plan/facts.js';

/** SI units of what is read: m, m3, kg, N, rad, N·m. */
export type MeasuredKind = 'length' | 'volume' | 'mass' | 'force' | 'angle' | 'torque';
export type GaugeKind =
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

/** An end may be open; both count as inside. SI. */
export interface RecordedWindow {
  readonly low?: number;
  readonly high?: number;
}
export interface RecordedFigure {
  readonly name: string;
  readonly text: string;
}
/** A line of the shop's order, as the decision that was taken gave it. */
export interface RecordedOrder {
  readonly id: string;
  readonly operation: string;
  readonly part: string;
  readonly property?: string;
  readonly places: readonly string[];
  readonly target?: RecordedWindow;
  readonly measured?: MeasuredKind;
  readonly targets?: readonly {
    readonly place: string;
    readonly window: RecordedWindow;
    readonly fittedTo?: string;
  }[];
  readonly finish?: string;
  readonly fittedTo?: string;
  readonly with?: string;
  readonly notes: readonly string[];
}
export interface RecordedPurchase {
  readonly part: string;
  readonly partNumber?: string;
  readonly size: string;
  readonly count: number;
  readonly for: string;
}

/** Kind -> data of what the log keeps about measuring. No plan waits for any of it, so they are not among its facts. */
export interface MeasuringData {
  /** One reading of one slot. It never changes: a mistake is struck out. */
  measured: {
    /** `cylinder-bore/3/top-thrust`: feature, place, station. */
    readonly slot: string;
    /** 1 as found; one more each time that the place came back from being worked on. */
    readonly occasion: number;
    readonly reading: Reading;
    /** A second reading, taken without seeing the first. */
    readonly repeat: boolean;
    readonly source: 'keyed' | 'gauge' | 'table';
    readonly instrument?: string;
    readonly temperature?: Reading;
    /** Questions of the number gate that the person answered with yes. */
    readonly answered?: readonly string[];
  };
  /** A gauge of the person; the same id again is the same gauge with other words or figures. */
  'instrument-kept': {
    readonly id: string;
    readonly name: string;
    readonly kind: GaugeKind;
    readonly measured: MeasuredKind;
    /** The unit in which it reads, e.g. `in`. */
    readonly unit: string;
    readonly resolution: Reading;
    readonly low?: Reading;
    readonly high?: Reading;
    /** Expanded uncertainty (k = 2) of maker or certificate. */
    readonly expanded?: Reading;
    /** Torque wrench: from the middle of the grip to the middle of the square drive. */
    readonly gripLength?: Reading;
    /** Day of the last certificate, year-month-day. */
    readonly certified?: string;
  };
  /** A standard (ring, block, setting rod) read with the gauge. */
  'instrument-checked': {
    readonly instrument: string;
    readonly moment: 'start' | 'between' | 'end';
    readonly standard: Reading;
    readonly reading: Reading;
  };
  /** Holds for what is measured after it, until the next one. */
  'temperature-noted': {
    readonly room?: Reading;
    readonly part?: Reading;
    /** Feature whose parts have the temperature; all when left out. */
    readonly about?: string;
  };
  /** Work on these places is done: what is measured from here on is another occasion. */
  'work-returned': { readonly feature: string; readonly places: readonly string[]; readonly why: string };
  /** A decision with the numbers that the person saw; the newest of a decision and scope holds. */
  decided: {
    readonly decision: string;
    readonly scope: string;
    readonly alternative: string;
    readonly words: string;
    readonly figures: readonly RecordedFigure[];
    readonly orders: readonly RecordedOrder[];
    readonly buys: readonly RecordedPurchase[];
    readonly reason: string;
  };
}
