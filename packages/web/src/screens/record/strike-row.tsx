import type { RecordRow } from '@gudgeon/core/workbench';
import { type FormEvent, useId, useState } from 'react';

interface StrikeRowProps {
  readonly row: RecordRow;
  readonly strike: (entry: string, reason: string) => boolean;
}
const usual = ['pressed by mistake', 'wrong figure', 'wrong place'] as const;

/** Strikes one row out: asked first, with a reason that stays beside the old value for ever. */
export function StrikeRow({ row, strike }: StrikeRowProps) {
  const id = useId();
  const [asked, setAsked] = useState(false);
  const [reason, setReason] = useState('');
  const [fault, setFault] = useState('');
  if (!asked)
    return (
      <button
        type="button"
        className="button strike-button not-printed"
        aria-label={`Strike out: ${row.what}, ${row.at}`}
        onClick={() => setAsked(true)}
      >
        Strike out
      </button>
    );
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (reason.trim() === '') setFault('Say why; a reason is needed here.');
    else strike(row.entry, reason.trim());
  };
  return (
    <form className="strike-form not-printed" onSubmit={submit} noValidate>
      <label htmlFor={id}>Why is this line wrong?</label>
      <div className="row">
        {usual.map((each) => (
          <button
            key={each}
            type="button"
            className="button"
            aria-pressed={reason === each}
            onClick={() => setReason(each)}
          >
            {each}
          </button>
        ))}
      </div>
      <input
        id={id}
        className="input"
        maxLength={200}
        autoComplete="off"
        value={reason}
        aria-describedby={`${id}-f`}
        aria-invalid={fault !== ''}
        onChange={(event) => setReason(event.target.value)}
      />
      <span id={`${id}-f`} className="field-fault" role="alert">
        {fault}
      </span>
      <div className="row">
        <button type="submit" className="button button-main">
          Strike it out
        </button>
        <button type="button" className="button strike-leave" onClick={() => setAsked(false)}>
          Leave it
        </button>
      </div>
    </form>
  );
}
