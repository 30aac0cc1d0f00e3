import { done, type Length, type Outcome, refused } from '../../quantity/index.js';
import { toNm } from './nanometres.js';

export interface GasketInput {
  /** Protrusion of each piston above the block face, below zero when it stays under it. */
  readonly protrusions: readonly Length[];
  /** Largest protrusion of each grade, rising, and its fitted thickness. */
  readonly grades: readonly { readonly upTo: Length; readonly thickness: Length }[];
  /** Which figure chooses: the largest protrusion or the mean of all. */
  readonly basis: 'largest' | 'mean';
  /** A single piston this much above the figure that chooses asks for the next thicker grade; absent: no such rule. */
  readonly singleOver?: Length;
}
export interface GasketChoice {
  /** Counted from 0. */
  readonly grade: number;
  /** Figure that chose. */
  readonly deciding: Length;
  readonly largest: Length;
  readonly mean: Length;
  /** Whether a single piston made it the next thicker grade. */
  readonly raised: boolean;
  /** Fitted thickness less the largest protrusion: room between that piston and the head. */
  readonly room: Length;
  /** From the deciding figure to the nearest limit between two grades; absent with one grade. */
  readonly toNextGrade?: Length;
}
export type GasketFault =
  | { readonly code: 'grades-not-rising' }
  /** The thickest grade is not enough. */
  | { readonly code: 'above-all-grades'; readonly deciding: Length };

const rising = (values: readonly number[]): boolean => values.every((value, at) => at === 0 || value > values[at - 1]!);

/**
 * Grade of a cylinder head gasket from the protrusions of the pistons.
 *
 * | symbol | argument      | unit | meaning                                                           |
 * |--------|---------------|------|-------------------------------------------------------------------|
 * |        | `protrusions` | m    | one a piston (with two readings a piston: their mean)             |
 * |        | `grades`      | m    | `upTo` belongs to the grade; both columns rise                    |
 * |        | `basis`       |      | what the maker's table is entered with                            |
 * |        | `singleOver`  | m    | a piston more than this above the figure that chooses: one grade up |
 *
 * The thinnest grade that reaches is the exact optimum: every thinner one is below the figure. Refuses with
 * `grades-not-rising` or `above-all-grades`, which the rule for a single piston can cause too.
 * Example: 0.52, 0.56, 0.58 mm, largest, grades up to 0.55, 0.60: the second. Source: common practice, no source.
 */
export function gasketGrade(input: GasketInput): Outcome<GasketChoice, GasketFault> {
  const { protrusions, grades, basis, singleOver } = input;
  const limits = grades.map(({ upTo }) => toNm(upTo));
  if (!rising(limits) || !rising(grades.map(({ thickness }) => toNm(thickness))))
    return refused({ code: 'grades-not-rising' });
  const largest = Math.max(...protrusions) as Length;
  const mean = (protrusions.reduce((sum, one) => sum + one, 0) / protrusions.length) as Length;
  const deciding = basis === 'largest' ? largest : mean;
  const table = limits.findIndex((limit) => toNm(deciding) <= limit);
  const raised = singleOver !== undefined && toNm(largest) - toNm(deciding) > toNm(singleOver);
  const grade = table + (raised ? 1 : 0);
  if (table < 0 || grade >= grades.length) return refused({ code: 'above-all-grades', deciding });
  const borders = grades.slice(0, -1).map(({ upTo }) => Math.abs(deciding - upTo));
  return done({
    grade,
    deciding,
    largest,
    mean,
    raised,
    room: (grades[grade]!.thickness - largest) as Length,
    ...(borders.length > 0 && { toNextGrade: Math.min(...borders) as Length }),
  });
}
