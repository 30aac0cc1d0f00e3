/** True top dead centre by a positive stop, and what repeated stops say of the wheel. */
import { topFromStop } from '../../calc/crank/index.js';
import { CYCLE, type CylinderNumber, firingDeadCentres, ONE_TURN, wrapped } from '../../engine/index.js';
import type { Angle } from '../../quantity/index.js';
import { fromHalfWidth } from '../../quantity/index.js';
import { told } from './answering.js';
import type { AnsweredFigure, Makeup } from './model.js';

/** Wheel readings at which a piston meets the same stop, one on either side of its highest place [rad]. */
export interface StopReading {
  readonly cylinder: CylinderNumber;
  readonly first: number;
  readonly second: number;
  /** Standard uncertainty of one wheel reading; left out: `WHEEL_DOUBT`. */
  readonly u?: number;
  readonly entry?: string;
}
/** A wheel of ordinary size and a wire pointer are read to a quarter of a degree either way (common practice, no source). */
export const WHEEL_DOUBT = fromHalfWidth(Math.PI / 180 / 4);

export interface DeadCentre {
  /** Wheel reading at the true top of cylinder `cylinder` [rad], within half a turn of 0. */
  readonly top: number;
  readonly u: number;
  readonly cylinder: CylinderNumber;
  /** How far the wheel must be turned to read 0 there. */
  readonly correction: number;
  /** What it then reads at the stop on each side, of each pair in turn. */
  readonly eachSide: readonly number[];
  /** Repeated pairs that do not agree: the wheel or the pointer moved, or the stop was not the same. */
  readonly slipped: boolean;
  readonly figures: readonly AnsweredFigure[];
  readonly working: readonly string[];
  readonly cautions: readonly string[];
}

const HALF_TURN = Math.PI;
const mean = (values: readonly number[]): number => values.reduce((sum, one) => sum + one, 0) / values.length;
/** Farther than this times its doubt is no scatter (k = 3). */
const BEYOND = 3;
/** A stop so near to the top that the piston hardly moves there. */
const FLAT = (10 * Math.PI) / 180;

/** An angle within half a turn of 0. */
export const aroundZero = (angle: number): number => {
  const round = wrapped(angle, ONE_TURN);
  return round > HALF_TURN ? round - ONE_TURN : round;
};

/** One pair; the wheel may count 0 to 360 or either way, and its zero may lie anywhere. */
function pairOf({ first, second, u = WHEEL_DOUBT }: StopReading) {
  const apart = aroundZero(second - first);
  const { trueTop, eachSide } = topFromStop(first as Angle, (first + apart) as Angle);
  return { top: aroundZero(trueTop), eachSide, u: u / Math.SQRT2 };
}

/**
 * What the wheel reads at true top dead centre, from one or several pairs of stop readings on one cylinder; undefined without any. Pairs count
 * alike. With repeats the doubt is that of their scatter where it is more than that of the wheel.
 */
export function trueDeadCentre(stops: readonly StopReading[]): DeadCentre | undefined {
  const [first] = stops;
  if (first === undefined) return undefined;
  const { cylinder } = first;
  const pairs = stops.filter((one) => one.cylinder === cylinder).map(pairOf);
  const offsets = pairs.map(({ top }) => aroundZero(top - pairs[0]!.top));
  const middle = mean(offsets);
  const top = aroundZero(pairs[0]!.top + middle);
  const reading = Math.hypot(...pairs.map(({ u }) => u)) / pairs.length;
  const scatter = Math.sqrt(
    offsets.reduce((sum, one) => sum + (one - middle) ** 2, 0) / Math.max(1, offsets.length - 1) / offsets.length,
  );
  const u = Math.max(reading, scatter);
  const eachSide = pairs.map(({ eachSide: one }) => one);
  const slipped = disagree(offsets, pairs) || disagree(eachSide, pairs);
  return {
    top,
    u,
    cylinder,
    correction: -top,
    eachSide,
    slipped,
    figures: figuresOf({ top, u, cylinder, eachSide }),
    working: workingOf(stops, pairs),
    cautions: cautionsOf(slipped, eachSide, stops),
  };
}

/** Whether values that should be one differ by more than their readings explain. */
function disagree(values: readonly number[], pairs: readonly { readonly u: number }[]): boolean {
  const most = Math.max(...pairs.map(({ u }) => u));
  return Math.max(...values) - Math.min(...values) > BEYOND * Math.SQRT2 * most;
}

function figuresOf({ top, u, cylinder, eachSide }: Pick<DeadCentre, 'top' | 'u' | 'cylinder' | 'eachSide'>) {
  const angle = { quantity: 'angle', cylinder, u } as const;
  return [
    { ...angle, key: 'wheel-at-top', name: 'wheel reads at true top dead centre', value: top },
    { ...angle, key: 'wheel-correction', name: 'turn the wheel by', value: -top },
    { ...angle, key: 'stop-each-side', name: 'then it reads at the stop, each side', value: mean(eachSide) },
  ];
}
const workingOf = (stops: readonly StopReading[], pairs: readonly { readonly top: number }[]): readonly string[] =>
  pairs.map(
    ({ top }, at) =>
      `stop at ${told('angle', stops[at]!.first)} and ${told('angle', stops[at]!.second)}: the middle reads ${told('angle', top)}`,
  );

function cautionsOf(slipped: boolean, eachSide: readonly number[], stops: readonly StopReading[]): readonly string[] {
  const others = stops.filter(({ cylinder }) => cylinder !== stops[0]!.cylinder);
  return [
    ...(slipped
      ? ['the pairs of stop readings do not agree: wheel, pointer or stop moved between them; find the top again']
      : []),
    ...(eachSide.some((one) => one < FLAT)
      ? ['the stop meets the piston within ten degrees of its top: a stop farther down tells the top better']
      : []),
    ...(others.length > 0 ? [`only the stop on cylinder ${stops[0]!.cylinder} counts`] : []),
  ];
}

/** Wheel reading at the top dead centre of overlap of another cylinder; undefined where the sheet does not print the firing order. */
export function wheelAtTopOf(makeup: Makeup, zero: Pick<DeadCentre, 'top' | 'cylinder'>, of: CylinderNumber) {
  const tops = firingDeadCentres(makeup.engine.layout);
  if (of === zero.cylinder) return zero.top;
  if (!tops.ok) return undefined;
  const [here, there] = [tops.value.get(zero.cylinder), tops.value.get(of)];
  return here === undefined || there === undefined ? undefined : zero.top + wrapped(there - here, CYCLE);
}
