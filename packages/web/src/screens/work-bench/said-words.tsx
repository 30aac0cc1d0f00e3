import { type KeyboardEvent, type Ref, useId } from 'react';
import { SayIt } from '../../bench/index.js';

interface SaidWordsProps {
  readonly name: string;
  readonly words: string;
  readonly set: (words: string) => void;
  readonly field?: Ref<HTMLInputElement>;
  readonly fault?: string;
  /** Enter in the field. */
  readonly enter?: () => void;
  readonly armed?: boolean;
}

/** A line of own words at the bench: typed, or spoken where the browser can hear. */
export function SaidWords({ name, words, set, field, fault = '', enter, armed = false }: SaidWordsProps) {
  const id = useId();
  const onKey = (event: KeyboardEvent) => {
    if (event.key === 'Escape') (event.currentTarget as HTMLElement).blur();
    if (event.key !== 'Enter' || enter === undefined || event.nativeEvent.isComposing) return;
    event.preventDefault();
    event.stopPropagation();
    if (!event.repeat) enter();
  };
  return (
    <div className="field">
      <label htmlFor={id}>{name}</label>
      <div className="said-words">
        <input
          id={id}
          ref={field}
          className="input"
          autoComplete="off"
          maxLength={400}
          value={words}
          data-armed={armed || undefined}
          aria-describedby={`${id}-f`}
          aria-invalid={fault !== ''}
          onChange={(event) => set(event.target.value)}
          onKeyDown={onKey}
        />
        <SayIt words="Say it" heard={set} />
      </div>
      <span className="field-fault" id={`${id}-f`} role="alert">
        {fault}
      </span>
    </div>
  );
}
