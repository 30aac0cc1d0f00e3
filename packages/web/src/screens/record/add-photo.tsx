import { useId, useState } from 'react';
import { usePerson } from '../../log/index.js';
import { PhotoField } from '../../photos/index.js';
import { AskPerson, type Recorder } from '../../shell/index.js';

const WHOLE = 'the engine';

/** A photo of the engine, or of the place that is named, kept with the record. */
export function AddPhoto({ job, recorder }: { readonly job: string; readonly recorder: Recorder }) {
  const id = useId();
  const person = usePerson();
  const [about, setAbout] = useState(WHOLE);
  return (
    <section className="stack not-printed" aria-labelledby={`${id}-h`}>
      <h2 id={`${id}-h`}>Add a photo to this engine</h2>
      {person === '' ? (
        <AskPerson />
      ) : (
        <>
          <div className="field">
            <label htmlFor={id}>Which part or place it shows</label>
            <input
              id={id}
              className="input"
              maxLength={200}
              autoComplete="off"
              value={about}
              onChange={(event) => setAbout(event.target.value)}
            />
          </div>
          <PhotoField
            job={job}
            about={about.trim() || WHOLE}
            ask={`Photo of ${about.trim() || WHOLE}`}
            onKept={(data) => recorder.record({ kind: 'photo-taken', data }, 'Photo kept')}
          />
        </>
      )}
    </section>
  );
}
