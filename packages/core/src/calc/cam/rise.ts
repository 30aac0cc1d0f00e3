/** Standard curves that rise from 0 to 1. */

export const RISE_LAWS = ['harmonic', 'cycloidal', 'polynomial-3-4-5', 'polynomial-4-5-6-7'] as const;
export type RiseLaw = (typeof RISE_LAWS)[number];

/** Lift as a share of the rise, and its derivatives by the share of the angle. */
export interface RisePoint {
  readonly lift: number;
  readonly velocity: number;
  readonly acceleration: number;
}

/**
 * Rise, velocity and acceleration of a standard cam curve, in units of the rise L over the angle b.
 *
 *   harmonic (1 − cos πx)/2;  cycloidal x − sin(2πx)/2π;  3-4-5: 10x³ − 15x⁴ + 6x⁵;  4-5-6-7: 35x⁴ − 84x⁵ + 70x⁶ − 20x⁷
 *
 * x angle over b, 0 to 1. The harmonic curve starts and ends with a jump of acceleration: not for a valve seat.
 * Source: R. L. Norton; H. A. Rothbart, tables of the standard curves, from memory; derived again here.
 */
export function riseAt(law: RiseLaw, x: number): RisePoint {
  const turn = 2 * Math.PI;
  switch (law) {
    case 'harmonic':
      return {
        lift: (1 - Math.cos(Math.PI * x)) / 2,
        velocity: (Math.PI / 2) * Math.sin(Math.PI * x),
        acceleration: (Math.PI ** 2 / 2) * Math.cos(Math.PI * x),
      };
    case 'cycloidal':
      return {
        lift: x - Math.sin(turn * x) / turn,
        velocity: 1 - Math.cos(turn * x),
        acceleration: turn * Math.sin(turn * x),
      };
    case 'polynomial-3-4-5':
      return powers([10, -15, 6], 3, x);
    case 'polynomial-4-5-6-7':
      return powers([35, -84, 70, -20], 4, x);
  }
}

function powers(coefficients: readonly number[], first: number, x: number): RisePoint {
  const sum = (term: (n: number) => number) => coefficients.reduce((total, c, at) => total + c * term(first + at), 0);
  return {
    lift: sum((n) => x ** n),
    velocity: sum((n) => n * x ** (n - 1)),
    acceleration: sum((n) => n * (n - 1) * x ** (n - 2)),
  };
}

/**
 * Peak velocity (in L/b) and peak acceleration (in L/b²) of a standard curve, from its closed form.
 *
 * Example: 3-4-5 polynomial: 15/8 and 10/√3. Source: as `riseAt`; the extremes follow by hand.
 */
export function risePeaks(law: RiseLaw): { readonly velocity: number; readonly acceleration: number } {
  switch (law) {
    case 'harmonic':
      return { velocity: Math.PI / 2, acceleration: Math.PI ** 2 / 2 };
    case 'cycloidal':
      return { velocity: 2, acceleration: 2 * Math.PI };
    case 'polynomial-3-4-5':
      return { velocity: 15 / 8, acceleration: 10 / Math.sqrt(3) };
    case 'polynomial-4-5-6-7':
      return { velocity: 35 / 16, acceleration: (84 * Math.sqrt(5)) / 25 };
  }
}
