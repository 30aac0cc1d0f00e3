/** Plots of how a valve moves: lift, speed and acceleration over the crank. */
import type { ValveKind } from '../../../engine/index.js';
import { type DisplaySystem, formatNumber } from '../../../quantity/index.js';
import { axisOver, crankAxis } from '../axis.js';
import type { Curve, Plot } from '../plot.js';
import { degreesOf, readerUnit, rpmText } from './reader-units.js';

/** Motion of one kind of valve at a crank speed; angles after the top of overlap [rad], SI. */
export interface MotionShown {
  readonly kind: ValveKind;
  readonly angles: ArrayLike<number>;
  readonly lifts: ArrayLike<number>;
  readonly speeds: ArrayLike<number>;
  readonly accelerations: ArrayLike<number>;
}

const LINES: Readonly<Record<ValveKind, Curve['line']>> = { intake: 'solid', exhaust: 'dashed' };
const STEP = 90;
const G = 9.80665;

/** Three plots with one crank axis. Acceleration is told in standard gravities, which need no unit of length. */
export function motionPlots(motions: readonly MotionShown[], speed: number, system: DisplaySystem): readonly Plot[] {
  const length = readerUnit('length', system);
  const velocity = readerUnit('speed', system);
  const at = `at ${rpmText(speed)}`;
  return [
    plotOf(motions, 'lift', 'Valve lift', 'lift', length.unit, (one) => one.lifts, length.of),
    plotOf(motions, 'speed', `Valve speed ${at}`, 'speed', velocity.unit, (one) => one.speeds, velocity.of),
    plotOf(
      motions,
      'acceleration',
      `Valve acceleration ${at}`,
      'acceleration',
      'g',
      (one) => one.accelerations,
      (a) => a / G,
    ),
  ];
}

function plotOf(
  motions: readonly MotionShown[],
  id: string,
  title: string,
  axis: string,
  unit: string,
  series: (one: MotionShown) => ArrayLike<number>,
  of: (value: number) => number,
): Plot {
  const curves = motions.map((one): Curve => {
    const values = series(one);
    return {
      id: `${id}-${one.kind}`,
      name: one.kind,
      axis: 'left',
      points: Array.from(one.angles, (angle, n) => [degreesOf(angle), of(values[n]!)]),
      line: LINES[one.kind],
    };
  });
  const xs = curves.flatMap(({ points }) => points.map(([x]) => x));
  const [from, to] =
    xs.length === 0
      ? [-STEP, STEP]
      : [Math.floor(Math.min(...xs) / STEP) * STEP, Math.ceil(Math.max(...xs) / STEP) * STEP];
  const ys = curves.flatMap(({ points }) => points.map(([, y]) => y));
  const highest = ys.length === 0 ? '' : ` The highest is ${formatNumber(Math.max(...ys), 2)} ${unit}.`;
  return {
    id: `motion-${id}`,
    title,
    description: `${title} over the crank for each kind of valve.${highest}`,
    x: crankAxis('crank after top of overlap', from, to),
    left: axisOver(axis, unit, ys, [0]),
    curves,
    limits: [],
    marks: [],
  };
}
