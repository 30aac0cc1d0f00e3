/** Pushrod length: from a checking pushrod, from the half-lift rule, from trials. */
import type { Angle, Length, Ratio } from '../../quantity/index.js';
import { leastSquares } from '../numeric/index.js';

/** What changed, or will change, after the length for zero lash was measured; positive as said. */
export interface LengthChanges {
  /** Head higher over the block: thicker gasket; a cut of deck or head face is negative. */
  readonly headHigher: Length;
  /** Base circle of the lobe smaller in radius. */
  readonly baseCircleSmaller: Length;
  /** Valve tip higher over the spring seat, as after cutting the seat. */
  readonly tipHigher: Length;
  /** Rocker pivot higher over the head, as by a stand under a shaft. */
  readonly pivotHigher: Length;
}

/**
 * How much longer the pushrod must be after such changes, the lash staying as it was.
 *
 *   Δ = head + base circle + pivot·(1 + 1/R) − tip/R
 *
 * R `ratio`. The pivot and the valve tip rise with the head. A higher tip lets the arm turn about its pivot and the cup comes down;
 * a higher pivot takes the cup with it and turns the arm about the tip. Small angles. Source: derived (lever).
 */
export function lengthChange(changes: LengthChanges, ratio: Ratio): Length {
  const { headHigher, baseCircleSmaller, tipHigher, pivotHigher } = changes;
  return (headHigher + baseCircleSmaller + pivotHigher * (1 + 1 / ratio) - tipHigher / ratio) as Length;
}

/** What the gear is to have at rest: plunger below its stop (hydraulic), or lash at the valve (solid); the other is 0. */
export interface AtRest {
  readonly preload: Length;
  readonly lash: Length;
}

/**
 * Pushrod length from the length at which lash and preload are both nothing [m]: needed = zero lash + preload − lash/R.
 *
 * R `ratio` above 0. Source: derived (lever).
 */
export function neededLength(zeroLash: Length, { preload, lash }: AtRest, ratio: Ratio): Length {
  return (zeroLash + preload - lash / ratio) as Length;
}

/** Arms of a stud-mounted rocker, as in `RockerGeometry`. */
export interface StudRocker {
  readonly valveArm: Length;
  readonly valveArmAbove: Angle;
  readonly pushrodArm: Length;
  readonly pushrodArmBelow: Angle;
}
export interface HalfLift {
  /** Angle of the valve arm with the valve closed that puts it square at half lift. */
  readonly wanted: Angle;
  /** How much longer the pushrod must be, and how much higher the pivot comes to stand. */
  readonly longer: Length;
  readonly pivotHigher: Length;
}

/**
 * Pushrod that lets a stud-mounted rocker stand square to the stem at half lift.
 *
 *   sin α = L/(2·Rv);  pivot rises Rv·(sin α₀ − sin α);  longer = rise − Rp·(sin(β₀ + α − α₀) − sin β₀)
 *
 * L `lift` [m] net, below 2·Rv. The valve tip stays where it is while pivot and cup find new places. On a shaft the pivot
 * cannot rise: there the stand, not the pushrod, sets the angle. Stem and pushrod taken as parallel.
 * Source: half-lift rule, common practice; geometry derived.
 */
export function halfLiftPushrod(g: StudRocker, lift: Length): HalfLift {
  const wanted = Math.asin(lift / (2 * g.valveArm));
  const pivotHigher = g.valveArm * (Math.sin(g.valveArmAbove) - Math.sin(wanted));
  const below = g.pushrodArmBelow + wanted - g.valveArmAbove;
  const longer = pivotHigher - g.pushrodArm * (Math.sin(below) - Math.sin(g.pushrodArmBelow));
  return { wanted: wanted as Angle, longer: longer as Length, pivotHigher: pivotHigher as Length };
}

/**
 * Length at which a wear mark is narrowest, from trials: the vertex of the parabola through the narrowest and its neighbours.
 *
 * `lengths` ascending and `widths` [m], at least 3, the narrowest not at an end; otherwise undefined. The true curve is made of
 * two arcs, so the result is good to a part of the step between the trials. Source: parabola through three points.
 */
export function narrowestLength(lengths: readonly Length[], widths: readonly Length[]): Length | undefined {
  const best = widths.indexOf(Math.min(...widths) as Length);
  if (best <= 0 || best >= widths.length - 1) return undefined;
  const [a, b, c] = [lengths[best - 1]!, lengths[best]!, lengths[best + 1]!];
  const left = (widths[best]! - widths[best - 1]!) / (b - a);
  const right = (widths[best + 1]! - widths[best]!) / (c - b);
  return ((a + b) / 2 - (left * (c - a)) / (2 * (right - left))) as Length;
}

/** Offset for each unit of length below which the mark does not move: rounding of the fit. */
const STEADY = 1e-9;

/**
 * Length at which the wear mark is centred on the stem, from trials: where the straight line of least squares is 0.
 *
 * `lengths` and `offsets` of the mark from the middle of the stem [m], two or more. Undefined when the offset does not change
 * with the length. Source: straight line.
 */
export function centredLength(lengths: readonly Length[], offsets: readonly Length[]): Length | undefined {
  const fit = leastSquares([lengths.map(() => 1), lengths], offsets);
  if (!fit) return undefined;
  const [start, slope] = fit.coefficients as [number, number];
  return Math.abs(slope) < STEADY ? undefined : ((-start / slope) as Length);
}
