import type { Length } from '../../quantity/index.js';
import { standardTolerance } from './iso-grades.js';
import { FINE_ENDS, MAIN_ENDS, rangeOf } from './iso-ranges.js';

/** Spreads a row by main ranges over the finer ranges. */
const byMain = (values: readonly number[]): readonly number[] =>
  FINE_ENDS.slice(1).map((end) => values[MAIN_ENDS.findIndex((main) => main >= end) - 1] as number);

/** Rows that start at 24 mm: no such deviation below. */
const NONE = Number.NaN;

/**
 * Upper deviations of shafts c to h, negative, and lower deviations of shafts k to x, positive [µm], by finer range.
 * Source: ISO 286-1 (from memory; p, s and r rows read in a copy of the national equivalent).
 */
const UPPER: Readonly<Record<string, readonly number[]>> = {
  c: [
    -60, -70, -80, -95, -95, -110, -110, -120, -130, -140, -150, -170, -180, -200, -210, -230, -240, -260, -280, -300,
    -330, -360, -400, -440, -480,
  ],
  d: byMain([-20, -30, -40, -50, -65, -80, -100, -120, -145, -170, -190, -210, -230]),
  e: byMain([-14, -20, -25, -32, -40, -50, -60, -72, -85, -100, -110, -125, -135]),
  f: byMain([-6, -10, -13, -16, -20, -25, -30, -36, -43, -50, -56, -62, -68]),
  g: byMain([-2, -4, -5, -6, -7, -9, -10, -12, -14, -15, -17, -18, -20]),
  h: byMain([0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0]),
};
const LOWER: Readonly<Record<string, readonly number[]>> = {
  k: byMain([0, 1, 1, 1, 2, 2, 2, 3, 3, 4, 4, 4, 5]),
  m: byMain([2, 4, 6, 7, 8, 9, 11, 13, 15, 17, 20, 21, 23]),
  n: byMain([4, 8, 10, 12, 15, 17, 20, 23, 27, 31, 34, 37, 40]),
  p: byMain([6, 12, 15, 18, 22, 26, 32, 37, 43, 50, 56, 62, 68]),
  r: [10, 15, 19, 23, 23, 28, 28, 34, 34, 41, 43, 51, 54, 63, 65, 68, 77, 80, 84, 94, 98, 108, 114, 126, 132],
  s: [14, 19, 23, 28, 28, 35, 35, 43, 43, 53, 59, 71, 79, 92, 100, 108, 122, 130, 140, 158, 170, 190, 208, 232, 252],
  t: [
    NONE,
    NONE,
    NONE,
    NONE,
    NONE,
    NONE,
    41,
    48,
    54,
    66,
    75,
    91,
    104,
    122,
    134,
    146,
    166,
    180,
    196,
    218,
    240,
    268,
    294,
    330,
    360,
  ],
  u: [
    18, 23, 28, 33, 33, 41, 48, 60, 70, 87, 102, 124, 144, 170, 190, 210, 236, 258, 284, 315, 350, 390, 435, 490, 540,
  ],
  x: [
    20, 28, 34, 40, 45, 54, 64, 80, 97, 122, 146, 178, 210, 248, 280, 310, 350, 385, 425, 475, 525, 590, 660, 740, 820,
  ],
};

/** Letters of shafts that are known here; holes take the same in capitals. */
export const LETTERS = [...Object.keys(UPPER), 'js', ...Object.keys(LOWER)] as const;

export interface Deviations {
  /** Lower and upper limit less the nominal size [µm]. */
  readonly lower: number;
  readonly upper: number;
}

/**
 * Limits of a shaft class such as h6, p6, s6, js7 about the nominal size [µm].
 *
 * `letter` of `LETTERS`, `grade` 1 to 18, `size` over 0 to 500 mm [m]; undefined where the class does not exist here.
 * k has no deviation outside grades 4 to 7.
 * Example: 40 p6: +26 to +42; 22 s6: +35 to +48. Source: ISO 286-1 and 286-2 (see the rows above).
 */
export function shaftDeviations(letter: string, grade: number, size: Length): Deviations | undefined {
  const width = standardTolerance(size, grade);
  const place = rangeOf(FINE_ENDS, size);
  if (width === undefined || place === undefined) return undefined;
  if (letter === 'js') return { lower: -width / 2, upper: width / 2 };
  const upper = UPPER[letter]?.[place];
  if (upper !== undefined) return { lower: upper - width, upper };
  const lower = letter === 'k' && !hasK(grade) ? 0 : LOWER[letter]?.[place];
  return lower === undefined || Number.isNaN(lower) ? undefined : { lower, upper: lower + width };
}

const hasK = (grade: number): boolean => grade >= 4 && grade <= 7;

/**
 * Limits of a hole class such as H7, N7, P7, JS8 about the nominal size [µm]; symbols as in `shaftDeviations`.
 *
 * C to H mirror the shaft letter. K, M and N up to grade 8 and P to X up to grade 7 are pulled by Δ = IT(n) − IT(n−1)
 * above 3 mm, so that H7/p6 and P7/h6 grip alike; coarser ones mirror. K above grade 8 does not exist, N above it
 * begins at 0.
 * Example: 20 H7: 0 to +21; 20 P7: −35 to −14. Source: rules of ISO 286-1 (from memory), M6 of 250 to 315 mm included.
 */
export function holeDeviations(letter: string, grade: number, size: Length): Deviations | undefined {
  const name = letter.toLowerCase();
  const width = standardTolerance(size, grade);
  const mirrored = shaftDeviations(name, kGrade(name, grade), size);
  if (width === undefined || mirrored === undefined) return undefined;
  if (name === 'js') return mirrored;
  if (UPPER[name]) return { lower: -mirrored.upper, upper: width - mirrored.upper };
  const upper = upperOfHole(name, grade, size, mirrored.lower, width);
  return upper === undefined ? undefined : { lower: upper - width, upper };
}

/** The printed deviation of k stands for all grades of the hole K. */
const kGrade = (name: string, grade: number): number => (name === 'k' ? 6 : grade);

const SMALLEST_WITH_DELTA = 0.003 * (1 + 1e-9);

function upperOfHole(name: string, grade: number, size: Length, shaftLower: number, width: number): number | undefined {
  const small = size <= SMALLEST_WITH_DELTA;
  const pulled = ['k', 'm', 'n'].includes(name) ? grade <= 8 : grade <= 7;
  if (name === 'k' && !pulled && !small) return undefined;
  if (name === 'n' && !pulled && !small) return 0;
  if (name === 'm' && grade === 6 && size > 0.25 * (1 + 1e-9) && size <= 0.315 * (1 + 1e-9)) return -9;
  const finer = standardTolerance(size, grade - 1);
  const delta = pulled && !small && finer !== undefined ? width - finer : 0;
  return delta - shaftLower;
}
