import type { Area, Force, Length, Pressure, Ratio } from '../../quantity/index.js';

/** A round bar or tube under end load. */
export interface Column {
  readonly length: Length;
  readonly outside: Length;
  /** 0 for a solid bar. */
  readonly inside: Length;
  readonly modulus: Pressure;
  readonly yieldStrength: Pressure;
  /** End constant C: 1 both ends pinned, 2 one pinned and one fixed, 4 both fixed, 1/4 one fixed and one free. */
  readonly endConstant: Ratio;
}

export interface Buckling {
  readonly area: Area;
  readonly radiusOfGyration: Length;
  readonly slenderness: Ratio;
  /** Slenderness at which both formulas meet. */
  readonly transition: Ratio;
  readonly formula: 'Euler' | 'Johnson';
  readonly euler: Force;
  readonly johnson: Force;
  readonly critical: Force;
}

/**
 * Load at which a straight column buckles: Euler's hyperbola when slender, Johnson's parabola when stocky.
 *
 *   k = √(do² + di²)/4; transition √(2π²·C·E/Sy); Euler C·π²·E·A/(l/k)²; Johnson A·[Sy − (Sy·l/(2π·k))²/(C·E)]
 *
 * l [m] above 0, di < do [m], E and Sy [Pa] above 0, C above 0. Straight, centred load; a real one carries less.
 * Example: 7.80 in, 0.3125/0.1525 in, 30e6 psi, 70 ksi, C 1: l/k 89.7, Johnson, 2144 lbf.
 * Source: bibliography key `johnson-column`.
 */
export function buckling(column: Column): Buckling {
  const { length, outside, inside, modulus, yieldStrength, endConstant } = column;
  const area = (Math.PI / 4) * (outside ** 2 - inside ** 2);
  const radius = Math.hypot(outside, inside) / 4;
  const slenderness = length / radius;
  const transition = Math.sqrt((2 * Math.PI ** 2 * endConstant * modulus) / yieldStrength);
  const euler = (endConstant * Math.PI ** 2 * modulus * area) / slenderness ** 2;
  const bow = (yieldStrength * slenderness) / (2 * Math.PI);
  const johnson = area * (yieldStrength - bow ** 2 / (endConstant * modulus));
  const slender = slenderness > transition;
  return {
    area: area as Area,
    radiusOfGyration: radius as Length,
    slenderness: slenderness as Ratio,
    transition: transition as Ratio,
    formula: slender ? 'Euler' : 'Johnson',
    euler: euler as Force,
    johnson: johnson as Force,
    critical: (slender ? euler : johnson) as Force,
  };
}
