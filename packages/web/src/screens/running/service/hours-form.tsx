import type { Given } from '@gudgeon/core/workbench';
import { type FormEvent, useId, useState } from 'react';
import type { RunningDesk } from '../use-running.js';
import { HOURS_ASKED, hoursTyped } from './hours-text.js';

interface HoursFormProps {
  readonly desk: RunningDesk;
  readonly hours?: Given & { readonly text: string };
}

/** What the counter shows, or what is estimated. */
export function HoursForm({ desk, hours }: HoursFormProps) {
  const id = useId();
  const [text, setText] = useState('');
  const [fault, setFault] = useState('');
  const note = (event: FormEvent) => {
    event.preventDefault();
    const noted = hoursTyped(text);
    if (noted === undefined) {
      setFault(HOURS_ASKED);
      return;
    }
    setFault('');
    if (desk.recorder.record({ kind: 'hours-noted', data: { hours: noted } }, `Running hours: ${noted} h`, text))
      setText('');
  };
  return (
    <form className="field" onSubmit={note} noValidate>
      <label htmlFor={id}>
        Running hours now{hours ? ` (last noted: ${hours.text}, ${hours.by}, ${hours.at})` : ' (none noted yet)'}
      </label>
      <div className="input-exact">
        <input
          id={id}
          className="input"
          inputMode="decimal"
          autoComplete="off"
          maxLength={12}
          value={text}
          aria-describedby={`${id}-f`}
          aria-invalid={fault !== ''}
          onChange={(event) => setText(event.target.value)}
        />
        <button type="submit" className="button">
          Note it
        </button>
      </div>
      <span className="field-fault" id={`${id}-f`} role="alert">
        {fault}
      </span>
    </form>
  );
}
