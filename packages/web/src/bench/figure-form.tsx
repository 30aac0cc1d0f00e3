import { type FormEvent, useId, useState } from 'react';

/** `taken` empties the field, `kept` leaves what was typed; else why it cannot be taken. */
export type Taken = 'taken' | 'kept' | { readonly fault: string };

interface FigureFormProps {
  readonly name: string;
  readonly button: string;
  /** What the button does, where its word alone could mean several. */
  readonly buttonName?: string;
  readonly take: (text: string) => Taken;
  /** Stands in the field until something else is typed. */
  readonly offered?: string;
  readonly hint?: string;
  readonly longest?: number;
}

/** One figure and the button that takes it, in a form that is read at arm's length from a desk. */
export function FigureForm({ name, button, buttonName, take, offered = '', hint, longest = 40 }: FigureFormProps) {
  const id = useId();
  const [typed, setTyped] = useState<string>();
  const [fault, setFault] = useState('');
  const text = typed ?? offered;
  const submit = (event: FormEvent) => {
    event.preventDefault();
    const taken = take(text);
    setFault(typeof taken === 'string' ? '' : taken.fault);
    if (taken === 'taken') setTyped(undefined);
  };
  return (
    <form className="field" onSubmit={submit} noValidate>
      <label htmlFor={id}>{name}</label>
      <div className="input-exact">
        <input
          id={id}
          className="input"
          inputMode="decimal"
          autoComplete="off"
          maxLength={longest}
          value={text}
          aria-describedby={`${id}-h ${id}-f`}
          aria-invalid={fault !== ''}
          onChange={(event) => setTyped(event.target.value)}
        />
        <button type="submit" className="button" {...(buttonName !== undefined && { 'aria-label': buttonName })}>
          {button}
        </button>
      </div>
      <span className="field-hint" id={`${id}-h`}>
        {hint}
      </span>
      <span className="field-fault" id={`${id}-f`} role="alert">
        {fault}
      </span>
    </form>
  );
}
