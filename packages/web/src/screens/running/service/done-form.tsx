import { type FormEvent, useId, useState } from 'react';
import type { RunningDesk } from '../use-running.js';
import { HOURS_ASKED, hoursTyped } from './hours-text.js';

interface DoneFormProps {
  readonly desk: RunningDesk;
  readonly what: string;
  /** Offered again: the hours that were noted last. */
  readonly hours: string;
}

/** Done, and at how many hours: the next time is counted from there. */
export function DoneForm({ desk, what, hours }: DoneFormProps) {
  const id = useId();
  const [typed, setTyped] = useState<string>();
  const [fault, setFault] = useState('');
  const text = typed ?? hours;
  const write = (event: FormEvent) => {
    event.preventDefault();
    const at = text.trim() === '' ? undefined : hoursTyped(text);
    if (text.trim() !== '' && at === undefined) {
      setFault(HOURS_ASKED);
      return;
    }
    setFault('');
    const data = { what, ...(at !== undefined && { hours: at }) };
    desk.recorder.record({ kind: 'service-done', data }, `Done: ${what}`);
  };
  return (
    <details className="fold done-form">
      <summary aria-label={`It is done: ${what}`}>It is done</summary>
      <form className="field" onSubmit={write} noValidate>
        <label htmlFor={id}>At how many hours</label>
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
            onChange={(event) => setTyped(event.target.value)}
          />
          <button type="submit" className="button" aria-label={`Record it as done: ${what}`}>
            Done
          </button>
        </div>
        <span className="field-fault" id={`${id}-f`} role="alert">
          {fault}
        </span>
      </form>
    </details>
  );
}
