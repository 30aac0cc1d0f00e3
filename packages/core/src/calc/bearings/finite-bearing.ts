import { type Angle, degrees, done, type Outcome, type Ratio, refused } from '../../quantity/index.js';
import { ECCENTRICITIES, FILM_COLUMNS, type FilmRow } from './film-table.js';

/** State of the film of a finite journal bearing, dimensionless. */
export interface FilmState {
  /** Eccentricity over radial clearance; the thinnest film is (1 − it)·c. */
  readonly eccentricity: Ratio;
  readonly number: Ratio;
  readonly attitude: Angle;
  readonly friction: Ratio;
  readonly flow: Ratio;
  readonly sideFlow: Ratio;
  readonly pressure: Ratio;
}

/** The film lies outside the rows of the table: so lightly loaded that it is nearly centred, or thinner than they reach. */
export interface OutsideTable {
  readonly code: 'lighter' | 'heavier';
  /** Sommerfeld number at that end of the table. */
  readonly number: Ratio;
}

/** Shortest bearing of the table. */
export const SHORTEST = 0.25;

/**
 * Weights of the four columns at a length over diameter x of 1/4 or more; at 1, 1/2 and 1/4 the printed column itself.
 * Source: interpolation formula printed with the table (from memory).
 */
function columnWeights(x: number): readonly [infinite: number, one: number, half: number, quarter: number] {
  const [a, b, c, cube] = [1 - x, 1 - 2 * x, 1 - 4 * x, x ** 3];
  return [(-a * b * c) / 8 / cube, (b * c) / 3 / cube, (-a * c) / 4 / cube, (a * b) / 24 / cube];
}

const FIELDS = ['number', 'attitude', 'friction', 'flow', 'sideFlow', 'pressure'] as const;

/** The rows of the table at one length, by eccentricity. */
function rowsAt(lengthToDiameter: Ratio): readonly FilmRow[] {
  const weights = columnWeights(lengthToDiameter);
  const columns = [FILM_COLUMNS.infinite, FILM_COLUMNS.one, FILM_COLUMNS.half, FILM_COLUMNS.quarter];
  return ECCENTRICITIES.map((_, at) => {
    const value = (field: keyof FilmRow) =>
      columns.reduce((sum, column, side) => sum + (weights[side] as number) * (column[at] as FilmRow)[field], 0);
    return Object.fromEntries(FIELDS.map((field) => [field, value(field)])) as unknown as FilmRow;
  });
}

/**
 * State of the film at an eccentricity ε from 0.1 to 0.97 and L/D from 1/4 upward (see `FILM_COLUMNS`).
 *
 * Between rows the Sommerfeld number and the friction are interpolated by their logarithms, the rest directly.
 * Refuses outside the rows. Error about 2 %.
 * Example: L/D 1, ε 0.6: S 0.121, (R/c)·f 3.22. Source: bibliography key `raimondi-boyd`.
 */
export function filmAtEccentricity(lengthToDiameter: Ratio, eccentricity: Ratio): Outcome<FilmState, OutsideTable> {
  const rows = rowsAt(lengthToDiameter);
  const last = ECCENTRICITIES.length - 1;
  if (!(eccentricity >= ECCENTRICITIES[0])) return outside('lighter', rows[0]);
  if (eccentricity > (ECCENTRICITIES[last] as number)) return outside('heavier', rows[last]);
  const cell = Math.max(
    1,
    ECCENTRICITIES.findIndex((one) => one >= eccentricity),
  );
  const [from, to] = [ECCENTRICITIES[cell - 1] as number, ECCENTRICITIES[cell] as number];
  return done(between(rows, cell, (eccentricity - from) / (to - from)));
}

/**
 * State of the film at a Sommerfeld number S: `filmAtEccentricity` the other way round. Same range and refusals.
 *
 * Example: L/D 1, S 0.135: ε 0.57, (R/c)·f 3.50. Source: bibliography key `raimondi-boyd`.
 */
export function filmAtNumber(lengthToDiameter: Ratio, number: Ratio): Outcome<FilmState, OutsideTable> {
  const rows = rowsAt(lengthToDiameter);
  const last = rows.length - 1;
  if (!(number <= (rows[0] as FilmRow).number)) return outside('lighter', rows[0]);
  if (number < (rows[last] as FilmRow).number) return outside('heavier', rows[last]);
  const cell = Math.max(
    1,
    rows.findIndex((row) => row.number <= number),
  );
  const [from, to] = [(rows[cell - 1] as FilmRow).number, (rows[cell] as FilmRow).number];
  return done(between(rows, cell, Math.log(number / from) / Math.log(to / from)));
}

const outside = (code: OutsideTable['code'], row: FilmRow | undefined) =>
  refused({ code, number: (row as FilmRow).number as Ratio });

/** State at a share of the way from the row before `cell` to the row at it. */
function between(rows: readonly FilmRow[], cell: number, share: number): FilmState {
  const [from, to] = [rows[cell - 1] as FilmRow, rows[cell] as FilmRow];
  const [low, high] = [ECCENTRICITIES[cell - 1] as number, ECCENTRICITIES[cell] as number];
  const straight = (a: number, b: number) => a + (b - a) * share;
  const byLogarithm = (a: number, b: number) => (a * (b / a) ** share) as Ratio;
  return {
    eccentricity: straight(low, high) as Ratio,
    number: byLogarithm(from.number, to.number),
    attitude: degrees(straight(from.attitude, to.attitude)),
    friction: byLogarithm(from.friction, to.friction),
    flow: straight(from.flow, to.flow) as Ratio,
    sideFlow: straight(from.sideFlow, to.sideFlow) as Ratio,
    pressure: straight(from.pressure, to.pressure) as Ratio,
  };
}
