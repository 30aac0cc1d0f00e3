/** Which piston goes into which bore: the exact best for a goal, and the one piston that would help most. */
import {
  extraPart,
  type Goal,
  type NoPartsPlan,
  type PartsInput,
  type PartsPlan,
  partsToPlaces,
} from '../../calc/selection/index.js';
import type { Length, Outcome } from '../../quantity/index.js';
import { middle, moved } from './judged.js';
import { less, type Sure } from './measured-at.js';
import type { BorePlace, TaggedPiston } from './piston-places.js';

/**
 * Pistons to bores, each bore with its own window.
 *
 * Bores are moved so that the middle of every window lies at zero: a fit is then the distance from what is wanted, and bores whose
 * makers ask for more clearance (a rear pair) are compared with the rest by that distance. Source: `partsToPlaces`.
 */
export const pistonsFor = (
  bores: readonly BorePlace[],
  pistons: readonly TaggedPiston[],
  goal: Goal,
): Outcome<PartsPlan, NoPartsPlan> => partsToPlaces(inputOf(bores, pistons, goal));

function inputOf(bores: readonly BorePlace[], pistons: readonly TaggedPiston[], goal: Goal): PartsInput {
  const windows = bores.map(({ asked }) => moved(asked, -middle(asked)) as { low: Length; high: Length });
  return {
    places: bores.map(({ bore, asked }) => (bore.value - middle(asked)) as Length),
    parts: pistons.map(({ size }) => size.value as Length),
    target: 0 as Length,
    window: {},
    windows,
    goal,
  };
}

export interface HelpfulPiston {
  readonly size: number;
  /** How much less of the goal; absent where without it there is no plan at all. */
  readonly gain?: number;
}
/** The one piston, among sizes that could be had, that would help most; undefined where none would. */
export function helpfulPiston(
  bores: readonly BorePlace[],
  pistons: readonly TaggedPiston[],
  goal: Goal,
  sizes: readonly number[],
): HelpfulPiston | undefined {
  const found = extraPart(inputOf(bores, pistons, goal), sizes as readonly Length[]);
  if (!found.ok || found.value.size === undefined) return undefined;
  return { size: found.value.size, ...(found.value.gain === undefined ? {} : { gain: found.value.gain }) };
}

/** Clearance of a bore with a piston, with the doubt of both. */
export const clearanceIn = ({ bore }: BorePlace, { size }: TaggedPiston): Sure => less(bore, size);
