/** The three special functions that the distributions of metrology are made of. Plain numbers, no units. */

/** Coefficients for g = 7, nine terms: C. Lanczos, SIAM J. Numer. Anal. 1 (1964), values as in common use (from memory). */
const LANCZOS = [
  0.99999999999980993, 676.5203681218851, -1259.1392167224028, 771.32342877765313, -176.61502916214059,
  12.507343278686905, -0.13857109526572012, 9.9843695780195716e-6, 1.5056327351493116e-7,
] as const;
const LANCZOS_SHIFT = 7.5;

/**
 * Natural logarithm of the gamma function of x, x above 0.5 here. Relative error about 1e-15.
 * Source: C. Lanczos, 1964 (from memory); checked against factorials and √π.
 */
export function logGamma(x: number): number {
  const shifted = x - 1;
  const sum = LANCZOS.reduce((total, term, at) => total + (at === 0 ? term : term / (shifted + at)), 0);
  const base = shifted + LANCZOS_SHIFT;
  return 0.5 * Math.log(2 * Math.PI) + (shifted + 0.5) * Math.log(base) - base + Math.log(sum);
}

const MOST_STEPS = 20_000;
const SETTLED = 1e-16;
const TINY = 1e-300;

/**
 * Regularised incomplete beta function I(x; a, b), x in 0 to 1, a and b at least 0.5.
 *
 * By its continued fraction, on the side where that converges fast.
 * Source: NIST Digital Library of Mathematical Functions, 8.17.22 (from memory).
 */
export function incompleteBeta(x: number, a: number, b: number): number {
  if (x <= 0) return 0;
  if (x >= 1) return 1;
  const front = Math.exp(logGamma(a + b) - logGamma(a) - logGamma(b) + a * Math.log(x) + b * Math.log1p(-x));
  if (x < (a + 1) / (a + b + 2)) return (front * betaFraction(x, a, b)) / a;
  return 1 - (front * betaFraction(1 - x, b, a)) / b;
}

/** Continued fraction of the incomplete beta function, evaluated from the front (Lentz). */
function betaFraction(x: number, a: number, b: number): number {
  let above = 1;
  let below = 1 / awayFromZero(1 - ((a + b) * x) / (a + 1));
  let whole = below;
  for (let m = 1; m < MOST_STEPS; m += 1) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    let change = 1;
    for (const term of [even, odd]) {
      below = 1 / awayFromZero(1 + term * below);
      above = awayFromZero(1 + term / above);
      change = above * below;
      whole *= change;
    }
    if (Math.abs(change - 1) < SETTLED) break;
  }
  return whole;
}
/** Changes nothing but an exact 0, by which the fraction could not go on. */
const awayFromZero = (value: number): number => value + TINY;

/**
 * Regularised upper incomplete gamma function Q(a, x), a at least 0.5, x at least 0: 1 at x = 0, falling to 0.
 *
 * By the power series below x = a + 1 and the continued fraction above it.
 * Source: NIST Digital Library of Mathematical Functions, 8.7.1 and 8.9.2 (from memory).
 */
export function upperGamma(a: number, x: number): number {
  if (x <= 0) return 1;
  const front = Math.exp(a * Math.log(x) - x - logGamma(a));
  return x < a + 1 ? 1 - front * gammaSeries(a, x) : front * gammaFraction(a, x);
}

function gammaSeries(a: number, x: number): number {
  let term = 1 / a;
  let sum = term;
  for (let n = 1; n < MOST_STEPS && term > sum * SETTLED; n += 1) {
    term *= x / (a + n);
    sum += term;
  }
  return sum;
}

function gammaFraction(a: number, x: number): number {
  let step = x + 1 - a;
  let above = 1 / TINY;
  let below = 1 / awayFromZero(step);
  let whole = below;
  for (let n = 1; n < MOST_STEPS; n += 1) {
    const term = n * (a - n);
    step += 2;
    below = 1 / awayFromZero(step + term * below);
    above = awayFromZero(step + term / above);
    const change = above * below;
    whole *= change;
    if (Math.abs(change - 1) < SETTLED) break;
  }
  return whole;
}
