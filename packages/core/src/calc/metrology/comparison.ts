/** A part compared with a standard of nearly the same length, temperatures and all. */

/** Values in the order of `comparisonLength`. */
export const COMPARISON_INPUTS = [
  'standard',
  'difference',
  'random',
  'systematic',
  'expansion',
  'expansionDifference',
  'temperature',
  'cyclic',
  'temperatureDifference',
] as const;

/**
 * Length of a part at the reference temperature from its difference to a standard.
 *
 *   l = (ls·(1 + αs·(θ + Δ + δθ)) + d + dr + ds)/(1 + (αs + δα)·(θ + Δ))
 *
 * ls standard, d mean difference part minus standard, dr and ds comparator effects, αs expansion of the standard, δα that of
 * the part minus αs, θ mean deviation of the part from the reference temperature, Δ its cyclic variation, δθ temperature of the
 * standard minus that of the part. SI.
 * Source: JCGM 100, example H.1 (inputs and model read in the data file GUM.H.1.rda).
 */
export function comparisonLength(x: readonly number[]): number {
  const [ls, d, dr, ds, as, da, theta, cyclic, dtheta] = x as readonly [
    number,
    number,
    number,
    number,
    number,
    number,
    number,
    number,
    number,
  ];
  const warm = theta + cyclic;
  return (ls * (1 + as * (warm + dtheta)) + d + dr + ds) / (1 + (as + da) * warm);
}
