/** Timing as its screen shows it: two turns of the crank with the time that each valve is open. */
import { type TimingAnswer, type TimingBasis, timingOf } from '../../assess/index.js';
import { timingDiagram } from '../../drawing/combination/index.js';
import type { Figure, Shown } from '../../drawing/index.js';
import { figureKey } from '../../engine/index.js';
import type { Bench } from '../bench.js';
import type { SubjectView } from '../combination-views.js';
import type { ShownIn } from '../measure-views.js';
import type { InputWish } from './inputs.js';
import { shownQuantity } from './shown.js';
import { subjectView } from './subject.js';
import type { Tried } from './tried.js';

export interface TimingView extends SubjectView {
  readonly figure: Figure;
}
const KINDS = ['intake', 'exhaust'] as const;
const INPUTS: readonly InputWish[] = [
  'cam-advance',
  ...(['centreline-wanted', 'lobe-duration', 'duration-at-lift'] as const).flatMap((key) =>
    KINDS.map((kind) => figureKey(key, kind)),
  ),
  'checking-lift',
];

export function timingView(bench: Bench, tried: Tried, shownIn: ShownIn, shown: Shown = {}): TimingView {
  const answered = timingOf(tried);
  const view = subjectView(bench, tried, { id: 'timing', inputs: INPUTS, answered, plots: [] }, shownIn);
  return { ...view, figure: figureOf(bench, answered, shownIn, shown) };
}

function figureOf(bench: Bench, { arcs, overlaps }: TimingAnswer, shownIn: ShownIn, shown: Shown): Figure {
  const first = arcs[0]?.basis;
  const overlap = overlaps.find(({ basis }) => basis === first);
  return timingDiagram(
    {
      title: `Valve timing of ${bench.engine.name}`,
      rotation: bench.engine.layout.rotation,
      arcs: arcs.map(({ kind, opens, closes, basis, lift }) => ({
        kind,
        opens,
        closes,
        basis: basisWords(basis, lift, shownIn),
      })),
      ...(overlap && { overlap }),
    },
    shown,
  );
}
const basisWords = (basis: TimingBasis, lift: number, shownIn: ShownIn): string =>
  basis === 'seat' ? 'from seat to seat' : `above ${shownQuantity('length', lift, shownIn)} at the lobe`;
