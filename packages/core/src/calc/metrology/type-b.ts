/** Standard uncertainty of what was not repeated but is known within bounds (Type B). Any unit. */
import { fromHalfWidth, fromStep, fromTriangle } from '../../quantity/index.js';
import { normalQuantile } from './distributions.js';

export type Shape = 'rectangular' | 'triangular' | 'u-shaped' | 'step' | 'trapezoidal' | 'expanded' | 'normal-limits';
export const SHAPES = [
  'rectangular',
  'triangular',
  'u-shaped',
  'step',
  'trapezoidal',
  'expanded',
  'normal-limits',
] as const satisfies readonly Shape[];

export interface Bounds {
  /** Half width ±a; for `step` the whole step; for `expanded` the expanded uncertainty. At least 0. */
  readonly bound: number;
  /** Top over base of a trapezoid, 0 (triangle) to 1 (rectangle). */
  readonly edgeRatio: number;
  /** Coverage factor of an expanded uncertainty, above 0. */
  readonly coverage: number;
  /** Share of readings within normal limits, inside 0 to 1. */
  readonly level: number;
}

/**
 * Standard uncertainty of a bound, in its unit.
 *
 *   rectangular a/√3, triangular a/√6, u-shaped a/√2, step s/√12, trapezoidal a·√((1 + β²)/6), expanded U/k, normal limits a/z
 *
 * Source: JCGM 100, 4.3.3 to 4.3.9 and F.2.2.1 (recalled).
 */
export function typeB(shape: Shape, { bound, edgeRatio, coverage, level }: Bounds): number {
  switch (shape) {
    case 'rectangular':
      return fromHalfWidth(bound);
    case 'triangular':
      return fromTriangle(bound);
    case 'u-shaped':
      return bound / Math.SQRT2;
    case 'step':
      return fromStep(bound);
    case 'trapezoidal':
      return bound * Math.sqrt((1 + edgeRatio ** 2) / 6);
    case 'expanded':
      return bound / coverage;
    case 'normal-limits':
      return bound / normalQuantile((1 + level) / 2);
  }
}
