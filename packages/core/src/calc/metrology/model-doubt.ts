/** Uncertainty of any formula, with the terms of second order that a plain budget leaves out. */

export interface ModelInput {
  readonly value: number;
  readonly standard: number;
}
export interface ModelDoubt {
  /** Change of the result for one standard uncertainty of each input. */
  readonly effects: readonly number[];
  /** First-order combined standard uncertainty. */
  readonly first: number;
  /** With the terms of second order. */
  readonly second: number;
}

/**
 * Standard uncertainty of f(x) for independent inputs, to first and to second order.
 *
 *   u₁² = Σ fᵢ²uᵢ²;  u₂² = u₁² + Σᵢⱼ (½·fᵢⱼ² + fᵢ·fᵢⱼⱼ)·uᵢ²uⱼ²
 *
 * Derivatives are differences over a tenth of a standard uncertainty each way. Holds for inputs with normal distributions.
 * Where a first derivative vanishes at the value (a coefficient difference of 0), only the second order sees the input.
 * Source: JCGM 100, 5.1.2 with its note, and note 2 of 5.1.3 (recalled).
 */
export function modelDoubt(f: (x: readonly number[]) => number, inputs: readonly ModelInput[]): ModelDoubt {
  const at = (...steps: readonly Step[]): number =>
    f(inputs.map(({ value, standard }, k) => value + STEP * standard * stepsOf(k, steps)));
  const across = (i: number, ...more: readonly Step[]): number => (at([i, 1], ...more) - at([i, -1], ...more)) / 2;
  const slopes = inputs.map((_, i) => across(i));
  const effects = slopes.map((one) => one / STEP);
  const first = Math.hypot(...effects);
  let extra = 0;
  inputs.forEach((_, i) => {
    inputs.forEach((_unused, j) => {
      const mixed = across(i, [j, 0.5]) - across(i, [j, -0.5]);
      const third = across(i, [j, 1]) - 2 * slopes[i]! + across(i, [j, -1]);
      extra += (mixed / STEP ** 2) ** 2 / 2 + (effects[i]! * third) / STEP ** 3;
    });
  });
  return { effects, first, second: Math.sqrt(Math.max(0, first ** 2 + extra)) };
}

/** Share of a standard uncertainty: small against the curvature, large against rounding. */
const STEP = 0.1;

/** An input by place, and how many standard uncertainties it moves. */
type Step = readonly [place: number, by: number];
const stepsOf = (place: number, steps: readonly Step[]): number =>
  steps.reduce((sum, [at, by]) => sum + (at === place ? by : 0), 0);
