import { CYCLE_DEGREES, wrap } from '../crank/index.js';
import type { StopMark, ValveTiming } from './types.js';

/** Places where a person can stop the crank, in ascending order, and the finest kind of mark they need. */
export interface StopTier {
  readonly mark: StopMark;
  readonly places: readonly number[];
}

const QUARTER_TURN = 90;
const DAMPER_STEP = 10;

/** Ascending, each place once. */
export function distinct(places: readonly number[]): number[] {
  return [...new Set(places.map(wrap))].sort((a, b) => a - b);
}

const every = (step: number) => Array.from({ length: CYCLE_DEGREES / step }, (_, i) => i * step);

/**
 * Marks that a person really has, from coarse to fine; each tier holds the one before: every dead centre mark (a mark
 * on the damper is seen at the firing dead centre and one turn later), then quarter turns from the first cylinder's
 * mark, then every 10 degrees of a degree-marked damper.
 */
export function usualTiers(timing: ValveTiming): readonly StopTier[] {
  const marks = timing.cylinders.flatMap(({ firesAt }) => [firesAt, firesAt + CYCLE_DEGREES / 2]);
  const quarters = [...marks, ...every(QUARTER_TURN)];
  return [
    { mark: 'dead-centre', places: distinct(marks) },
    { mark: 'quarter-turn', places: distinct(quarters) },
    { mark: 'damper-degrees', places: distinct([...quarters, ...every(DAMPER_STEP)]) },
  ];
}

/** The coarsest usual mark that shows a place. */
export function markOf(tiers: readonly StopTier[], place: number): StopMark {
  return tiers.find((tier) => tier.places.includes(place))?.mark ?? 'given';
}
