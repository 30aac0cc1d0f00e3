/** Valve motion as its screen shows it: lift, speed and acceleration over the crank at a chosen speed. */
import { figure, type MotionAnswer, motionOf, motionsOf, type ReadCurves } from '../../assess/index.js';
import { liftPlot, type MotionShown, motionPlots, type Plot, speedPlots } from '../../drawing/plots/index.js';
import { figureKey } from '../../engine/index.js';
import type { DisplaySystem } from '../../quantity/index.js';
import type { Bench } from '../bench.js';
import type { SubjectView } from '../combination-views.js';
import type { ShownIn } from '../measure-views.js';
import { curvesRead, type LiftFrom, NOTHING_READ } from './cam-as-read.js';
import type { InputWish } from './inputs.js';
import { inputViews } from './inputs.js';
import { systemOf } from './shown.js';
import { subjectView } from './subject.js';
import type { Tried } from './tried.js';

export interface MotionWish {
  /** Crank speed [rad/s]; the highest of the engine where left out. */
  readonly speed?: number;
  /** Where the lift comes from; what was read where there is any. */
  readonly from?: LiftFrom;
}
export interface MotionView extends SubjectView {
  /** rad/s; absent where none is known. */
  readonly speed?: number;
  /** Kinds of lift that there are to choose from. */
  readonly from: LiftFrom;
  readonly canRead: boolean;
}
const KINDS = ['intake', 'exhaust'] as const;
const INPUTS: readonly InputWish[] = [
  'highest-speed',
  ...(
    [
      'lobe-lift',
      'lobe-duration',
      'lobe-fullness',
      'rocker-ratio',
      'valve-lash',
      'valve-arm',
      'valve-arm-above',
      'pushrod-arm',
      'pushrod-arm-below',
    ] as const
  ).flatMap((key) => KINDS.map((kind) => figureKey(key, kind))),
  'cam-advance',
];

const readOf = (bench: Bench, tried: Tried, { from }: MotionWish): ReadCurves =>
  from === 'card' ? NOTHING_READ : curvesRead(bench, tried);

/** Everything, doubts too: for figures that rest. */
export function motionView(bench: Bench, tried: Tried, shownIn: ShownIn, wish: MotionWish): MotionView {
  const { speed } = wish;
  const answered = motionOf(tried, { ...(speed !== undefined && { speed }), read: readOf(bench, tried, wish) });
  const read = curvesRead(bench, tried);
  const canRead = read.intake !== undefined || read.exhaust !== undefined;
  return {
    ...subjectView(
      bench,
      tried,
      { id: 'motion', inputs: INPUTS, answered, plots: plotsOf(answered, shownIn) },
      shownIn,
    ),
    ...(answered.speed !== undefined && { speed: answered.speed }),
    from: canRead && wish.from !== 'card' ? 'read' : 'card',
    canRead,
  };
}

/** Plots and inputs alone, for figures that a slider moves: no doubt is worked out, and no lift anew where only the speed moves. */
export function motionMoving(
  bench: Bench,
  tried: Tried,
  shownIn: ShownIn,
  wish: MotionWish,
): Pick<MotionView, 'plots' | 'inputs'> {
  const system = systemOf(shownIn);
  const { motions, lift } = standingOf(tried, readOf(bench, tried, wish), system);
  const speed = wish.speed ?? highestSpeed(tried);
  const plots = lift === undefined ? [] : [lift, ...speedPlots(shownMotions(motions, speed, COARSE), speed, system)];
  return { plots, inputs: inputViews(tried, INPUTS, shownIn) };
}

interface StandingMotion {
  readonly read: ReadCurves;
  readonly system: DisplaySystem;
  readonly motions: MotionAnswer['motions'];
  /** Absent where no lift is known. */
  readonly lift?: Plot;
}
/** The last one of each state of the figures: a slider of the speed asks for it with every step. */
const standing = new WeakMap<Tried, StandingMotion>();
function standingOf(tried: Tried, read: ReadCurves, system: DisplaySystem): StandingMotion {
  const known = standing.get(tried);
  if (known?.read === read && known.system === system) return known;
  const { motions } = motionsOf(tried, { read });
  const lift = motions.length === 0 ? undefined : liftPlot(shownMotions(motions, undefined, COARSE), system);
  const made = { read, system, motions, ...(lift && { lift }) };
  standing.set(tried, made);
  return made;
}

function plotsOf({ motions, speed }: MotionAnswer, shownIn: ShownIn): readonly Plot[] {
  return motions.length === 0 ? [] : motionPlots(shownMotions(motions, speed), speed, systemOf(shownIn));
}

/** Outside of the lobe the valve stands still: a little of that is enough. */
const shownMotions = (motions: MotionAnswer['motions'], speed: number | undefined, every = 1): readonly MotionShown[] =>
  motions.map(({ kind, angles, lifts, slopes, bends }) => {
    const open = lifts.findIndex((lift) => lift > 0);
    const closed = lifts.findLastIndex((lift) => lift > 0);
    const [from, to] = [Math.max(0, open - STILL), Math.min(angles.length, closed + STILL)];
    const count = Math.max(0, Math.ceil((to - from) / every));
    const cut = (row: Float64Array, factor = 1) =>
      Float64Array.from({ length: count }, (_, n) => row[from + n * every]! * factor);
    const moving = speed !== undefined && { speeds: cut(slopes, speed), accelerations: cut(bends, speed ** 2) };
    return { kind, angles: cut(angles), lifts: cut(lifts), ...moving };
  });
const STILL = 10;
/** While a slider moves every third degree is enough for the eye. */
const COARSE = 3;

/** Highest speed of the engine [rad/s], about which a speed is chosen; undefined where nobody says it. */
export const highestSpeed = (tried: Tried): number | undefined => figure(tried, 'highest-speed')?.value;
