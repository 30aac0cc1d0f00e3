/** One lobe as far as its readings tell it: fit of the whole lobe, readings that look wrong, curve and band. */
import { fitLobe, type LobeFit, type LobeOptions, type LobeShape, usualLobeOptions } from '../../calc/cam/index.js';
import { studentQuantile } from '../../calc/metrology/index.js';
import { type Angle, fromStep, type Length } from '../../quantity/index.js';
import type { LobeCurve, PlacedReading, SuspectReading } from './degreeing-model.js';
import { flanksOf } from './degreeing-pairs.js';
import { WHEEL_DOUBT } from './true-dead-centre.js';

export interface FittedLobe {
  readonly fit: LobeFit;
  readonly options: LobeOptions;
  /** Readings that made the curve, in the order of its residuals. */
  readonly used: readonly PlacedReading[];
}

/**
 * Whole-lobe fit at a checking lift; where the readings do not go down to it on both flanks, at the lowest lift that they do. Undefined while
 * there are too few. `readings` by rising angle.
 */
export function fitOf(
  readings: readonly PlacedReading[],
  checkingLift: number,
  flanks: LobeShape,
): FittedLobe | undefined {
  const own = fitAt(readings, checkingLift, flanks);
  const lowest = lowestOnBoth(readings);
  return own ?? (lowest !== undefined && lowest > checkingLift ? fitAt(readings, lowest, flanks) : undefined);
}

/** The fit at one lift; undefined where the readings do not reach it. */
export function fitAt(readings: readonly PlacedReading[], lift: number, flanks: LobeShape): FittedLobe | undefined {
  const lifts = readings.map((one) => one.lift as Length);
  if (!(Math.max(...lifts) > lift)) return undefined;
  const options = usualLobeOptions(lifts, lift as Length, flanks);
  const found = fitLobe({ angles: readings.map(({ angle }) => angle as Angle), lifts }, options);
  return found.ok
    ? { fit: found.value, options, used: readings.filter((one) => one.lift >= options.leastLift) }
    : undefined;
}

/** The curve may run a little over the lowest reading of a flank: the lift is taken so much of the peak above it. */
const ABOVE = 0.03;
function lowestOnBoth(readings: readonly PlacedReading[]): number | undefined {
  const { opening, closing } = flanksOf(readings);
  if (opening.length === 0 || closing.length === 0) return undefined;
  const least = (flank: readonly PlacedReading[]) => Math.min(...flank.map(({ lift }) => lift));
  const highest = Math.max(...readings.map(({ lift }) => lift));
  return Math.max(least(opening), least(closing)) + ABOVE * highest;
}

/** A reading of the lift to a hundredth of a millimetre: no fit knows a lift better than the indicator that read it. */
export const LIFT_DOUBT = fromStep(1e-5);
/** One lobe in twenty may have a reading called wrong that is not. */
const FALSE_ALARM = 0.05;
/** Less than this times what wheel and indicator leave in doubt is not wrong, however well the others agree. */
const PLAIN = 2;

/** Readings that the others do not bear out, the worst first (outside residuals against Student's distribution, as many tests as readings). */
export function suspectsOf(readings: readonly PlacedReading[], fitted: FittedLobe): readonly SuspectReading[] {
  const { fit, options, used } = fitted;
  const spare = used.length - options.terms - (options.flanks === 'alike' ? 1 : 0);
  if (fit.offOthers === undefined || spare < 2) return [];
  const limit = studentQuantile(1 - FALSE_ALARM / (2 * used.length), spare - 1);
  return used
    .flatMap((reading, at): readonly SuspectReading[] => {
      const deviations = fit.offOthers![at]!;
      const off = fit.residuals[at]!;
      const plain = PLAIN * Math.hypot(LIFT_DOUBT, slopeAt(fit, reading.angle) * WHEEL_DOUBT);
      if (Math.abs(deviations) <= limit || Math.abs(off) <= plain) return [];
      const without = fitAt(
        readings.filter((one) => one !== reading),
        options.checkingLift,
        options.flanks,
      );
      return [{ reading, off, deviations, ...(without && { moves: without.fit.centreline - fit.centreline }) }];
    })
    .sort((a, b) => Math.abs(b.deviations) - Math.abs(a.deviations));
}

const STEP = 1e-4;
const slopeAt = ({ liftAt }: LobeFit, angle: number): number =>
  (liftAt(angle + STEP) - liftAt(angle - STEP)) / (2 * STEP);

const DEGREE = Math.PI / 180;
/** Degree by degree between the outermost readings that made it. */
export function curveOf({ fit }: FittedLobe): { readonly curve: LobeCurve; readonly band: readonly number[] } {
  const [first, last] = [fit.usedAngles[0]!, fit.usedAngles.at(-1)!];
  const steps = Math.max(1, Math.round((last - first) / DEGREE));
  const places = Array.from({ length: steps + 1 }, (_, at) => first + ((last - first) * at) / steps);
  const doubts = places.map(fit.doubtAt);
  return {
    curve: places.map((angle) => [angle / DEGREE, fit.liftAt(angle)]),
    band: doubts.flatMap((one) => one ?? []),
  };
}
