import type { WorkBenchView, WorkOfferView } from '@gudgeon/core/workbench';
import { useEffect } from 'react';
import { say, sayAgain } from '../../bench/index.js';
import { useActions, useFromTop } from '../../keys/index.js';
import { actName } from '../work/act-words.js';
import { noteChosen } from '../work/kept.js';
import type { WorkDesk } from '../work/use-work.js';
import { ActHead } from './act-head.js';
import { ElsewhereStep, HelpElsewhere } from './elsewhere-step.js';
import { FeltStep } from './felt-step.js';
import { ListStep } from './list-step.js';
import { methodName } from './methods.js';
import { PhotoStep } from './photo-step.js';
import { RegisterStep } from './register-step.js';
import { SignStep } from './sign-step.js';
import type { StepProps } from './step.js';
import { ValueStep } from './value-step.js';

interface ActStepProps {
  readonly desk: WorkDesk;
  readonly view: WorkBenchView;
  readonly offer: WorkOfferView;
  readonly earlier: readonly string[];
  /** Tells that a hand is at work here. */
  readonly begin: () => void;
  /** After something was recorded. */
  readonly done: () => void;
}

/** One act and its answer. */
export function ActStep({ desk, view, offer, earlier, begin, done }: ActStepProps) {
  const { act } = offer;
  const prompt = [view.complete, view.spoken].filter((words) => words !== undefined).join(' ');
  // Said when the act appears; what was recorded before it has been read back by then.
  // biome-ignore lint/correctness/useExhaustiveDependencies: see above
  useEffect(() => say(prompt), [act.id]);
  useFromTop(act.id);
  useActions([{ name: 'say-again', label: 'Say it again', keys: ['r'], available: true, run: sayAgain }]);
  const give: StepProps['give'] = (answer, method, spoken, raw) => {
    noteChosen(methodName(act), method);
    if (desk.wish({ kind: 'done', act: act.id, answer, method }, `${actName(act)}: ${spoken}`, raw)) done();
  };
  return (
    <>
      <ActHead act={act} offer={offer} />
      {act.opens && !act.opens.answers && <HelpElsewhere job={desk.job} act={act} opens={act.opens} begin={begin} />}
      <Answer act={act} desk={desk} earlier={earlier} give={give} begin={begin} signed={done} />
    </>
  );
}

interface AnswerProps extends StepProps {
  readonly begin: () => void;
  readonly signed: () => void;
}
function Answer({ signed, begin, ...step }: AnswerProps) {
  const { act, desk } = step;
  if (act.opens?.answers) return <ElsewhereStep job={desk.job} act={act} opens={act.opens} begin={begin} />;
  switch (act.answer) {
    case 'value':
      return <ValueStep {...step} />;
    case 'photo':
      return <PhotoStep {...step} />;
    case 'register':
      return <RegisterStep {...step} />;
    case 'sign-off':
      return <SignStep desk={desk} signed={signed} />;
    case 'felt-or-seen':
      return <FeltStep {...step} />;
    case 'list':
    case 'worksheet':
    case 'joint-walk':
      return <ListStep {...step} />;
  }
}
