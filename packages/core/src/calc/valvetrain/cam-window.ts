/** How far a cam may be advanced or retarded before a valve comes too near its piston. */
import type { Angle } from '../../quantity/index.js';
import { signChange } from '../numeric/index.js';

/** Least room [m] of a valve with the cam advanced by a crank angle [rad]; negative retards. */
export type LeastGap = (advance: number) => number;

/** One valve and the room that it must keep. */
export interface ValveRoom {
  readonly leastGap: LeastGap;
  readonly limit: number;
}
export interface CamWindow {
  /** Most advance and most retard (negative) that keep every limit; undefined: none found within the search. */
  readonly most: Angle | undefined;
  readonly least: Angle | undefined;
  /** Whether every limit is kept as the cam stands. */
  readonly keptNow: boolean;
}

const STEP = Math.PI / 180;

/**
 * Window of cam advance around where the cam stands that keeps the room of every valve.
 *
 * `rooms` one or more valves; `reach` [rad of crank], how far either way is searched, in steps of one degree and then to
 * the last digit. `keptNow` is false when a limit is broken already; then the two ends bound the nearest stretch
 * that keeps them, if there is one within reach. An end that is not reached is undefined. Source: search.
 */
export function camWindow(rooms: readonly ValveRoom[], reach: number): CamWindow {
  const spare = (advance: number) => Math.min(...rooms.map(({ leastGap, limit }) => leastGap(advance) - limit));
  const steps = Math.max(1, Math.round(reach / STEP));
  const places = Array.from({ length: 2 * steps + 1 }, (_, at) => ((at - steps) * reach) / steps);
  const kept = places.map((place) => spare(place) >= 0);
  const start = nearestKept(kept, steps);
  if (start === undefined) return { most: undefined, least: undefined, keptNow: false };
  const edge = (way: 1 | -1): Angle | undefined => {
    let at = start;
    while (kept[at]) at += way;
    if (kept[at] === undefined) return undefined;
    return signChange((advance) => (spare(advance) >= 0 ? 1 : -1), places[at - way]!, places[at]!) as Angle;
  };
  return { most: edge(1), least: edge(-1), keptNow: kept[steps]! };
}

/** Index nearest to the middle at which the limits are kept. */
function nearestKept(kept: readonly boolean[], middle: number): number | undefined {
  const found = kept.flatMap((one, at) => (one ? [at] : []));
  return found.length === 0
    ? undefined
    : found.reduce((best, at) => (Math.abs(at - middle) < Math.abs(best - middle) ? at : best));
}
