/**
 * What the record tells about the engine as it is primed, started, run in, tested and looked after, as plain data. `at` and `by` are of the entry:
 * the clock of the run-in rests on them.
 */
import type { CylinderNumber, ValveId } from '../../engine/model.js';
import type { Reading } from '../facts.js';

export const RUNNING_WHATS = [
  'oil-pressure',
  'oil-temperature',
  'coolant-temperature',
  'exhaust-temperature',
  'speed',
  'load-words',
] as const;
/** What is read while the engine runs. */
export type RunningWhat = (typeof RUNNING_WHATS)[number];
export const HEARD_PLACES = ['intake', 'exhaust', 'crankcase', 'coolant', 'neighbour', 'plug'] as const;
/** Where the air of a leakage test is heard. */
export type HeardPlace = (typeof HEARD_PLACES)[number];

/** Kind -> data. No plan of joints or valves waits for any of it. */
export interface RunningFactData {
  /** Oil came at this rocker or lobe while priming, and how: "runs", "drips". */
  'oil-seen': { readonly valve: ValveId; readonly how?: string };
  /** One go at the starter. */
  'start-tried': {
    readonly crankedSeconds: number;
    /** From the first firing; from the first turn where it did not fire. */
    readonly pressureAfterSeconds?: number;
    readonly pressure?: Reading;
    readonly outcome: 'runs' | 'stopped' | 'no-start';
  };
  /** The clock runs; without a step it goes on with the first that has time left. */
  'run-in-begun': { readonly step?: number };
  'run-in-stopped': { readonly why: string };
  /** Pressure [Pa], temperatures [K], speed [rad/s]; the load is told in words. */
  'running-read': { readonly what: RunningWhat; readonly reading?: Reading; readonly words?: string };
  'compression-read': {
    readonly cylinder: CylinderNumber;
    readonly reading: Reading;
    /** After a little oil into the cylinder. */
    readonly wet: boolean;
    readonly strokes?: number;
    readonly gauge?: string;
  };
  'leakage-read': {
    readonly cylinder: CylinderNumber;
    readonly supply: Reading;
    readonly held: Reading;
    /** Absent: nothing heard, or nobody listened. */
    readonly heard?: HeardPlace;
    readonly tester?: string;
  };
  'service-planned': {
    readonly what: string;
    /** Running hours on the engine's own count. */
    readonly dueHours?: number;
    /** 2027-03-01 */
    readonly dueDate?: string;
    readonly from: string;
  };
  'service-done': { readonly what: string; readonly hours?: number };
  /** Running hours as the counter shows them, or as estimated. */
  'hours-noted': { readonly hours: number };
}
export type RunningFactKind = keyof RunningFactData;
export const RUNNING_FACT_KINDS = [
  'oil-seen',
  'start-tried',
  'run-in-begun',
  'run-in-stopped',
  'running-read',
  'compression-read',
  'leakage-read',
  'service-planned',
  'service-done',
  'hours-noted',
] as const satisfies readonly RunningFactKind[];

export type RunningFactOf<K extends RunningFactKind> = {
  readonly kind: K;
  readonly data: RunningFactData[K];
  /** Local time with offset, RFC 3339. */
  readonly at: string;
  readonly by: string;
  readonly entry?: string;
};
export type RunningFact = { [K in RunningFactKind]: RunningFactOf<K> }[RunningFactKind];

/** The facts of one kind, in order. */
export function factsOf<K extends RunningFactKind>(
  facts: readonly RunningFact[],
  kind: K,
): readonly RunningFactOf<K>[] {
  return facts.filter((one) => one.kind === kind) as unknown as readonly RunningFactOf<K>[];
}
