/** An uncertainty budget: contributions, correlation, effective degrees of freedom, expanded uncertainty. */
import { coverageFactor } from './coverage.js';

export interface BudgetLine {
  /** Standard uncertainty of the input, in its own unit, at least 0. */
  readonly standard: number;
  /** Change of the result for one unit of the input. */
  readonly sensitivity: number;
  /** Degrees of freedom of the standard uncertainty, above 0; infinite where it is taken as known exactly. */
  readonly degrees: number;
}

/** Two inputs that move together; places from 0. */
export interface Correlation {
  readonly one: number;
  readonly other: number;
  /** −1 to 1. */
  readonly coefficient: number;
}

export interface Budget {
  /** Contribution of each input in the unit of the result, with its sign. */
  readonly contributions: readonly number[];
  readonly combined: number;
  /** Share of the variance that each input has by itself; with correlations they need not add to 1. */
  readonly shares: readonly number[];
  readonly effectiveDegrees: number;
}

/**
 * Combined standard uncertainty and effective degrees of freedom.
 *
 *   u² = Σ (cᵢuᵢ)² + 2·Σ r·cᵢuᵢ·cⱼuⱼ;  ν = u⁴/Σ ((cᵢuᵢ)⁴/νᵢ)
 *
 * The rule for ν holds for independent inputs. Correlations that no set of inputs can have (u² below 0) give undefined.
 * Source: JCGM 100, 5.1.2, 5.2.2, G.4.1 (recalled).
 */
export function budgetOf(lines: readonly BudgetLine[], correlations: readonly Correlation[] = []): Budget | undefined {
  const contributions = lines.map((line) => line.sensitivity * line.standard);
  const own = contributions.map((one) => one ** 2);
  const alone = own.reduce((sum, one) => sum + one, 0);
  const shared = correlations.reduce(
    (sum, { one, other, coefficient }) => sum + 2 * coefficient * contributions[one]! * contributions[other]!,
    0,
  );
  const variance = alone + shared;
  if (variance < -alone * ROUNDING) return undefined;
  const combined = Math.sqrt(Math.max(0, variance));
  return {
    contributions,
    combined,
    shares: own.map((one) => (combined === 0 ? 0 : one / combined ** 2)),
    effectiveDegrees: effectiveDegrees(combined, lines, contributions),
  };
}
const ROUNDING = 1e-12;

function effectiveDegrees(combined: number, lines: readonly BudgetLine[], contributions: readonly number[]): number {
  const scaled = contributions.map((one) => (combined === 0 ? 0 : (one / combined) ** 4));
  const sum = scaled.reduce((total, one, at) => total + one / lines[at]!.degrees, 0);
  return sum === 0 ? Number.POSITIVE_INFINITY : 1 / sum;
}

/** Degrees of freedom as a table takes them: cut down to a whole number, 1 at least; infinite stays. */
export const wholeDegrees = (degrees: number): number => Math.max(1, Math.floor(degrees * (1 + ROUNDING)));

export interface Expanded {
  readonly coverage: number;
  readonly expanded: number;
}

/** Expanded uncertainty U = t(level, ν)·u with ν cut down to a whole number. Source: JCGM 100, G.6.4 (recalled). */
export function expand(combined: number, degrees: number, level: number): Expanded {
  const coverage = coverageFactor(level, wholeDegrees(degrees));
  return { coverage, expanded: coverage * combined };
}
