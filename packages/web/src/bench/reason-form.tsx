import { type FormEvent, useId, useState } from 'react';

interface ReasonFormProps {
  readonly button: string;
  readonly usual: readonly string[];
  readonly record: (reason: string) => void;
}

/** Words that are offered, room for own ones, and one act; without a reason nothing is recorded. */
export function ReasonForm({ button, usual, record }: ReasonFormProps) {
  const id = useId();
  const [reason, setReason] = useState('');
  const [fault, setFault] = useState('');
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (reason.trim() === '') {
      setFault('Say why; the reason stands in the record.');
      return;
    }
    record(reason.trim());
    setReason('');
    setFault('');
  };
  return (
    <form className="stack" onSubmit={submit} noValidate>
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
      <div className="field">
        <label htmlFor={id}>Reason</label>
        <input
          id={id}
          className="input"
          maxLength={200}
          value={reason}
          aria-describedby={`${id}-f`}
          aria-invalid={fault !== ''}
          onChange={(event) => setReason(event.target.value)}
        />
        <span className="field-fault" id={`${id}-f`} role="alert">
          {fault}
        </span>
      </div>
      <button type="submit" className="act act-second" data-bench-control={button}>
        {button}
      </button>
    </form>
  );
}
