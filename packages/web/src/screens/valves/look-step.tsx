import { lookAnswers, type ValveSettingView } from '@gudgeon/core/workbench';
import { useEffect } from 'react';
import { AnswerButtons, answerActions, say, sayAgain } from '../../bench/index.js';
import { useActions, useFromTop } from '../../keys/index.js';
import type { Desk } from './desk.js';

interface LookStepProps {
  readonly desk: Desk;
  readonly valve: ValveSettingView;
  readonly done: () => void;
}

/** After two turns: what is seen at this valve now, beside what was recorded when it was set. */
export function LookStep({ desk, valve, done }: LookStepProps) {
  const answers = lookAnswers(desk.bench.engine);
  useFromTop(valve.key);
  useEffect(() => say(`Look again at ${valve.place}`), [valve.place]);
  const actions = answerActions(answers, (answer) => {
    const data = { valve: valve.valve, result: answer.id === 'good' ? 'good' : 'bad', seen: answer.label } as const;
    if (!desk.recorder.record({ kind: 'valve-rechecked', data }, `${valve.place}: ${answer.label}`)) return;
    desk.began();
    done();
  });
  const run = useActions([
    ...actions,
    { name: 'again', label: 'Say it again', keys: ['r'], available: true, run: sayAgain },
  ]);
  return (
    <section className="bench" aria-live="polite" data-valve={valve.key}>
      <p className="step-lead">Look again at</p>
      <h2 className="valve-name" data-current-number>
        {valve.place}
      </h2>
      {valve.given && (
        <p>
          Set: {valve.given.words}{' '}
          <span className="soft">
            ({valve.given.by}, {valve.given.at})
          </span>
        </p>
      )}
      <AnswerButtons answers={answers} actions={actions} run={run} />
    </section>
  );
}
