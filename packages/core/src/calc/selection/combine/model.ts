/**
 * Choices that must hold together: one option of each dimension, and figures that are sums of what the options bring.
 * Plain numbers: a subject says what they mean.
 */

/** One thing to choose: a gasket, a cut, a place of the cam. */
export interface Dimension {
  readonly name: string;
  /** How many options it has. */
  readonly size: number;
}

/** What the options of one or more dimensions bring to a figure. */
export interface Term {
  /** Places of the dimensions in the problem. */
  readonly of: readonly number[];
  /** One value for each set of options, the last dimension named changing fastest. */
  readonly table: ArrayLike<number>;
}

/** How a sum is shown and limited, e.g. a clearance volume as a ratio. Must rise all the way or fall all the way. */
export interface Shown {
  readonly of: (sum: number) => number;
  readonly falling: boolean;
}

/**
 * A figure and the window that it must keep, ends included: shown(base + Σ terms). A figure that is not finite keeps nothing.
 *
 * Its margin is the distance to the nearer end over `scale`: negative outside. With half the width of the window as
 * scale, 1 is the middle.
 */
export interface Requirement {
  readonly name: string;
  readonly base: number;
  readonly terms: readonly Term[];
  readonly shown?: Shown;
  readonly low?: number;
  readonly high?: number;
  readonly scale: number;
  /** Requirements of one group stand and give way together, like one window for all cylinders; left out: by itself. */
  readonly group?: string;
}

/** What is to be small: whole numbers, by dimension and option, so that sums are exact. */
export interface CombineGoal {
  readonly name: string;
  readonly values: readonly (readonly number[])[];
}

/**
 * What a ranking looks at, first to last: goals by name, smaller first; `worst-margin`, the smallest margin as large as can
 * be; `all-margins`, their sum as large as can be. A margin counts as 1 at most, in millionths, and only where a choice moves it.
 */
export interface Ranking {
  readonly name: string;
  readonly by: readonly string[];
}
export const WORST_MARGIN = 'worst-margin';
export const ALL_MARGINS = 'all-margins';

export interface CombineProblem {
  readonly dimensions: readonly Dimension[];
  readonly requirements: readonly Requirement[];
  readonly goals: readonly CombineGoal[];
  readonly rankings: readonly Ranking[];
  /** How many combinations of each ranking are kept. */
  readonly keep: number;
}

export type CombineFault =
  | { readonly code: 'nothing-to-choose' }
  | { readonly code: 'no-options'; readonly dimension: string }
  | { readonly code: 'not-a-number'; readonly where: string }
  | { readonly code: 'table-size'; readonly where: string; readonly given: number; readonly needed: number }
  | { readonly code: 'window-upside-down'; readonly requirement: string; readonly low: number; readonly high: number }
  | { readonly code: 'scale-not-positive'; readonly requirement: string }
  | { readonly code: 'goal-not-whole'; readonly goal: string; readonly dimension: string }
  | { readonly code: 'unknown-goal'; readonly ranking: string; readonly goal: string }
  | { readonly code: 'keep-not-whole'; readonly given: number }
  | { readonly code: 'too-many'; readonly raw: number };

/** One combination: an option of each dimension, counted from 0, its figures and margins by requirement, its goals. */
export interface Combined {
  /** Place among all combinations, the last dimension changing fastest; ties are broken by it. */
  readonly index: number;
  readonly options: readonly number[];
  readonly figures: readonly number[];
  readonly margins: readonly number[];
  readonly goals: readonly number[];
  /** Smallest of the margins that a choice moves, at most 1. */
  readonly worst: number;
}

/** How far one end of a group's windows must give way. */
export interface Loosening {
  /** Place in the problem of the requirement that asks for most. */
  readonly requirement: number;
  readonly end: 'low' | 'high';
  /** Where that end would have to lie. */
  readonly to: number;
  /** How far that is from where it lies, as share of the requirement's scale. */
  readonly share: number;
}
/** Groups of requirements that must give way together, so that a combination is left. */
export interface Relaxation {
  /** One or both ends of each group. */
  readonly loosened: readonly Loosening[];
  /** Sum over the groups of the largest share in each. */
  readonly share: number;
  /** A combination that keeps all the others. */
  readonly combined: Combined;
}
