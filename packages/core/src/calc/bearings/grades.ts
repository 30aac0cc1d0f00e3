import type { Length } from '../../quantity/index.js';
import { type Agreement, agreement, oilClearance, type Sizes, worstCaseClearance } from './clearance.js';

/** A printed chart: ranges of bore and journal by mark 1, 2, 3 …, and of shell walls by the mark printed beside them. */
export interface GradeChart {
  readonly housings: readonly Sizes[];
  readonly journals: readonly Sizes[];
  readonly shells: readonly { readonly mark: number; readonly wall: Sizes }[];
  /** Shell mark = bore mark + journal mark + this. */
  readonly offset: number;
}

/** What a chart gives for one pair of marks. */
export interface ChartPair {
  readonly housing: number;
  readonly journal: number;
  readonly shell: number;
  /** Absent when no shell, or more than one, carries the mark. */
  readonly clearance?: Sizes;
  readonly verdict: Agreement | 'no such shell' | 'mark used twice';
}

/**
 * Checks a selection chart against the clearance printed beside it: every pair of marks, worst case [m].
 *
 * Each shell half has the same wall. A mark that stands beside two rows, or beside none, is a misprint as well.
 * Source: `worstCaseClearance` on every pair.
 */
export function checkChart(chart: GradeChart, printed: Sizes): readonly ChartPair[] {
  return chart.housings.flatMap((housing, h) =>
    chart.journals.map((journal, j): ChartPair => {
      const pair = { housing: h + 1, journal: j + 1, shell: h + j + 2 + chart.offset };
      const [shell, other] = chart.shells.filter(({ mark }) => mark === pair.shell);
      if (!shell) return { ...pair, verdict: 'no such shell' };
      if (other) return { ...pair, verdict: 'mark used twice' };
      const clearance = worstCaseClearance(housing, { upper: shell.wall, lower: shell.wall }, journal);
      return { ...pair, clearance, verdict: agreement(clearance, printed) };
    }),
  );
}

/** One row of a selection: the halves stay upper and lower, they are never sorted by thickness. */
export interface ShellGrade {
  readonly name: string;
  readonly upper: Sizes;
  readonly lower: Sizes;
}
export interface GradeClearance {
  readonly name: string;
  readonly least: Length;
  readonly middle: Length;
  readonly most: Length;
}

/**
 * Clearance that each grade of shells gives on a measured housing and journal [m]: at the middle and the ends of its
 * wall ranges. Symbols as in `oilClearance`.
 *
 * Example: H 64.0060, J 59.9640, walls 2.009..2.012 twice: 0.021 mm at the middle. Source: `oilClearance`.
 */
export function gradeClearances(
  housing: Length,
  journal: Length,
  grades: readonly ShellGrade[],
): readonly GradeClearance[] {
  return grades.map(({ name, upper, lower }) => ({
    name,
    least: oilClearance(housing, { upper: upper.high, lower: lower.high }, journal),
    middle: oilClearance(housing, { upper: middle(upper), lower: middle(lower) }, journal),
    most: oilClearance(housing, { upper: upper.low, lower: lower.low }, journal),
  }));
}

const middle = ({ low, high }: Sizes): Length => ((low + high) / 2) as Length;

/** The grade whose middle clearance comes nearest to a target [m]; of two as near the looser one. */
export function nearestGrade(found: readonly GradeClearance[], target: Length): GradeClearance | undefined {
  return found.toSorted((a, b) => apart(a, target) - apart(b, target) || b.middle - a.middle)[0];
}

/** Rounded to a nanometre, so that rounding does not part two grades that are equally near. */
const apart = (grade: GradeClearance, target: Length): number => Math.round(Math.abs(grade.middle - target) * 1e9);
