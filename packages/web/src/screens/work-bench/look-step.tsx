import type { WorkActView } from '@gudgeon/core/workbench';
import { useState } from 'react';
import { ActButton, Pick } from '../../bench/index.js';
import { type Action, useActions } from '../../keys/index.js';
import { usePerson } from '../../log/index.js';
import { Said } from '../../shell/index.js';
import { actName } from '../work/act-words.js';
import { lastChosen, noteChosen, offeredWords } from '../work/kept.js';
import type { WorkDesk } from '../work/use-work.js';
import { MethodPick } from './method-pick.js';
import { lookMethods } from './methods.js';
import { SaidWords } from './said-words.js';
import { usual } from './step.js';

const SEEN = ['as recorded', 'mark seen on each', 'same figure read'] as const;

interface LookStepProps {
  readonly act: WorkActView;
  readonly desk: WorkDesk;
  readonly looked: () => void;
}

/** A second look at a critical act: who, by what, and what was seen. The core says whether it counts, and as what. */
export function LookStep({ act, desk, looked }: LookStepProps) {
  const person = usePerson();
  const { given } = act;
  const methods = lookMethods(given?.method ?? '');
  const [looker, setLooker] = useState(person === given?.by ? '' : person);
  const [method, setMethod] = useState(methods[0] ?? '');
  const [seen, setSeen] = useState('');
  const people = [...new Set([...lastChosen('looker'), person])].slice(0, 4);
  const record = (result: 'good' | 'bad') => {
    noteChosen('looker', looker);
    noteChosen('seen', seen);
    const told = `Second look, ${actName(act)}: ${result === 'good' ? seen : `not good, ${seen}`}`;
    if (desk.wish({ kind: 'look', act: act.id, looker, method, result, seen }, told)) looked();
  };
  const good = usual('Good', () => record('good'));
  const bad: Action = { name: 'bad', label: 'Not good', keys: ['n'], available: true, run: () => record('bad') };
  const run = useActions([good, bad]);
  return (
    <div className="bench" data-look={act.id}>
      <section className="work-act">
        <p className="step-lead">Second look</p>
        {act.place !== '' && <p className="work-place">{act.place}</p>}
        <h2 className="work-does">{act.does}</h2>
        <p>
          Recorded: {given?.words}
          {given?.method ? `, ${given.method}` : ''} ({given?.by}, {given?.at})
        </p>
        <p className="field-hint">
          Another person may look at once. Alone it is looked at later, and by another way than{' '}
          {given?.method || 'before'}.
        </p>
      </section>
      <SaidWords name="Who looks" words={looker} set={setLooker} />
      <Pick name="People here" choices={people} chosen={looker} choose={setLooker} />
      <MethodPick name="By what" offered={methods} method={method} choose={setMethod} />
      <SaidWords name="What was seen" words={seen} set={setSeen} />
      <Pick name="Seen before" choices={offeredWords('seen', SEEN, 3)} chosen={seen} choose={setSeen} />
      <Said recorder={desk.recorder} />
      <ActButton action={good} run={run} />
      <div className="apart">
        <ActButton action={bad} run={run} second />
      </div>
    </div>
  );
}
