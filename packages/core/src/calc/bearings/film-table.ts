/**
 * Finite-length journal bearing, full film with rupture: dimensionless results by length and eccentricity.
 *
 * Source: A. A. Raimondi and J. Boyd, 1958 (from memory, bibliography key `raimondi-boyd`). The infinite column and twelve
 * rows of the finite ones were solved again here by finite differences: the number agrees mostly within 2 %, within 3 % at
 * eccentricity 0.97, the attitude at 0.1 within 5°. The infinite bearing at 0.97 is from that solution.
 */
export interface FilmRow {
  /** Sommerfeld number. */
  readonly number: number;
  /** Attitude angle [deg] from the load line to the line of centres. */
  readonly attitude: number;
  /** Friction variable (R/c)·f. */
  readonly friction: number;
  /** Flow variable Q/(R·c·N·L). */
  readonly flow: number;
  /** Share of the flow that leaves at the ends. */
  readonly sideFlow: number;
  /** Mean over largest film pressure, P/pmax. */
  readonly pressure: number;
}

/** Eccentricity over radial clearance of the rows of each column. */
export const ECCENTRICITIES = [0.1, 0.2, 0.4, 0.6, 0.8, 0.9, 0.97] as const;

type Printed = readonly [number: number, attitude: number, friction: number, flow: number, side: number, p: number];
const rows = (printed: readonly Printed[]): readonly FilmRow[] =>
  printed.map(([number, attitude, friction, flow, sideFlow, pressure]) => ({
    number,
    attitude,
    friction,
    flow,
    sideFlow,
    pressure,
  }));

/** Columns by length over diameter. */
export const FILM_COLUMNS = {
  infinite: rows([
    [0.24, 69.1, 4.8, 3.03, 0, 0.826],
    [0.123, 67.26, 2.57, 2.83, 0, 0.814],
    [0.0626, 61.94, 1.52, 2.26, 0, 0.764],
    [0.0389, 54.31, 1.2, 1.56, 0, 0.667],
    [0.021, 42.22, 0.961, 0.76, 0, 0.495],
    [0.0115, 31.62, 0.756, 0.411, 0, 0.358],
    [0.0037, 18.22, 0.456, 0.116, 0, 0.197],
  ]),
  one: rows([
    [1.33, 79.5, 26.4, 3.37, 0.15, 0.54],
    [0.631, 74.02, 12.8, 3.59, 0.28, 0.529],
    [0.264, 63.1, 5.79, 3.99, 0.497, 0.484],
    [0.121, 50.58, 3.22, 4.33, 0.68, 0.415],
    [0.0446, 36.24, 1.7, 4.62, 0.842, 0.313],
    [0.0188, 26.45, 1.05, 4.74, 0.919, 0.247],
    [0.00474, 15.47, 0.514, 4.82, 0.973, 0.152],
  ]),
  half: rows([
    [4.31, 81.62, 85.6, 3.43, 0.173, 0.523],
    [2.03, 74.94, 40.9, 3.72, 0.318, 0.506],
    [0.779, 61.45, 17, 4.29, 0.552, 0.441],
    [0.319, 48.14, 8.1, 4.85, 0.73, 0.365],
    [0.0923, 33.31, 3.26, 5.41, 0.874, 0.267],
    [0.0313, 23.66, 1.6, 5.69, 0.939, 0.206],
    [0.00609, 13.75, 0.61, 5.88, 0.98, 0.126],
  ]),
  quarter: rows([
    [16.2, 82.31, 322, 3.45, 0.18, 0.515],
    [7.57, 75.18, 153, 3.76, 0.33, 0.489],
    [2.83, 60.86, 61.1, 4.37, 0.567, 0.415],
    [1.07, 46.72, 26.7, 4.99, 0.746, 0.334],
    [0.261, 31.04, 8.8, 5.6, 0.884, 0.24],
    [0.0736, 21.85, 3.5, 5.91, 0.945, 0.18],
    [0.0101, 12.22, 0.922, 6.12, 0.984, 0.108],
  ]),
} as const;
