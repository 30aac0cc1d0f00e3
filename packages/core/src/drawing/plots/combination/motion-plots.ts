/** Plots of how a valve moves: lift, speed and acceleration over the crank. */
import type { ValveKind } from '../../../engine/index.js';
import { type DisplaySystem, formatNumber } from '../../../quantity/index.js';
import { axisOver, crankAxis } from '../axis.js';
import type { Curve, Plot, PlotMark } from '../plot.js';
import { extremesOf } from '../values.js';
import { degreesOf, type ReaderUnit, readerUnit, rpmText } from './reader-units.js';

/** Motion of one kind of valve; angles after the top of overlap [rad], SI. */
export interface MotionShown {
  readonly kind: ValveKind;
  readonly angles: ArrayLike<number>;
  readonly lifts: ArrayLike<number>;
  /** At the crank speed; absent where none is known. */
  readonly speeds?: ArrayLike<number>;
  readonly accelerations?: ArrayLike<number>;
}
/** One of the three, and in what it is read. */
interface Shown {
  readonly id: string;
  readonly title: string;
  readonly axis: string;
  readonly read: ReaderUnit;
  readonly rows: (motion: MotionShown) => ArrayLike<number> | undefined;
}

const LINES: Readonly<Record<ValveKind, Curve['line']>> = { intake: 'solid', exhaust: 'dashed' };
const STEP = 90;
/** Room over the curves for the name of their highest place. */
const OVER = 1.15;

const LIFT: Omit<Shown, 'read'> = { id: 'lift', title: 'Valve lift', axis: 'lift', rows: ({ lifts }) => lifts };

/** Lift and, where a crank speed [rad/s] is known, speed and acceleration, with one crank axis. */
export const motionPlots = (
  motions: readonly MotionShown[],
  speed: number | undefined,
  system: DisplaySystem,
): readonly Plot[] => [liftPlot(motions, system), ...speedPlots(motions, speed, system)];

/** Lift alone, which no crank speed changes. */
export const liftPlot = (motions: readonly MotionShown[], system: DisplaySystem): Plot =>
  plotOf(motions, { ...LIFT, read: readerUnit('length', system) });

/** Speed and acceleration at a crank speed [rad/s]; none without one. */
export function speedPlots(
  motions: readonly MotionShown[],
  speed: number | undefined,
  system: DisplaySystem,
): readonly Plot[] {
  if (speed === undefined) return [];
  const at = `at ${rpmText(speed)}`;
  const moving: readonly Shown[] = [
    {
      id: 'speed',
      title: `Valve speed ${at}`,
      axis: 'speed',
      read: readerUnit('speed', system),
      rows: ({ speeds }) => speeds,
    },
    {
      id: 'acceleration',
      title: `Valve acceleration ${at}`,
      axis: 'acceleration',
      read: readerUnit('acceleration', system),
      rows: ({ accelerations }) => accelerations,
    },
  ];
  return moving.map((one) => plotOf(motions, one));
}

function plotOf(motions: readonly MotionShown[], { id, title, axis, read, rows }: Shown): Plot {
  const curves = motions.flatMap((motion): Curve | readonly [] => {
    const values = rows(motion);
    if (values === undefined) return [];
    return {
      id: `${id}-${motion.kind}`,
      name: motion.kind,
      axis: 'left',
      points: Array.from(motion.angles, (angle, n) => [degreesOf(angle), read.of(values[n]!)]),
      line: LINES[motion.kind],
    };
  });
  const xs = curves.flatMap(({ points }) => points.map(([x]) => x));
  const [from, to] =
    xs.length === 0
      ? [-STEP, STEP]
      : [Math.floor(Math.min(...xs) / STEP) * STEP, Math.ceil(Math.max(...xs) / STEP) * STEP];
  const ys = curves.flatMap(({ points }) => points.map(([, y]) => y));
  const highest = ys.length === 0 ? '' : ` The highest is ${formatNumber(Math.max(...ys), 2)} ${read.unit}.`;
  return {
    id: `motion-${id}`,
    title,
    description: `${title} over the crank for each kind of valve.${highest}`,
    x: crankAxis('crank after top of overlap', from, to),
    left: axisOver(axis, read.unit, ys, [0, OVER * Math.max(0, ...ys)]),
    curves,
    limits: [],
    marks: highestOf(curves),
  };
}

/** The highest place of all curves; names of more would cover each other on a phone. */
function highestOf(curves: readonly Curve[]): readonly PlotMark[] {
  const [first, ...others] = curves.flatMap((curve) => {
    const found = extremesOf(curve);
    return found === undefined ? [] : [found.highest];
  });
  if (first === undefined) return [];
  const [x, y] = others.reduce((best, one) => (one[1] > best[1] ? one : best), first);
  return [{ id: 'highest', name: 'highest', x, y, axis: 'left' }];
}
