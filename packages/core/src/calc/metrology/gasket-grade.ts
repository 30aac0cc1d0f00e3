/** Head gasket grade of a diesel from the protrusion of its pistons. */
import { atMost } from './decision.js';
import { mean } from './repeats.js';

export const GRADE_BASES = ['highest-reading', 'highest-piston-mean', 'mean-of-all'] as const;
export type GradeBasis = (typeof GRADE_BASES)[number];

/** The figure that chooses the grade, in the unit of the readings. */
export function gradeFigure(pistons: readonly (readonly number[])[], basis: GradeBasis): number {
  switch (basis) {
    case 'highest-reading':
      return Math.max(...pistons.flat());
    case 'highest-piston-mean':
      return Math.max(...pistons.map(mean));
    case 'mean-of-all':
      return mean(pistons.map(mean));
  }
}

/** Place of the first grade whose top (inclusive, ascending) is not below a figure, from 0; undefined beyond the last. */
export function gradeOf(figure: number, tops: readonly number[]): number | undefined {
  const at = tops.findIndex((top) => atMost(figure, top));
  return at < 0 ? undefined : at;
}

/** The grade, moved up by one where the highest reading passes the top of it by more than `allowance`. */
export function gradeWithAllowance(
  figure: number,
  highest: number,
  tops: readonly number[],
  allowance: number | undefined,
): number | undefined {
  const grade = gradeOf(figure, tops);
  if (grade === undefined || allowance === undefined || atMost(highest, tops[grade]! + allowance)) return grade;
  return grade + 1 < tops.length ? grade + 1 : undefined;
}
