import { type FormEvent, useId, useState } from 'react';
import { usePerson } from '../../log/index.js';
import type { Recorder } from '../../shell/index.js';

/** A note in own words, kept with the record. */
export function AddNote({ recorder }: { readonly recorder: Recorder }) {
  const id = useId();
  const [text, setText] = useState('');
  const person = usePerson();
  const send = (event: FormEvent) => {
    event.preventDefault();
    const note = text.trim();
    if (note === '') recorder.complain('Write the note first.');
    else if (recorder.record({ kind: 'note', data: { about: 'the engine', text: note } }, 'Note kept')) setText('');
  };
  // The form beside this one asks for the name.
  if (person === '') return null;
  return (
    <form className="card stack not-printed" onSubmit={send} noValidate>
      <label htmlFor={id}>Add a note</label>
      <textarea
        id={id}
        className="input"
        rows={3}
        maxLength={2000}
        value={text}
        onChange={(e) => setText(e.target.value)}
      />
      <button type="submit" className="button">
        Keep the note
      </button>
    </form>
  );
}
