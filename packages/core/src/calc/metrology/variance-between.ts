/** One-way analysis of variance: do groups (days, people, gauges, bores) differ by more than their scatter? Any unit. */
import { fisherAbove } from './distributions.js';
import { mean, squaresAboutMean } from './repeats.js';

export interface VarianceBetween {
  readonly between: number;
  readonly betweenDegrees: number;
  readonly within: number;
  readonly withinDegrees: number;
  readonly f: number;
  /** Probability of an F as large by chance. */
  readonly chance: number;
}

/**
 * Sums of squares between and within groups, F and its probability. Two groups or more, more readings than groups. F is
 * infinite where groups differ and have no scatter.
 *
 * Readings are referred to their overall mean first, so that many constant leading digits do no harm.
 * Example: NIST StRD SmLs07: between 1.68 (8 degrees), within 1.80 (180), F 21. Source: textbook; NIST StRD (read).
 */
export function varianceBetween(groups: readonly (readonly number[])[]): VarianceBetween {
  const all = groups.flat();
  const whole = mean(all);
  const means = groups.map((group) => mean(group.map((one) => one - whole)));
  const centre = groups.reduce((sum, group, at) => sum + group.length * means[at]!, 0) / all.length;
  const between = groups.reduce((sum, group, at) => sum + group.length * (means[at]! - centre) ** 2, 0);
  const within = groups.reduce((sum, group) => sum + squaresAboutMean(group.map((one) => one - whole)), 0);
  const [betweenDegrees, withinDegrees] = [groups.length - 1, all.length - groups.length];
  const f = between / betweenDegrees / (within / withinDegrees);
  return { between, betweenDegrees, within, withinDegrees, f, chance: fisherAbove(f, betweenDegrees, withinDegrees) };
}
