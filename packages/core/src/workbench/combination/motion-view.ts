/** Valve motion as its screen shows it: lift, speed and acceleration over the crank at a chosen speed. */
import { figure, type Makeup, type MotionAnswer, motionOf } from '../../assess/index.js';
import { motionPlots, type Plot } from '../../drawing/plots/index.js';
import { figureKey } from '../../engine/index.js';
import type { Bench } from '../bench.js';
import type { SubjectView } from '../combination-views.js';
import type { ShownIn } from '../measure-views.js';
import { curvesRead, type LiftFrom, NOTHING_READ } from './cam-as-read.js';
import type { InputWish } from './inputs.js';
import { inputViews } from './inputs.js';
import { systemOf } from './shown.js';
import { subjectView } from './subject.js';
import { asIfSure, type Tried } from './tried.js';

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

function motionAt(bench: Bench, tried: Tried, makeup: Makeup, { speed, from }: MotionWish): MotionAnswer {
  const read = from === 'card' ? NOTHING_READ : curvesRead(bench, tried);
  return motionOf(makeup, { ...(speed !== undefined && { speed }), read });
}

/** Everything, doubts too: for figures that rest. */
export function motionView(bench: Bench, tried: Tried, shownIn: ShownIn, wish: MotionWish): MotionView {
  const answered = motionAt(bench, tried, tried, wish);
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

/** Plots and inputs alone, for figures that a slider moves: no doubt is worked out. */
export function motionMoving(
  bench: Bench,
  tried: Tried,
  shownIn: ShownIn,
  wish: MotionWish,
): Pick<MotionView, 'plots' | 'inputs'> {
  const answered = motionAt(bench, tried, asIfSure(tried), wish);
  return { plots: plotsOf(answered, shownIn, COARSE), inputs: inputViews(tried, INPUTS, shownIn) };
}

/** Outside of the lobe the valve stands still: a quarter turn of that is enough. */
function plotsOf({ motions, speed }: MotionAnswer, shownIn: ShownIn, every = 1): readonly Plot[] {
  const shown = motions.map(({ kind, angles, lifts, speeds, accelerations }) => {
    const open = lifts.findIndex((lift) => lift > 0);
    const closed = lifts.findLastIndex((lift) => lift > 0);
    const [from, to] = [Math.max(0, open - STILL), Math.min(angles.length, closed + STILL)];
    const cut = (row: Float64Array) => row.subarray(from, to).filter((_, at) => at % every === 0);
    return {
      kind,
      angles: cut(angles),
      lifts: cut(lifts),
      ...(speeds && accelerations && { speeds: cut(speeds), accelerations: cut(accelerations) }),
    };
  });
  return shown.length === 0 ? [] : motionPlots(shown, speed, systemOf(shownIn));
}
const STILL = 10;
/** While a slider moves every third degree is enough for the eye. */
const COARSE = 3;

/** Highest speed of the engine [rad/s], about which a speed is chosen; undefined where nobody says it. */
export const highestSpeed = (tried: Tried): number | undefined => figure(tried, 'highest-speed')?.value;
