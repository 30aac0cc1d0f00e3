/** Protrusion of liners above the block: spread of one liner, steps between neighbours. */
import { atMost } from './decision.js';
import { mean, spread } from './repeats.js';

export const STEP_RULES = ['means', 'worst-points'] as const;
export type StepRule = (typeof STEP_RULES)[number];

/**
 * Steps between neighbours in the order given, in the unit of the readings: of the means, or the largest between any point of the
 * one and any point of the other.
 */
export const stepsBetween = (liners: readonly (readonly number[])[], rule: StepRule): readonly number[] =>
  liners.slice(1).map((next, at) => {
    const before = liners[at]!;
    if (rule === 'means') return Math.abs(mean(next) - mean(before));
    return Math.max(Math.max(...next) - Math.min(...before), Math.max(...before) - Math.min(...next));
  });

/** Whether the means only rise or only fall along the bank; equal neighbours do neither harm. */
export function runsOneWay(means: readonly number[]): boolean {
  const pairs = means.slice(1).map((next, at) => [means[at]!, next] as const);
  return pairs.every(([one, next]) => atMost(one, next)) || pairs.every(([one, next]) => atMost(next, one));
}

export const spreadOfEach = (liners: readonly (readonly number[])[]): readonly number[] => liners.map(spread);
