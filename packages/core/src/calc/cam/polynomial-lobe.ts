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
 * Lift, slope and bend of a polynomial lobe at an angle from its nose [rad]; all 0 beyond the half duration.
 *
 * Example: exponents 6, 8, 10 at half of the half duration: 0.43506 of the peak. Source: as `lobeCoefficients`.
 */
export function lobeAt(lobe: PolynomialLobe, fromNose: number): LobePoint {
  const x = Math.abs(fromNose) / lobe.halfDuration;
  if (x >= 1) return { lift: 0, slope: 0, bend: 0 };
  const powers = [2, ...lobe.exponents];
  const terms = lobeCoefficients(lobe.exponents).map((c, at) => ({ c, n: powers[at]! }));
  const sum = (term: (c: number, n: number) => number) => terms.reduce((total, { c, n }) => total + term(c, n), 0);
  return {
    lift: lobe.peakLift * (1 + sum((c, n) => c * x ** n)),
    slope: (Math.sign(fromNose) * lobe.peakLift * sum((c, n) => c * n * x ** (n - 1))) / lobe.halfDuration,
    bend: (lobe.peakLift * sum((c, n) => c * n * (n - 1) * x ** (n - 2))) / lobe.halfDuration ** 2,
  };
}

/** Mean lift over the duration as a share of the peak: 1 + Σ C/(n + 1). Example: 0.46176 for 6, 8, 10. Source: integral. */
export function meanLiftShare(exponents: Exponents): number {
  const powers = [2, ...exponents];
  return lobeCoefficients(exponents).reduce((sum, c, at) => sum + c / (powers[at]! + 1), 1);
}
