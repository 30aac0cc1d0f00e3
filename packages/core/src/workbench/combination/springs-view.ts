/** Valve springs as their screen shows them: loads against what the lobe needs, rooms and margins, intake beside exhaust. */
import { type AnsweredFigure, figure, type MissingFigure, springCurve } from '../../assess/index.js';
import { springPlot } from '../../drawing/plots/index.js';
import type { ValveKind } from '../../engine/index.js';
import type { Bench } from '../bench.js';
import type { SubjectView } from '../combination-views.js';
import type { ShownIn } from '../measure-views.js';
import type { InputWish } from './inputs.js';
import { systemOf } from './shown.js';
import { subjectView } from './subject.js';
import { answerOfSubject } from './subject-answers.js';
import type { Tried } from './tried.js';

export interface SpringsView extends SubjectView {
  readonly kind: ValveKind;
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

export function springsView(bench: Bench, tried: Tried, kind: ValveKind, shownIn: ShownIn): SpringsView {
  const answered = answerOfSubject(bench, tried, 'springs')!;
  const speed = figure(tried, 'highest-speed')?.value;
  const curve = springCurve(tried, kind, speed === undefined ? [] : [speed, speed * LOWER]);
  const own = (one: AnsweredFigure): boolean => one.kind === kind;
  const lacking: readonly MissingFigure[] = 'missing' in curve ? curve.missing : [];
  return {
    ...subjectView(
      bench,
      tried,
      {
        id: 'springs',
        inputs: ['highest-speed', ...OF_KIND.map((key): InputWish => `${key}@${kind}`), 'follow-margin-least'],
        answered,
        shown: own,
        plots: 'missing' in curve ? [] : [springPlot(curve, systemOf(shownIn))],
        missing: lacking,
      },
      shownIn,
    ),
    kind,
  };
}
