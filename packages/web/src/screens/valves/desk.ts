import type { Bench, GapVerdict, ValveChoices, ValvesView } from '@gudgeon/core/workbench';
import type { Recorder } from '../../shell/index.js';

export type Condition = 'cold' | 'hot';
export type LengthUnit = 'mm' | 'in';

/** What lies before the person at every step of the valve setting. */
export interface Desk {
  readonly job: string;
  readonly bench: Bench;
  readonly view: ValvesView;
  readonly choices: ValveChoices;
  readonly recorder: Recorder;
  /** Tells that a hand is at work here, so that a later pause can be noticed. */
  readonly began: () => void;
  readonly condition: Condition;
  readonly setCondition: (condition: Condition) => void;
  readonly unit: LengthUnit;
  readonly setUnit: (unit: LengthUnit) => void;
  /** The gap that was measured last, kept on the screen until the next one. */
  readonly last?: { readonly place: string; readonly verdict: GapVerdict };
  readonly setLast: (last: Desk['last']) => void;
}

/** Where and how a valve is set: at a stop of the plan, where the crank happens to stand, or by its neighbour. */
export interface SetAt {
  readonly method: 'stop' | 'crank-here' | 'neighbour';
  readonly crankDegrees?: number;
}
