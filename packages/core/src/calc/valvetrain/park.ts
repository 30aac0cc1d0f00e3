/** Where to leave the crank so that no piston is near top dead centre. */
import type { Angle } from '../../quantity/index.js';
import { TURN } from '../crank/index.js';

export interface Parking {
  /** Crank angles, 0 to below one turn, at which the nearest piston is as far from top as it can be. */
  readonly angles: readonly Angle[];
  /** Crank angle from there to the nearest top dead centre. */
  readonly away: Angle;
}

const SAME = 1e-9;

/**
 * Crank angles at which every piston is as far as possible from top dead centre: the middles of the widest gaps.
 *
 * `tops` crank angles [rad] at which each cylinder is at the top, at least one; a turn more or less is the same. Pistons of one
 * stroke and rod without offset are equally low the same angle before and after top. Example: 0°, 180°: 90° and 270°. Source: derived.
 */
export function parkingAngles(tops: readonly Angle[]): Parking {
  const round = (angle: number) => ((angle % TURN) + TURN) % TURN;
  const places = [...new Set(tops.map(round))].sort((a, b) => a - b);
  const gaps = places.map((start, at) => ({ start, wide: (places[at + 1] ?? places[0]! + TURN) - start }));
  const widest = Math.max(...gaps.map(({ wide }) => wide));
  const best = gaps.filter(({ wide }) => wide > widest - SAME);
  const angles = best.map(({ start, wide }) => round(start + wide / 2)).sort((a, b) => a - b);
  return { angles: angles as Angle[], away: (widest / 2) as Angle };
}
