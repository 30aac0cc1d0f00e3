import type { Answer } from '@gudgeon/core/workbench';
import type { Action } from '../keys/index.js';
import { ActButton } from './act-button.js';

interface AnswerButtonsProps {
  readonly answers: readonly Answer[];
  readonly actions: readonly Action[];
  readonly run: (name: string) => void;
}

/** The usual answers first; those that say something is wrong stand at least 13 mm away. */
export function AnswerButtons({ answers, actions, run }: AnswerButtonsProps) {
  const of = (unlike: boolean) =>
    answers
      .filter((answer) => answer.unlike === unlike)
      .flatMap((answer) => actions.find((a) => a.name === answer.id) ?? []);
  const wrong = of(true);
  return (
    <div className="answers">
      <div className="stack">
        {of(false).map((action) => (
          <ActButton key={action.name} action={action} run={run} />
        ))}
      </div>
      {wrong.length > 0 && (
        <div className="stack apart">
          {wrong.map((action) => (
            <ActButton key={action.name} action={action} run={run} second />
          ))}
        </div>
      )}
    </div>
  );
}
