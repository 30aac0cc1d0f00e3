import type { OilPlaceView } from '@gudgeon/core/workbench';
import { useId, useState } from 'react';
import type { RunningDesk } from '../use-running.js';

interface NoOilProps {
  readonly desk: RunningDesk;
  readonly places: readonly OilPlaceView[];
}

/** A place that stays dry is a finding: it is written down, and the place stays open. */
export function NoOil({ desk, places }: NoOilProps) {
  const id = useId();
  const dry = places.filter(({ seen }) => seen === undefined);
  const [key, setKey] = useState('');
  const chosen = dry.find((place) => place.key === key) ?? dry[0];
  if (chosen === undefined) return null;
  const note = () =>
    desk.recorder.record(
      { kind: 'note', data: { about: 'priming', text: `No oil comes at ${chosen.name}` } },
      `Noted: no oil at ${chosen.name}. It stays open`,
    );
  return (
    <details className="fold">
      <summary>None comes at one of them</summary>
      <div className="stack">
        <p>
          Turn the crank a quarter turn and prime on. Where it still stays dry, a gallery, a pushrod or a plug is in the
          way: it does not start like that.
        </p>
        <div className="field">
          <label htmlFor={id}>Where none comes</label>
          <select id={id} className="input" value={chosen.key} onChange={(event) => setKey(event.target.value)}>
            {dry.map((place) => (
              <option key={place.key} value={place.key}>
                {place.name}
              </option>
            ))}
          </select>
        </div>
        <button type="button" className="button" onClick={note}>
          Write it down
        </button>
      </div>
    </details>
  );
}
