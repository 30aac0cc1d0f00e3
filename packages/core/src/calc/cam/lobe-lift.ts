import type { Length } from '../../quantity/index.js';
import { lobeCoefficients, type PolynomialLobe } from './polynomial-lobe.js';

/**
 * Lift of a polynomial lobe by angle from its nose, for many angles: the coefficients are worked out once, and the three
 * powers share one logarithm (0 at the nose, where the logarithm is endless).
 *
 * The function takes [rad], answers [m]: the same as `lobeAt(lobe, angle).lift`. Source: as `lobeCoefficients`.
 */
export function lobeLift(lobe: PolynomialLobe): (fromNose: number) => Length {
  const { peakLift, halfDuration } = lobe;
  const [p, q, r] = lobe.exponents;
  const [c2, cp, cq, cr] = lobeCoefficients(lobe.exponents);
  return (fromNose) => {
    const x = Math.abs(fromNose) / halfDuration;
    if (x >= 1) return 0 as Length;
    const log = Math.log(x);
    const upper = cp * Math.exp(p * log) + cq * Math.exp(q * log) + cr * Math.exp(r * log);
    return (peakLift * (1 + c2 * x * x + upper)) as Length;
  };
}
