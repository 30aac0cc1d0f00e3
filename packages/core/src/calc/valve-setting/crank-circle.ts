/** One four-stroke cycle in crank degrees. */
export const CYCLE = 720;
/** Two angles nearer than this are the same place: a conversion from radians leaves about 1e-13. */
export const SAME = 1e-9;
const PLACES = 1e9;

/** Rounds away what conversions leave behind, so that equal places compare equal. */
export function snap(degrees: number): number {
  // Adding zero turns -0 into 0, which would otherwise show as "-0" on a screen.
  return Math.round(degrees * PLACES) / PLACES + 0;
}

/** The same crank position between 0 and below 720. */
export function wrap(degrees: number): number {
  const forward = snap(((snap(degrees) % CYCLE) + CYCLE) % CYCLE);
  return forward === CYCLE ? 0 : forward;
}

/** Crank degrees of an angle in radians. */
export function crankDegrees(angle: number): number {
  return snap((angle * 180) / Math.PI);
}

/** Whether two positions are the same place on the cycle; each may have been rounded once. */
export function samePlace(a: number, b: number): boolean {
  const apart = wrap(a - b);
  return Math.min(apart, CYCLE - apart) <= 2 * SAME;
}
