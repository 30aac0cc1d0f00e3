/** Least squares over every reading of a lobe. */
import { type Angle, done, type Length, type Outcome, refused } from '../../quantity/index.js';
import { type LinearFit, leastSquares, signChange } from '../numeric/index.js';
import type { LiftTable } from './lift-table.js';

export type LobeShape = 'alike' | 'unlike';

export interface LobeOptions {
  /** Whether both flanks are one curve seen in a mirror, or may differ. */
  readonly flanks: LobeShape;
  /** Lift at which duration and middle are taken. */
  readonly checkingLift: Length;
  /** Readings below this lift are left out: there the follower is on a ramp or on the base circle. */
  readonly leastLift: Length;
  /** Coefficients of the curve: powers 0, 2, 4 … of the angle when alike, 0, 1, 2 … when unlike. */
  readonly terms: number;
}
export interface LobeFit {
  readonly centreline: Angle;
  readonly opens: Angle;
  readonly closes: Angle;
  readonly duration: Angle;
  readonly peakLift: Length;
  readonly peakAngle: Angle;
  /** Measured minus fitted, by rising angle, with the angles of the readings that were used. */
  readonly usedAngles: readonly Angle[];
  readonly residuals: readonly Length[];
  /** Standard deviation of one reading about the curve; undefined without readings to spare. */
  readonly scatter: Length | undefined;
  /** Standard uncertainty of the centreline from that scatter. */
  readonly standardUncertainty: Angle | undefined;
  /** The same of the duration. */
  readonly durationUncertainty: Angle | undefined;
  /**
   * How far each reading lies off the curve that the others make, in standard deviations of that distance; undefined without two
   * readings to spare.
   */
  readonly offOthers: readonly number[] | undefined;
  /** Lift of the curve, good between the readings. */
  readonly liftAt: (angle: number) => Length;
  /** Standard uncertainty of that lift from the scatter; undefined without readings to spare. */
  readonly doubtAt: (angle: number) => Length | undefined;
  /** Share of the centreline's standard uncertainty that is left with one more reading at an angle. */
  readonly shareWith: (angle: number) => number;
}
export type LobeFault =
  | { readonly code: 'too-few-used'; readonly used: number; readonly needed: number }
  | { readonly code: 'undetermined' }
  | { readonly code: 'not-crossed'; readonly flank: 'opening' | 'closing' };

/** A curve with the effect of each of its unknowns on the lift at an angle. */
interface Fitted {
  readonly at: (angle: number) => number;
  readonly effects: (angle: number) => readonly number[];
  readonly fit: LinearFit;
}
const ROUNDS = 60;
const SETTLED = 1e-13;

/**
 * Centreline, duration and peak of a lobe from all its readings at once.
 *
 *   lift = Σ c i·T i(u),  u = (θ − centre)/half width,  T the Chebyshev polynomials
 *
 * | symbol | argument  | unit       | meaning                                                 |
 * |--------|-----------|------------|---------------------------------------------------------|
 * | θ      | `table`   | [rad], [m] | readings of one lobe, by rising angle, repeats allowed  |
 * |        | `options` |            | see `LobeOptions`                                       |
 *
 * With flanks alike only even powers stand in the sum and the centre is an unknown too, found by repeated
 * linearisation; with flanks that may differ all powers stand in it. The centreline is the middle of the duration at the checking lift. Its
 * standard uncertainty follows from the scatter about the curve and the covariance of the unknowns.
 * Refuses with `too-few-used`, `undetermined` (readings at too few angles, or all alike) or `not-crossed` (the readings do not go
 * down to the checking lift).
 * Assumes readings that scatter alike and independently, taken in one turning sense.
 * Source: derived; Gauss-Newton least squares and its covariance (Björck, section 9.2, from memory); a reading off the others and one
 * reading more by the update of that covariance (derived).
 */
export function fitLobe(table: LiftTable, options: LobeOptions): Outcome<LobeFit, LobeFault> {
  const used = highEnough(table, options.leastLift);
  const unknowns = options.terms + (options.flanks === 'alike' ? 1 : 0);
  if (used.angles.length < unknowns) {
    return refused({ code: 'too-few-used', used: used.angles.length, needed: unknowns });
  }
  const fitted = options.flanks === 'alike' ? fitAlike(used, options.terms) : fitUnlike(used, options.terms);
  if (!fitted) return refused({ code: 'undetermined' });
  const nose = noseOf(fitted, used.angles);
  const below = (angle: number) => fitted.at(angle) - options.checkingLift;
  const ends = flanksOf(below, reachOf(table, used), nose);
  return ends.ok ? done(described(used, fitted, nose, ends.value)) : ends;
}

function highEnough({ angles, lifts }: LiftTable, least: Length): LiftTable {
  const keep = lifts.map((lift) => lift >= least);
  return { angles: angles.filter((_, at) => keep[at]), lifts: lifts.filter((_, at) => keep[at]) };
}

/** Values of the Chebyshev polynomials 0 to `highest` at u. */
function chebyshev(highest: number, u: number): readonly number[] {
  const values = [1, u];
  while (values.length <= highest) values.push(2 * u * values.at(-1)! - values.at(-2)!);
  return values.slice(0, highest + 1);
}
const evens = (values: readonly number[]): readonly number[] => values.filter((_, at) => at % 2 === 0);

const columnsOf = (rows: readonly (readonly number[])[]): readonly (readonly number[])[] =>
  rows[0]!.map((_, at) => rows.map((row) => row[at]!));
const weighed = (weights: readonly number[], values: readonly number[]): number =>
  weights.reduce((sum, weight, at) => sum + weight * values[at]!, 0);

function fitUnlike({ angles, lifts }: LiftTable, terms: number): Fitted | undefined {
  const middle = (angles[0]! + angles.at(-1)!) / 2;
  const half = (angles.at(-1)! - angles[0]!) / 2;
  const effects = (angle: number) => chebyshev(terms - 1, (angle - middle) / half);
  const fit = leastSquares(columnsOf(angles.map(effects)), lifts);
  return fit && { at: (angle) => weighed(fit.coefficients, effects(angle)), effects, fit };
}

/** The centre stands as the last unknown; its effect is minus the slope of the curve. */
function fitAlike({ angles, lifts }: LiftTable, terms: number): Fitted | undefined {
  const half = (angles.at(-1)! - angles[0]!) / 2;
  let centre = (angles[0]! + angles.at(-1)!) / 2;
  let found: Fitted | undefined;
  for (let round = 0; round < ROUNDS; round += 1) {
    const shape = (angle: number, from: number) => evens(chebyshev(2 * terms - 2, (angle - from) / half));
    const from = centre;
    const plain = leastSquares(columnsOf(angles.map((angle) => shape(angle, from))), lifts);
    if (!plain) return undefined;
    const at = (angle: number) => weighed(plain.coefficients, shape(angle, from));
    const effects = (angle: number) => [...shape(angle, from), -slopeOf(at, angle, half)];
    const fit = leastSquares(columnsOf(angles.map(effects)), lifts);
    if (!fit) return undefined;
    found = { at, effects, fit: { ...fit, residuals: plain.residuals, sum: plain.sum } };
    const step = fit.coefficients.at(-1)!;
    centre += Math.max(-half / 4, Math.min(half / 4, step));
    if (Math.abs(step) < SETTLED * half) break;
  }
  return found;
}

const SLOPE_STEP = 1e-5;
const slopeOf = (at: (angle: number) => number, angle: number, scale: number): number =>
  (at(angle + SLOPE_STEP * scale) - at(angle - SLOPE_STEP * scale)) / (2 * SLOPE_STEP * scale);

const LOOKS = 400;
/** Angle of the highest lift of the curve within the readings. */
function noseOf({ at }: Fitted, angles: readonly Angle[]): number {
  const [first, last] = [angles[0]!, angles.at(-1)!];
  const places = Array.from({ length: LOOKS + 1 }, (_, look) => first + ((last - first) * look) / LOOKS);
  const high = places.reduce((best, place) => (at(place) > at(best) ? place : best));
  const step = (last - first) / LOOKS;
  return signChange((angle) => slopeOf(at, angle, last - first), high - step, high + step);
}

/**
 * How far the curve may be followed: to the first reading on either side that was too low to be used, for the lobe passes
 * the checking lift between that one and the last that was.
 */
function reachOf(table: LiftTable, { angles }: LiftTable): readonly [number, number] {
  const [first, last] = [angles[0]!, angles.at(-1)!];
  return [table.angles.findLast((one) => one < first) ?? first, table.angles.find((one) => one > last) ?? last];
}

function flanksOf(
  below: (angle: number) => number,
  [first, last]: readonly [number, number],
  nose: number,
): Outcome<readonly [number, number], LobeFault> {
  const reach = (end: number): number | undefined => {
    const step = (end - nose) / LOOKS;
    for (let look = 1; look <= LOOKS; look += 1) {
      const at = nose + look * step;
      if (below(at) <= 0) return signChange(below, at - step, at);
    }
    return undefined;
  };
  const opens = reach(first);
  if (opens === undefined) return refused({ code: 'not-crossed', flank: 'opening' });
  const closes = reach(last);
  if (closes === undefined) return refused({ code: 'not-crossed', flank: 'closing' });
  return done([opens, closes]);
}

function described(used: LiftTable, fitted: Fitted, nose: number, [opens, closes]: readonly [number, number]): LobeFit {
  const spare = used.angles.length - fitted.fit.coefficients.length;
  const variance = spare > 0 ? fitted.fit.sum / spare : undefined;
  const wide = used.angles.at(-1)! - used.angles[0]!;
  /** How the place of an end moves with each unknown. */
  const moves = (end: number) => {
    const slope = slopeOf(fitted.at, end, wide);
    return fitted.effects(end).map((effect) => -effect / slope);
  };
  const [opening, closing] = [moves(opens), moves(closes)];
  const ofMiddle = opening.map((one, at) => (one + closing[at]!) / 2);
  const ofLength = opening.map((one, at) => closing[at]! - one);
  const doubt = (effect: readonly number[]) =>
    variance === undefined ? undefined : Math.sqrt(variance * shared(fitted.fit, effect, effect));
  return {
    centreline: ((opens + closes) / 2) as Angle,
    opens: opens as Angle,
    closes: closes as Angle,
    duration: (closes - opens) as Angle,
    peakLift: fitted.at(nose) as Length,
    peakAngle: nose as Angle,
    usedAngles: used.angles,
    residuals: fitted.fit.residuals as Length[],
    scatter: variance === undefined ? undefined : (Math.sqrt(variance) as Length),
    standardUncertainty: doubt(ofMiddle) as Angle | undefined,
    durationUncertainty: doubt(ofLength) as Angle | undefined,
    offOthers: offOthers(used, fitted, spare),
    liftAt: (angle) => fitted.at(angle) as Length,
    doubtAt: (angle) => doubt(fitted.effects(angle)) as Length | undefined,
    shareWith: (angle) => shareWith(fitted, ofMiddle, angle),
  };
}

/** aᵀ·C·b with the cofactor C of a fit. */
const shared = ({ cofactor }: LinearFit, a: readonly number[], b: readonly number[]): number =>
  weighed(
    a,
    cofactor.map((row) => weighed(row, b)),
  );

/** A reading that the curve cannot but go through tells nothing of itself. */
const FREE = 1e-9;

/**
 * v/(s′·√(1 − g)), g the weight that a reading has in its own place on the curve, s′ the scatter of the others:
 * s′² = (Σv² − v²/(1 − g))/(spare − 1).
 */
function offOthers({ angles }: LiftTable, { effects, fit }: Fitted, spare: number): readonly number[] | undefined {
  if (spare < 2) return undefined;
  return fit.residuals.map((off, at) => {
    const effect = effects(angles[at]!);
    const free = 1 - shared(fit, effect, effect);
    if (free < FREE) return 0;
    const others = Math.max(0, fit.sum - off ** 2 / free) / (spare - 1);
    return off === 0 ? 0 : off / Math.sqrt(others * free);
  });
}

/** One more reading with effect e takes (cᵀCe)²/(1 + eᵀCe) off cᵀCc. */
function shareWith({ effects, fit }: Fitted, ofMiddle: readonly number[], angle: number): number {
  const effect = effects(angle);
  const now = shared(fit, ofMiddle, ofMiddle);
  const taken = shared(fit, ofMiddle, effect) ** 2 / (1 + shared(fit, effect, effect));
  return Math.sqrt(Math.max(0, 1 - taken / now));
}
