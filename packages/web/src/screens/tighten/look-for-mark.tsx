import type { MarkAnswer } from '@gudgeon/core/plan';
import { type Bench, proposeLook, type TightenView } from '@gudgeon/core/workbench';
import { AnswerButtons, answerActions } from '../../bench/index.js';
import { useActions } from '../../keys/index.js';
import type { Recorder } from '../../shell/index.js';

interface LookForMarkProps {
  readonly joint: string;
  readonly bench: Bench;
  readonly look: NonNullable<TightenView['look']>;
  readonly recorder: Recorder;
}

/** The record of an act was struck out; before it is offered again, the mark on the fastener is looked for. */
export function LookForMark({ joint, bench, look, recorder }: LookForMarkProps) {
  const actions = answerActions(look.answers, (answer) =>
    recorder.take(proposeLook(bench, joint, answer.id as MarkAnswer), answer.label),
  );
  const run = useActions(actions);
  return (
    <section className="stack" aria-live="polite">
      <p className="step-lead">{look.words}</p>
      <AnswerButtons answers={look.answers} actions={actions} run={run} />
    </section>
  );
}
