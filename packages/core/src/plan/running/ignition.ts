/** Where the posts of the cap, the rotor and the body stand, from firing order and running sense. */
import { CYCLE, type CylinderNumber, type Engine, firingDeadCentres, ONE_TURN } from '../../engine/index.js';
import { type Angle, done, type Outcome, refused, wrapped } from '../../quantity/index.js';

export type Sense = 'clockwise' | 'anticlockwise';
export interface CapPost {
  readonly cylinder: CylinderNumber;
  /** Turn of the distributor from the post of cylinder one, the way that the rotor runs [rad], in [0, 2π). */
  readonly past: Angle;
  /** Clockwise from the front of the engine, seen from above the cap [rad]; absent where the sheet does not place the first post. */
  readonly fromFront?: Angle;
}
export interface IgnitionPlan {
  /** In the order in which the rotor passes them. */
  readonly posts: readonly CapPost[];
  readonly rotor?: Sense;
  readonly even: boolean;
}
export type NoIgnitionPlan = { readonly code: 'no-spark' | 'not-in-sheet' | 'no-firing-order' };

/**
 * The posts of a distributor that turns once in two turns of the crank:
 *
 *   past(c) = d(c)/2
 *
 * d(c) crank angle of the firing dead centre of cylinder c from that of cylinder one [rad], in firing order. With firing at uneven intervals the
 * posts stand unevenly in the same way. Holds for four-stroke engines with one distributor for all cylinders.
 * Refuses a diesel (`no-spark`), a sheet without an ignition section (`not-in-sheet`) or without a firing order (`no-firing-order`).
 * Example: order 1-3-4-2, even: cylinder 3 at 90°, 4 at 180°, 2 at 270° past the post of cylinder one.
 * Source: definition of a distributor driven at half the speed of the crank.
 */
export function ignitionPlan(engine: Engine): Outcome<IgnitionPlan, NoIgnitionPlan> {
  if (engine.fuel === 'diesel') return refused({ code: 'no-spark' });
  const ignition = engine.running?.ignition;
  if (ignition === undefined) return refused({ code: 'not-in-sheet' });
  const centres = firingDeadCentres(engine.layout);
  if (!centres.ok) return refused({ code: 'no-firing-order' });
  const { rotor, postOfFirst } = ignition;
  const sense = rotor === 'anticlockwise' ? -1 : 1;
  const first = rotor === undefined ? undefined : postOfFirst?.value;
  const posts = [...centres.value]
    .sort(([, a], [, b]) => a - b)
    .map(([cylinder, at]): CapPost => {
      const past = distributorAngle(at);
      return { cylinder, past, ...(first !== undefined && { fromFront: wrapped(first + sense * past, ONE_TURN) }) };
    });
  return done({ posts, ...(rotor && { rotor }), even: engine.layout.firingIntervals === undefined });
}
/** Turn of the distributor [rad] for a turn of the crank [rad]: half of it. Source: four-stroke cycle of two turns. */
export const distributorAngle = (crank: Angle): Angle => (crank / 2) as Angle;

export interface BodyTurn {
  /** Of the distributor's body [rad], not negative. */
  readonly angle: Angle;
  readonly sense: Sense;
  /** The same on the crank [rad], + earlier. */
  readonly crank: Angle;
}
/**
 * How far and which way to turn the body so that the spark comes at `wanted` instead of `read`, both in crank degrees [rad] before dead centre.
 * Against the rotor the spark comes earlier, with it later; half as far as on the crank.
 * Example: rotor clockwise, 4° read, 8° wanted: 2° anticlockwise. Source: definition.
 */
export function bodyTurn(read: Angle, wanted: Angle, rotor: Sense): BodyTurn {
  const crank = (wanted - read) as Angle;
  const earlier = crank >= 0;
  const against: Sense = rotor === 'clockwise' ? 'anticlockwise' : 'clockwise';
  return { angle: distributorAngle(Math.abs(crank) as Angle), sense: earlier ? against : rotor, crank };
}

/**
 * What one tooth of the distributor's own gear does: turn of the distributor and of the crank [rad]. `teeth` is a whole number from 1.
 * Throws a RangeError on any other: a gear is no typed figure. Example: 13 teeth: 27.7° of the distributor, 55.4° of the crank. Source: definition.
 */
export function oneTooth(teeth: number): { readonly distributor: Angle; readonly crank: Angle } {
  if (!Number.isInteger(teeth) || teeth < 1) throw new RangeError(`a gear has a whole number of teeth, not ${teeth}`);
  return { distributor: (ONE_TURN / teeth) as Angle, crank: (CYCLE / teeth) as Angle };
}
