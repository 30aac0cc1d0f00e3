import { CYCLE_DEGREES, samePlace } from '../crank/index.js';
import type { ValveTiming } from './types.js';

/** Two cylinders that fire one crank turn apart: when the valves of one rock, the other is at its firing dead centre. */
export type Mates = readonly [number, number];
export interface RunningMates {
  readonly pairs: readonly Mates[];
  /** Cylinders that no other follows by exactly one turn; the running-mate method cannot be used for them. */
  readonly alone: readonly number[];
}

/**
 * Running mates by firing place: cylinder b is the mate of a when b fires exactly 360 crank degrees after a.
 * With even firing and an even number of cylinders they stand half a firing order apart. An odd number of cylinders or
 * uneven intervals may leave cylinders without a mate; they are listed, never paired with the nearest one.
 * Source: reference mechanism-open.md section 8.2.
 */
export function runningMates(timing: ValveTiming): RunningMates {
  const left = [...timing.cylinders];
  const pairs: Mates[] = [];
  const alone: number[] = [];
  for (let at = left.shift(); at; at = left.shift()) {
    const turnLater = at.firesAt + CYCLE_DEGREES / 2;
    const i = left.findIndex((other) => samePlace(other.firesAt, turnLater));
    if (i < 0) alone.push(at.cylinder);
    else pairs.push([at.cylinder, left.splice(i, 1)[0]!.cylinder]);
  }
  return { pairs, alone };
}

/** The mate of one cylinder, if it has one. */
export function mateOf(mates: RunningMates, cylinder: number): number | undefined {
  const pair = mates.pairs.find((two) => two.includes(cylinder));
  return pair?.find((other) => other !== cylinder);
}
