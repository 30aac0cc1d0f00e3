import type { Angle, Length } from '../../quantity/index.js';

/** Exponents of the three upper terms, each above 2 and unlike the others. */
export type Exponents = readonly [p: number, q: number, r: number];

/** Lobe of four terms, symmetric about its nose. */
export interface PolynomialLobe {
  readonly peakLift: Length;
  /** From the nose to where the lift ends [rad], in the sense (crank or cam) in which it is used. */
  readonly halfDuration: Angle;
  readonly exponents: Exponents;
}
/** Lift [m] with its first and second derivative for each radian. */
export interface LobePoint {
  readonly lift: number;
  readonly slope: number;
  readonly bend: number;
}

/**
 * Coefficients C2, Cp, Cq, Cr of the polynomial lobe h/L = 1 + C2·x² + Cp·x^p + Cq·x^q + Cr·x^r.
 *
 *   C2 = −pqr/((p−2)(q−2)(r−2)),  Cp = 2qr/((p−2)(q−p)(r−p)),  Cq = −2pr/((q−2)(q−p)(r−q)),  Cr = 2pq/((r−2)(r−p)(r−q))
 *
 * x angle from the nose over half duration; p, q, r above 2 and all different. Lift, slope, bend and the next derivative are
 * 0 at x = 1. A sum of four powers has at most three positive zeros of its slope (rule of signs), and all three lie at x = 1:
 * so each flank falls all the way and the lift is never negative.
 * Example: 6, 8, 10 give −2.5, 5, −5, 1.5. Source: D. A. Stoddart, 1953, class of curve from memory; derived here.
 */
export function lobeCoefficients([p, q, r]: Exponents): readonly [number, number, number, number] {
  return [
    (-p * q * r) / ((p - 2) * (q - 2) * (r - 2)),
    (2 * q * r) / ((p - 2) * (q - p) * (r - p)),
    (-2 * p * r) / ((q - 2) * (q - p) * (r - q)),
    (2 * p * q) / ((r - 2) * (r - p) * (r - q)),
  ];
}

/**
 * Lift, slope and bend of a polynomial lobe by angle from its nose [rad], for many angles: the coefficients are worked out once. All 0
 * beyond the half duration.
 *
 * Example: exponents 6, 8, 10 at half of the half duration: 0.43506 of the peak. Source: as `lobeCoefficients`.
 */
export function lobeCurve({ peakLift, halfDuration, exponents }: PolynomialLobe): (fromNose: number) => LobePoint {
  const [p, q, r] = exponents;
  const [c2, cp, cq, cr] = lobeCoefficients(exponents);
  const slopeScale = peakLift / halfDuration;
  const bendScale = peakLift / halfDuration ** 2;
  return (fromNose) => {
    const x = Math.abs(fromNose) / halfDuration;
    if (x >= 1) return { lift: 0, slope: 0, bend: 0 };
    const [atP, atQ, atR] = [cp * x ** (p - 2), cq * x ** (q - 2), cr * x ** (r - 2)];
    return {
      lift: peakLift * (1 + x * x * (c2 + atP + atQ + atR)),
      slope: Math.sign(fromNose) * slopeScale * x * (2 * c2 + p * atP + q * atQ + r * atR),
      bend: bendScale * (2 * c2 + p * (p - 1) * atP + q * (q - 1) * atQ + r * (r - 1) * atR),
    };
  };
}

/** `lobeCurve` at one angle. */
export const lobeAt = (lobe: PolynomialLobe, fromNose: number): LobePoint => lobeCurve(lobe)(fromNose);

/** Mean lift over the duration as a share of the peak: 1 + Σ C/(n + 1). Example: 0.46176 for 6, 8, 10. Source: integral. */
export function meanLiftShare(exponents: Exponents): number {
  const powers = [2, ...exponents];
  return lobeCoefficients(exponents).reduce((sum, c, at) => sum + c / (powers[at]! + 1), 1);
}
