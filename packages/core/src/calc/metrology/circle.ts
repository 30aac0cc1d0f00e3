/** Roundness from points: least-squares circle and minimum-zone circle. */
import { solve } from './linear-solve.js';
import { mean, spread } from './repeats.js';
import { smallestZone } from './smallest-zone.js';

export interface PlanePoints {
  readonly x: readonly number[];
  readonly y: readonly number[];
}
export interface Circle {
  readonly x: number;
  readonly y: number;
  readonly radius: number;
  /** Largest less smallest distance of a point from the centre: radial out-of-roundness. */
  readonly outOfRound: number;
}

const distances = ({ x, y }: PlanePoints, cx: number, cy: number): readonly number[] =>
  x.map((one, at) => Math.hypot(one - cx, y[at]! - cy));

const MOST_STEPS = 200;
/** Of the size of the points: moves below it are rounding. */
const SETTLED = 1e-13;

/**
 * Circle with the least sum of squared radial distances, from three or more points not on one line; undefined otherwise.
 *
 * Starts from the algebraic circle (x² + y² = 2ax + 2by + c) and refines by Gauss and Newton.
 * Example: 50 + 0.004·cos 3a + 0.02·cos a at 12 equal angles: R 50, centre 0.020, out-of-round 0.008.
 * Source: NIST e-Handbook 2.3.4.4 for the definition (read); textbook method.
 */
export function leastSquaresCircle(points: PlanePoints): Circle | undefined {
  const [xMean, yMean] = [mean(points.x), mean(points.y)];
  const reach = Math.max(spread(points.x), spread(points.y));
  if (!(reach > 0)) return undefined;
  const own = { x: points.x.map((one) => (one - xMean) / reach), y: points.y.map((one) => (one - yMean) / reach) };
  const start = leastSquares(
    own.x.map((one, at) => [1, one, own.y[at]!]),
    own.x.map((one, at) => one ** 2 + own.y[at]! ** 2),
  );
  if (!start) return undefined;
  let [cx, cy] = [start[1]! / 2, start[2]! / 2];
  for (let step = 0; step < MOST_STEPS; step += 1) {
    const move = leastSquares(directions(own, cx, cy), distances(own, cx, cy));
    if (!move) break;
    cx += move[1]!;
    cy += move[2]!;
    if (Math.hypot(move[1]!, move[2]!) < SETTLED) break;
  }
  return circleAbout(points, xMean + cx * reach, yMean + cy * reach);
}

/** Rows [1, cos, sin] of the directions in which the points are seen from a centre. */
function directions(points: PlanePoints, cx: number, cy: number): readonly (readonly number[])[] {
  const far = distances(points, cx, cy);
  return points.x.map((one, at) => {
    const away = far[at] || 1;
    return [1, (one - cx) / away, (points.y[at]! - cy) / away];
  });
}

function circleAbout(points: PlanePoints, x: number, y: number): Circle {
  const far = distances(points, x, y);
  return { x, y, radius: mean(far), outOfRound: spread(far) };
}

/** Normal equations of a few well-scaled columns. */
function leastSquares(rows: readonly (readonly number[])[], right: readonly number[]): readonly number[] | undefined {
  const columns = rows[0]!.map((_, k) => rows.map((row) => row[k]!));
  const dot = (a: readonly number[], b: readonly number[]) => a.reduce((sum, one, at) => sum + one * b[at]!, 0);
  return solve(
    columns.map((one) => columns.map((other) => dot(one, other))),
    columns.map((one) => dot(one, right)),
  );
}

const ZONE_STEPS = 60;
/** A step that gains less than this share of the zone is halved; the search ends with the smallest one. */
const NO_GAIN = 1e-9;
const SMALLEST_SHARE = 1 / 64;

/**
 * Centre from which the points lie between the two nearest concentric circles (ISO roundness), from a starting circle, usually
 * that of least squares. Never worse than the start.
 *
 * The zone is linear in a small move of the centre, so that each step is a linear programme; steps that do not help are halved.
 * Source: ISO 12181 (recalled) for the definition; method derived.
 */
export function minimumZoneCircle(points: PlanePoints, start: Circle): Circle {
  let best = start;
  let share = 1;
  const open = () => share >= SMALLEST_SHARE && best.outOfRound > SETTLED * best.radius;
  for (let step = 0; step < ZONE_STEPS && open(); step += 1) {
    const tried = betterCentre(points, best, share);
    if (!tried) break;
    const gain = best.outOfRound - tried.outOfRound;
    if (gain > 0) best = tried;
    if (gain <= NO_GAIN * best.outOfRound) share /= 2;
  }
  const far = distances(points, best.x, best.y);
  return { ...best, radius: (Math.max(...far) + Math.min(...far)) / 2 };
}

/** The circle about the centre that the linear programme proposes, gone to by a share of the way. */
function betterCentre(points: PlanePoints, from: Circle, share: number): Circle | undefined {
  const far = distances(points, from.x, from.y);
  const middle = (Math.max(...far) + Math.min(...far)) / 2;
  const scale = from.outOfRound;
  const rows = directions(points, from.x, from.y);
  const zone = smallestZone(
    rows,
    far.map((one) => (one - middle) / scale),
  );
  if (!zone) return undefined;
  const [, dx, dy] = zone.coefficients as [number, number, number];
  return circleAbout(points, from.x + share * scale * dx, from.y + share * scale * dy);
}
