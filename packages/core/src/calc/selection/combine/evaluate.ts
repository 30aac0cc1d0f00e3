/** One combination at a time: what it really is. The search goes by bounds and asks here where it comes to a point. */
import type { Combined, CombineProblem, Requirement } from './model.js';

/** Margins this much below 0 still keep: a step that ends on its limit must not fall to rounding. */
export const SAME = 1e-9;
/** A margin worse than this counts as this: no loosening of a thousand windows is of use. */
export const HOPELESS = -1000;

/** Margin of a shown figure as share of the scale; `HOPELESS` at worst. */
export function marginOf({ low, high, scale }: Pick<Requirement, 'low' | 'high' | 'scale'>, figure: number): number {
  if (!Number.isFinite(figure)) return HOPELESS;
  let margin = Number.POSITIVE_INFINITY;
  if (low !== undefined) margin = (figure - low) / scale;
  if (high !== undefined) margin = Math.min(margin, (high - figure) / scale);
  return Math.max(margin, HOPELESS);
}

/** Shown figure of a requirement with an option of each dimension: base and terms added in the order of the problem. */
export function figureOf({ dimensions }: CombineProblem, one: Requirement, options: ArrayLike<number>): number {
  let sum = one.base;
  for (const { of, table } of one.terms) {
    let at = 0;
    for (const dimension of of) at = at * dimensions[dimension]!.size + options[dimension]!;
    sum += table[at]!;
  }
  return one.shown ? one.shown.of(sum) : sum;
}

/** Whether any choice can move a figure: a margin that nothing moves must not hide the others in a ranking. */
export const canMove = ({ terms }: Requirement): boolean =>
  terms.some(({ table }) => {
    for (let at = 1; at < table.length; at += 1) if (table[at] !== table[0]) return true;
    return false;
  });

/** Margins are compared in millionths. */
export const MILLIONTHS = 1e6;
/** A whole number without a negative zero, so that equal keys are equal. */
export const wholeMillionths = (share: number): number => Math.round(share * MILLIONTHS) + 0;

export const indexOf = ({ dimensions }: CombineProblem, options: ArrayLike<number>): number =>
  dimensions.reduce((index, { size }, at) => index * size + options[at]!, 0);

/** A combination with its figures, margins and goals. */
export function combinedOf(problem: CombineProblem, options: ArrayLike<number>): Combined {
  const { dimensions, requirements, goals } = problem;
  const figures = requirements.map((one) => figureOf(problem, one, options));
  const margins = requirements.map((one, at) => marginOf(one, figures[at]!));
  const counted = margins.filter((_, at) => canMove(requirements[at]!));
  return {
    index: indexOf(problem, options),
    options: dimensions.map((_, at) => options[at]!),
    figures,
    margins,
    goals: goals.map(({ values }) => values.reduce((sum, own, at) => sum + own[options[at]!]!, 0)),
    worst: Math.min(1, ...counted),
  };
}

/** Whether a combination keeps every requirement. */
export const keepsAll = ({ margins }: Pick<Combined, 'margins'>): boolean => margins.every((one) => one >= -SAME);

/** Group of each requirement, counted from 0 in the order in which they first appear. */
export function groupsOf({ requirements }: CombineProblem): readonly number[] {
  const seen = new Map<string, number>();
  return requirements.map(({ group }, at) => {
    const key = group === undefined ? `${at}` : `of ${group}`;
    if (!seen.has(key)) seen.set(key, seen.size);
    return seen.get(key)!;
  });
}
