/** Valve springs as their screen shows them: loads against what the lobe needs, rooms and margins, intake beside exhaust. */
import { type Answered, type AnsweredFigure, figure, springCurve, springOf } from '../../assess/index.js';
import { springPlot } from '../../drawing/plots/index.js';
import { type ValveKind, valveOfKey } from '../../engine/index.js';
import type { Bench } from '../bench.js';
import type { PlaceView, SubjectView } from '../combination-views.js';
import { worstVerdict } from '../finding-view.js';
import type { ShownIn } from '../measure-views.js';
import type { InputWish } from './inputs.js';
import { shownQuantity, systemOf } from './shown.js';
import { subjectView } from './subject.js';
import { answerOfSubject } from './subject-answers.js';
import type { Tried } from './tried.js';

export interface SpringsView extends SubjectView {
  readonly kind: ValveKind;
  /** Springs that were measured one by one; none where one answer holds for all. */
  readonly valves: readonly PlaceView[];
  /** The one of them that is shown; empty where there is none. */
  readonly valve: string;
}
export interface SpringsWish {
  readonly kind: ValveKind;
  /** Key of a valve of that kind; the worst of them where it is none. */
  readonly valve?: string;
  /** Only that spring, for the moment in which a hand moves a slider: the others are worked out when it rests. */
  readonly alone?: boolean;
}
const OF_KIND = [
  'spring-installed-height',
  'spring-shim',
  'spring-rate',
  'inner-spring-rate',
  'spring-seat-load',
  'spring-load-closed',
  'spring-load-closed-height',
  'spring-load-open',
  'spring-load-open-height',
  'spring-free-length',
  'spring-bind-height',
  'retainer-room',
  'lobe-lift',
  'lobe-duration',
  'lobe-fullness',
  'rocker-ratio',
  'valve-lash',
  'valve-mass',
  'retainer-mass',
  'spring-mass',
  'rocker-mass',
  'pushrod-mass',
  'lifter-mass',
  'spring-wire',
  'spring-mean-diameter',
  'spring-active-coils',
  'seat-load-least',
  'seat-load-most',
  'open-load-most',
  'bind-margin-least',
  'bind-margin-most',
  'retainer-room-least',
] as const;
/** A second curve shows how the need falls with the speed. */
const LOWER = 0.8;

/** Springs of one kind of valve at the highest speed asked for [rad/s inside]; without a valve named the one with the least margin is shown. */
export function springsView(bench: Bench, tried: Tried, wish: SpringsWish, shownIn: ShownIn): SpringsView {
  const { kind } = wish;
  const answered = answeredFor(bench, tried, wish);
  const own = answered.figures.filter((one) => one.kind === kind);
  const valves = valvesOf(own, shownIn);
  const valve = (valves.find(({ id }) => id === wish.valve) ?? worstOf(valves))?.id ?? '';
  const read = valveOfKey(valve);
  const speed = figure(tried, 'highest-speed')?.value;
  const curve = springCurve(tried, kind, speed === undefined ? [] : [speed, speed * LOWER]);
  const input = (key: string): InputWish => (read.ok ? { key: `${key}@${kind}`, at: read.value } : `${key}@${kind}`);
  return {
    ...subjectView(
      bench,
      tried,
      {
        id: 'springs',
        inputs: ['highest-speed', ...OF_KIND.map(input), 'follow-margin-least'],
        answered: { ...answered, figures: own },
        shown: (one: AnsweredFigure) => one.valve === undefined || one.valve === valve,
        plots: 'missing' in curve ? [] : [springPlot(curve, systemOf(shownIn))],
        missing: 'missing' in curve ? curve.missing : [],
      },
      shownIn,
    ),
    kind,
    valves,
    valve,
  };
}

function answeredFor(bench: Bench, tried: Tried, { kind, valve = '', alone = false }: SpringsWish): Answered {
  if (!alone) return answerOfSubject(bench, tried, 'springs')!;
  const read = valveOfKey(valve);
  return springOf(tried, kind, read.ok ? read.value : kind);
}

/** Each spring with figures of its own, with the worst verdict on it. */
function valvesOf(figures: readonly AnsweredFigure[], shownIn: ShownIn): readonly PlaceView[] {
  const keys = [...new Set(figures.flatMap(({ valve }) => valve ?? []))];
  return keys.map((valve) => {
    const own = figures.filter((one) => one.valve === valve);
    const load = own.find(({ key }) => key === 'seat-load');
    const verdicts = own.flatMap(({ verdict }) => verdict ?? []);
    return {
      id: valve,
      name: shortName(valve, keys),
      value: load === undefined ? '' : shownQuantity('force', load.value, shownIn),
      ...(verdicts.length > 0 && { verdict: worstVerdict(verdicts) }),
    };
  });
}
/** By its cylinder; where that has several of the kind, with its number among them. */
function shortName(valve: string, all: readonly string[]): string {
  const [cylinder, kind, index] = valve.split('-');
  const several = all.filter((one) => one.startsWith(`${cylinder}-${kind}-`)).length > 1;
  return several ? `${cylinder}, no. ${index}` : `${cylinder}`;
}
const worstOf = (valves: readonly PlaceView[]): PlaceView | undefined => {
  const worst = worstVerdict(valves.flatMap(({ verdict }) => verdict ?? []));
  return valves.find(({ verdict }) => verdict === worst) ?? valves[0];
};
