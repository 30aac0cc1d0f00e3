/** Shares and quantiles of the distributions that verdicts rest on. All pure functions of plain numbers. */
import { incompleteBeta, upperGamma } from './special-functions.js';

/** Share of the standard normal distribution below z. Source: definition by the incomplete gamma function. */
export function normalBelow(z: number): number {
  const tail = upperGamma(0.5, (z * z) / 2) / 2;
  return z > 0 ? 1 - tail : tail;
}

/** Share of Student's t below t; `degrees` above 0, infinite gives the normal. Source: NIST DLMF 8.17 (from memory). */
export function studentBelow(t: number, degrees: number): number {
  if (degrees === Number.POSITIVE_INFINITY) return normalBelow(t);
  const tail = incompleteBeta(degrees / (degrees + t * t), degrees / 2, 0.5) / 2;
  return t > 0 ? 1 - tail : tail;
}

/** Share of chi-square below x, x at least 0, `degrees` at least 1. Source: definition by the incomplete gamma function. */
export const chiSquareBelow = (x: number, degrees: number): number => 1 - upperGamma(degrees / 2, x / 2);

/** Share of Fisher's F above f, f at least 0. Source: definition by the incomplete beta function. */
export const fisherAbove = (f: number, between: number, within: number): number =>
  incompleteBeta(within / (within + between * f), within / 2, between / 2);

/** Share of F below f. */
export const fisherBelow = (f: number, between: number, within: number): number =>
  incompleteBeta((between * f) / (within + between * f), between / 2, within / 2);

/** z below which the share p of the normal distribution lies, p inside 0 to 1. */
export const normalQuantile = (p: number): number => evenQuantile(p, normalBelow);

/** t below which the share p lies, p inside 0 to 1; `degrees` at least 1 or infinite. */
export const studentQuantile = (p: number, degrees: number): number => evenQuantile(p, (t) => studentBelow(t, degrees));

/** x below which the share p of chi-square lies. */
export const chiSquareQuantile = (p: number, degrees: number): number =>
  positiveQuantile(p, (x) => chiSquareBelow(x, degrees));

/** f below which the share p of F lies. */
export const fisherQuantile = (p: number, between: number, within: number): number =>
  positiveQuantile(p, (f) => fisherBelow(f, between, within));

/** A distribution even about 0: the upper half is found, because small tails are exact only as tails. */
function evenQuantile(p: number, below: (x: number) => number): number {
  if (p === 0.5) return 0;
  const tail = Math.min(p, 1 - p);
  const size = positiveQuantile(1 - 2 * tail, (x) => 1 - 2 * below(-x));
  return p < 0.5 ? -size : size;
}

const HALVINGS = 200;

/** The x at least 0 at which a rising share reaches p, by doubling and then halving the bracket. */
function positiveQuantile(p: number, below: (x: number) => number): number {
  let high = 1;
  while (below(high) < p && high < Number.MAX_VALUE / 4) high *= 2;
  let low = 0;
  for (let step = 0; step < HALVINGS; step += 1) {
    const middle = (low + high) / 2;
    if (middle === low || middle === high) break;
    if (below(middle) < p) low = middle;
    else high = middle;
  }
  return high;
}
