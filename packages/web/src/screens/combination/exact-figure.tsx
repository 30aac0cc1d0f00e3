import { type InputView, typedFigure } from '@gudgeon/core/workbench';
import { type FormEvent, useId, useState } from 'react';
import type { Hand } from './hand.js';

/** What a figure means and where it comes from; and a field that takes it to its last digit. */
export function ExactFigure({ input, hand }: { readonly input: InputView; readonly hand: Hand }) {
  const [open, setOpen] = useState(false);
  return (
    <details className="input-more" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>
        {input.choices ? 'What it is' : 'Exact figure'}
        <span className="only-read">: {input.title}</span>
      </summary>
      {open && (
        <div className="stack">
          <p className="field-hint">
            {input.meaning} {input.from === '' ? '' : `Now: ${input.from}.`}
          </p>
          {!input.choices && <ExactEntry input={input} hand={hand} />}
        </div>
      )}
    </details>
  );
}

function ExactEntry({ input, hand }: { readonly input: InputView; readonly hand: Hand }) {
  const id = useId();
  const [text, setText] = useState('');
  const [fault, setFault] = useState('');
  const take = (event: FormEvent) => {
    event.preventDefault();
    const typed = typedFigure(input.key, text, hand.shownIn);
    if (!typed.ok) {
      setFault(typed.fault);
      return;
    }
    hand.put(input.key, typed.value.value);
    setText('');
    setFault('');
  };
  return (
    <form className="field" onSubmit={take} noValidate>
      <label htmlFor={id}>
        {input.title}
        {input.unit === '' ? '' : `, ${input.unit}`}
      </label>
      <div className="input-exact">
        <input
          id={id}
          className="input"
          inputMode="decimal"
          autoComplete="off"
          maxLength={40}
          placeholder={input.value}
          value={text}
          aria-describedby={`${id}-f`}
          aria-invalid={fault !== ''}
          onChange={(event) => setText(event.target.value)}
        />
        <button type="submit" className="button">
          Try it
        </button>
      </div>
      <span className="field-fault" id={`${id}-f`} role="alert">
        {fault}
      </span>
    </form>
  );
}
