import { type InputView, typedFigure } from '@gudgeon/core/workbench';
import { type FormEvent, useId, useState } from 'react';
import type { Hand } from './hand.js';

/** A field that takes a figure to its last digit. */
export function ExactEntry({ input, hand }: { readonly input: InputView; readonly hand: Hand }) {
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
