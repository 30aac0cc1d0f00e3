import { type FormEvent, useId, useState } from 'react';
import { setPersonName, storageWorks } from '../log/index.js';

/** The log names the person of every entry, so nothing is recorded before there is a name. */
export function AskPerson() {
  const id = useId();
  const [name, setName] = useState('');
  const [fault, setFault] = useState('');
  if (!storageWorks())
    return (
      <p className="field-fault" role="alert">
        This window keeps nothing (a private window, or storage is switched off), so no record can be begun here. Open
        Gudgeon in an ordinary window.
      </p>
    );
  const keep = (event: FormEvent) => {
    event.preventDefault();
    if (name.trim() === '') setFault('Give a name or initials: every entry says who made it.');
    else setPersonName(name);
  };
  return (
    <form className="card stack" onSubmit={keep} noValidate>
      <div className="field">
        <label htmlFor={id}>Who works at this device?</label>
        <input
          id={id}
          className="input"
          autoComplete="name"
          maxLength={60}
          value={name}
          onChange={(e) => setName(e.target.value)}
          aria-describedby={`${id}-f`}
          aria-invalid={fault !== ''}
        />
        <span className="field-fault" id={`${id}-f`} role="alert">
          {fault}
        </span>
      </div>
      <button type="submit" className="button button-main">
        Use this name
      </button>
    </form>
  );
}
