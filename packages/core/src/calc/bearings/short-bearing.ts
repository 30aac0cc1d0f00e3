import type { Angle, Ratio } from '../../quantity/index.js';

/**
 * Sommerfeld number of a short bearing: S·(L/D)² = (1 − ε²)²/(π·ε·√(π²·(1 − ε²) + 16·ε²)).
 *
 * ε `eccentricity` over radial clearance, above 0 and below 1; L/D `lengthToDiameter`, above 0. Closed form for very
 * short bearings: at L/D 0.5 and ε 0.8 it overstates the load 1.65 times. Indicative for an engine bearing.
 * Example: L/D 0.25, ε 0.6: 1.0005. Source: bibliography key `ocvirk`.
 */
export function shortBearingNumber(lengthToDiameter: Ratio, eccentricity: Ratio): Ratio {
  const square = eccentricity ** 2;
  const root = Math.sqrt(Math.PI ** 2 * (1 - square) + 16 * square);
  return ((1 - square) ** 2 / (Math.PI * eccentricity * root) / lengthToDiameter ** 2) as Ratio;
}

/** Attitude angle of a short bearing: tan φ = π·√(1 − ε²)/(4·ε) [rad]. Symbols and source as `shortBearingNumber`. */
export function shortBearingAttitude(eccentricity: Ratio): Angle {
  return Math.atan2(Math.PI * Math.sqrt(1 - eccentricity ** 2), 4 * eccentricity) as Angle;
}

const HALVINGS = 60;

/**
 * Eccentricity of a short bearing at a Sommerfeld number S above 0: `shortBearingNumber` solved by halving; it falls
 * all the way from ε = 0 to 1. Error below 1e-15. Source as `shortBearingNumber`.
 */
export function shortBearingEccentricity(lengthToDiameter: Ratio, number: Ratio): Ratio {
  let [low, high] = [0, 1];
  for (let step = 0; step < HALVINGS; step += 1) {
    const middle = (low + high) / 2;
    if (shortBearingNumber(lengthToDiameter, middle as Ratio) > number) low = middle;
    else high = middle;
  }
  return ((low + high) / 2) as Ratio;
}
