/**
 * The four-stroke cycle counted in crank degrees, for questions that are whole numbers in degrees and would not be in
 * radians: dead centres, printed events, an inclusive margin. Fields and faults that hold such a figure say so.
 */
import { apart, wrapped } from '../../quantity/index.js';

export const CYCLE_DEGREES = 720;
/** Two angles nearer than this are the same place: a conversion from radians leaves about 1e-13. */
export const SAME = 1e-9;
const PLACES = 1e9;

/** Rounds away what conversions leave behind, so that equal places compare equal. */
export function snap(degrees: number): number {
  // Adding zero turns -0 into 0, which would otherwise show as "-0" on a screen.
  return Math.round(degrees * PLACES) / PLACES + 0;
}

/** Crank degrees of an angle in radians. */
export function crankDegrees(angle: number): number {
  return snap((angle * 180) / Math.PI);
}

/** The same crank position between 0 and below 720. */
export function wrap(degrees: number): number {
  return snap(wrapped(snap(degrees), CYCLE_DEGREES));
}

/** Whether two positions are the same place on the cycle; each may have been rounded once. */
export function samePlace(a: number, b: number): boolean {
  return apart(a, b, CYCLE_DEGREES) <= 2 * SAME;
}

/** Degrees in a sentence: thousandths at most, without zeros that say nothing. */
export const shownDegrees = (degrees: number): string => String(Math.round(degrees * 1000) / 1000);
