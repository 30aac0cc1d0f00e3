import { useId } from 'react';

interface TextFieldProps {
  readonly name: string;
  readonly value: string;
  readonly set: (value: string) => void;
  readonly hint?: string;
  /** Digits are typed: a phone then shows its number keys. */
  readonly figure?: boolean;
}

/** A named line of text in a form. */
export function TextField({ name, value, set, hint, figure = false }: TextFieldProps) {
  const id = useId();
  return (
    <div className="field">
      <label htmlFor={id}>{name}</label>
      <input
        id={id}
        className="input"
        autoComplete="off"
        maxLength={80}
        inputMode={figure ? 'decimal' : 'text'}
        value={value}
        aria-describedby={hint ? `${id}-h` : undefined}
        onChange={(event) => set(event.target.value)}
      />
      {hint && (
        <span className="field-hint" id={`${id}-h`}>
          {hint}
        </span>
      )}
    </div>
  );
}

interface ChoiceFieldProps<T extends string> {
  readonly name: string;
  readonly value: T;
  readonly choices: readonly (readonly [T, string])[];
  readonly set: (value: T) => void;
}
/** One of a few named things. */
export function ChoiceField<T extends string>({ name, value, choices, set }: ChoiceFieldProps<T>) {
  const id = useId();
  return (
    <div className="field">
      <label htmlFor={id}>{name}</label>
      <select id={id} className="input" value={value} onChange={(event) => set(event.target.value as T)}>
        {choices.map(([each, words]) => (
          <option key={each} value={each}>
            {words}
          </option>
        ))}
      </select>
    </div>
  );
}
