/** A subject put together for its screen. */
import type { Answered, AnsweredFigure, MissingFigure } from '../../assess/index.js';
import type { Plot } from '../../drawing/plots/index.js';
import type { Bench } from '../bench.js';
import type { SubjectId, SubjectView } from '../combination-views.js';
import { sourceLines } from '../finding-words.js';
import type { ShownIn } from '../measure-views.js';
import { answerRows } from './answers.js';
import { decidedView } from './decided-view.js';
import { type InputWish, inputViews } from './inputs.js';
import { SUBJECTS } from './subjects.js';
import type { Tried } from './tried.js';

export interface SubjectParts {
  readonly id: SubjectId;
  readonly inputs: readonly InputWish[];
  readonly answered: Answered;
  /** Which of the answered numbers stand on the screen; all where left out. */
  readonly shown?: (figure: AnsweredFigure) => boolean;
  readonly plots: readonly Plot[];
  /** Besides those of the answer. */
  readonly missing?: readonly MissingFigure[];
}

/** What the screen of a subject shows, from the figures that count with the scratch copy. */
export function subjectView(bench: Bench, tried: Tried, parts: SubjectParts, shownIn: ShownIn): SubjectView {
  const decided = decidedView(bench, shownIn);
  const { id, answered, plots } = parts;
  return {
    id,
    ...SUBJECTS[id],
    inputs: inputViews(tried, parts.inputs, shownIn),
    answers: answerRows(answered, shownIn, parts.shown),
    plots,
    missing: missingOf([...answered.missing, ...(parts.missing ?? [])]),
    working: answered.working,
    sources: sourceLines(answered.sources),
    assumed: answered.assumed,
    cautions: answered.cautions,
    ...(decided && { decided }),
  };
}

/** Each missing figure once, with everything that waits for it. */
export function missingOf(missing: readonly MissingFigure[]): SubjectView['missing'] {
  const found = new Map<string, { readonly title: string; readonly for: Set<string> }>();
  for (const { key, title, for: purpose } of missing) {
    const held = found.get(key) ?? { title, for: new Set<string>() };
    held.for.add(purpose);
    found.set(key, held);
  }
  return [...found].map(([key, one]) => ({ key, title: one.title, for: [...one.for].join('; ') }));
}
