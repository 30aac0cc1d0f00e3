import { useId, useState } from 'react';
import { type UsualField, usualFields } from './usual-fields.js';

type SheetWords = typeof import('../../sheet-text/index.js');

interface UsualFormProps {
  readonly text: string;
  readonly words: SheetWords;
  readonly change: (text: string) => void;
}
const origins = ['measured', 'manual', 'part maker', 'rule of thumb', 'memory', 'invented'] as const;

export function UsualForm({ text, words, change }: UsualFormProps) {
  const id = useId();
  const [origin, setOrigin] = useState<string>(origins[0]);
  const shown = usualFields.filter((field) => !field.within || stands(text, field.within));
  const set = (field: UsualField, value: string) => {
    const changed = words.setField(text, field.path, value, field.figure ? origin : undefined);
    if (changed !== undefined) change(changed);
  };
  return (
    <section className="stack" aria-labelledby={`${id}-usual`}>
      <h2 id={`${id}-usual`}>What usually differs</h2>
      <div className="field">
        <label htmlFor={`${id}-origin`}>Figures that I change here come from</label>
        <select
          id={`${id}-origin`}
          className="input"
          value={origin}
          onChange={(event) => setOrigin(event.target.value)}
        >
          {origins.map((each) => (
            <option key={each}>{each}</option>
          ))}
        </select>
      </div>
      <label className="choice">
        <input
          type="checkbox"
          checked={words.fieldText(text, ['invented']) !== 'true'}
          onChange={(event) => {
            const changed = words.setField(text, ['invented'], !event.target.checked);
            if (changed !== undefined) change(changed);
          }}
        />
        <span>This engine really exists</span>
      </label>
      <div className="new-fields">
        {shown.map((field) => (
          <TextField
            key={field.path.join('.')}
            field={field}
            value={words.fieldText(text, field.path)}
            set={(value) => set(field, value)}
          />
        ))}
      </div>
    </section>
  );
}

/** Rough on purpose: only decides whether a question is shown at all. */
function stands(text: string, section: string): boolean {
  return section.split('.').every((name) => new RegExp(`^\\s*${name}:`, 'm').test(text));
}

interface TextFieldProps {
  readonly field: UsualField;
  readonly value: string;
  readonly set: (value: string) => void;
}

/** Writes into the sheet when the person leaves the field, so that half a figure is never part of it. */
function TextField({ field, value, set }: TextFieldProps) {
  const id = useId();
  const [typing, setTyping] = useState<string>();
  const keep = () => {
    if (typing !== undefined && typing.trim() !== value) set(typing.trim());
    setTyping(undefined);
  };
  return (
    <div className="field">
      <label htmlFor={id}>{field.label}</label>
      <input
        id={id}
        className="input"
        autoComplete="off"
        value={typing ?? value}
        aria-describedby={`${id}-hint`}
        onChange={(event) => setTyping(event.target.value)}
        onBlur={keep}
        onKeyDown={(event) => event.key === 'Enter' && keep()}
      />
      <span className="field-hint" id={`${id}-hint`}>
        {field.hint}
      </span>
    </div>
  );
}
