import { type FormEvent, useId, useState } from 'react';
import type { RunningDesk } from '../use-running.js';
import { HOURS_ASKED, hoursTyped } from './hours-text.js';

const EMPTY = { what: '', hours: '', date: '', from: '' };
type Planned = typeof EMPTY;

const FIELDS: readonly (readonly [keyof Planned, string, 'text' | 'date'])[] = [
  ['what', 'What is to be done', 'text'],
  ['hours', 'At running hours', 'text'],
  ['date', 'Or by this day', 'date'],
  ['from', 'Who asks for it', 'text'],
];

/** A reminder of one's own; under the name of a line of the sheet it takes that line's place. */
export function PlanForm({ desk }: { readonly desk: RunningDesk }) {
  const id = useId();
  const [plan, setPlan] = useState<Planned>(EMPTY);
  const [fault, setFault] = useState('');
  const write = (event: FormEvent) => {
    event.preventDefault();
    const hours = plan.hours.trim() === '' ? undefined : hoursTyped(plan.hours);
    const wrong =
      plan.what.trim() === ''
        ? 'Say what is to be done.'
        : plan.hours.trim() !== '' && hours === undefined
          ? HOURS_ASKED
          : plan.from.trim() === ''
            ? 'Say who asks for it: the maker, the part maker, yourself.'
            : '';
    setFault(wrong);
    if (wrong !== '') return;
    const data = {
      what: plan.what.trim(),
      ...(hours !== undefined && { dueHours: hours }),
      ...(plan.date !== '' && { dueDate: plan.date }),
      from: plan.from.trim(),
    };
    if (desk.recorder.record({ kind: 'service-planned', data }, `Planned: ${data.what}`)) setPlan(EMPTY);
  };
  return (
    <details className="fold">
      <summary>Plan something</summary>
      <form className="stack" onSubmit={write} noValidate>
        {FIELDS.map(([name, words, type]) => (
          <div key={name} className="field">
            <label htmlFor={`${id}-${name}`}>{words}</label>
            <input
              id={`${id}-${name}`}
              className="input"
              type={type}
              autoComplete="off"
              maxLength={100}
              value={plan[name]}
              aria-describedby={`${id}-f`}
              onChange={(event) => setPlan({ ...plan, [name]: event.target.value })}
            />
          </div>
        ))}
        <span className="field-fault" id={`${id}-f`} role="alert">
          {fault}
        </span>
        <button type="submit" className="button button-main">
          Plan it
        </button>
      </form>
    </details>
  );
}
