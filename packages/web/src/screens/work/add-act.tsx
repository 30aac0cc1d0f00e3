import { type OperationView, operationView, type WorkWish } from '@gudgeon/core/workbench';
import { type FormEvent, useMemo, useState } from 'react';
import { ChoiceField, TextField } from '../../bench/index.js';
import { actName } from './act-words.js';
import type { WorkDesk } from './use-work.js';

type Added = Extract<WorkWish, { readonly kind: 'add' }>;
const ANSWERS: readonly (readonly [Added['answer'], string])[] = [
  ['felt-or-seen', 'What was felt or seen'],
  ['value', 'A figure'],
  ['photo', 'A photo'],
  ['list', 'A list'],
];
const ASKED: readonly (readonly [NonNullable<Added['asked']>, string])[] = [
  ['length', 'Length'],
  ['angle', 'Angle'],
  ['torque', 'Torque'],
  ['pressure', 'Pressure'],
  ['mass', 'Mass'],
  ['force', 'Force'],
  ['volume', 'Volume'],
  ['ratio', 'Ratio'],
  ['time', 'Time'],
  ['speed', 'Speed'],
  ['temperature', 'Temperature'],
  ['count', 'Number of pieces'],
];

interface AddActProps {
  readonly desk: WorkDesk;
  readonly operations: readonly OperationView[];
}

/** An act that this engine needs and the plan does not know. */
export function AddAct({ desk, operations }: AddActProps) {
  const [open, setOpen] = useState(false);
  return (
    <details id="add" className="card" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>Put an act into the plan</summary>
      {open && <AddForm desk={desk} operations={operations} />}
    </details>
  );
}

const NOTHING = { does: '', ask: '', minutes: '10', why: '' };
function AddForm({ desk, operations }: AddActProps) {
  const { bench } = desk;
  const [words, setWords] = useState(NOTHING);
  const [answer, setAnswer] = useState<Added['answer']>('felt-or-seen');
  const [asked, setAsked] = useState<NonNullable<Added['asked']>>('length');
  const [critical, setCritical] = useState(false);
  const [operation, setOperation] = useState(operations.find(({ finished }) => !finished)?.id ?? '');
  const [chosen, setAfter] = useState('');
  const [before, setBefore] = useState('');
  const acts = useMemo(
    () => (operationView(bench, operation)?.chunks ?? []).flatMap((chunk) => chunk.acts),
    [bench, operation],
  );
  const after = acts.some(({ id }) => id === chosen) ? chosen : (acts[0]?.id ?? '');
  const later = acts.slice(acts.findIndex(({ id }) => id === after) + 1);
  const set = (field: keyof typeof NOTHING) => (text: string) => setWords((now) => ({ ...now, [field]: text }));
  const submit = (event: FormEvent) => {
    event.preventDefault();
    const { does, ask, minutes, why } = words;
    const told: Added = {
      kind: 'add',
      after,
      ...(later.some(({ id }) => id === before) && { before }),
      does,
      ask,
      answer,
      ...(answer === 'value' && { asked }),
      minutes: Number(minutes.replace(',', '.')),
      critical,
      why,
    };
    if (desk.wish(told, `In the plan: ${does}`)) setWords(NOTHING);
  };
  return (
    <form className="stack" onSubmit={submit} noValidate>
      <TextField name="What the hand does" value={words.does} set={set('does')} />
      <TextField name="What is said or recorded then" value={words.ask} set={set('ask')} />
      <ChoiceField name="How it is answered" value={answer} choices={ANSWERS} set={setAnswer} />
      {answer === 'value' && <ChoiceField name="A figure of what" value={asked} choices={ASKED} set={setAsked} />}
      <ChoiceField
        name="In which operation"
        value={operation}
        choices={operations.map(({ id, title }) => [id, title] as const)}
        set={setOperation}
      />
      <ChoiceField
        name="After which act"
        value={after}
        choices={acts.map((act) => [act.id, actName(act)] as const)}
        set={setAfter}
      />
      <ChoiceField
        name="It must be done before"
        value={before}
        choices={[['', 'the work is signed'], ...later.map((act) => [act.id, actName(act)] as const)]}
        set={setBefore}
      />
      <TextField name="Minutes it takes" value={words.minutes} set={set('minutes')} figure />
      <label className="choice">
        <input type="checkbox" checked={critical} onChange={(event) => setCritical(event.target.checked)} />
        Somebody has to look a second time
      </label>
      <TextField name="Why it is needed" value={words.why} set={set('why')} />
      <button type="submit" className="button button-main">
        Put it into the plan
      </button>
    </form>
  );
}
