import type { PartPlaceView } from '@gudgeon/core/workbench';
import { useId, useState } from 'react';
import { keyOf } from './standing.js';

interface FromElsewhereProps {
  readonly place: PartPlaceView;
  readonly others: readonly PartPlaceView[];
  readonly fit: (from: PartPlaceView) => void;
}

/** The part in hand ran at another place: the register is asked, and says why not. */
export function FromElsewhere({ place, others, fit }: FromElsewhereProps) {
  const id = useId();
  const rest = others.filter((other) => keyOf(other) !== keyOf(place));
  const [from, setFrom] = useState(() => (rest[0] ? keyOf(rest[0]) : ''));
  const chosen = rest.find((other) => keyOf(other) === from);
  return (
    <details className="fold">
      <summary>The used {place.part} in hand is from another place</summary>
      <div className="stack">
        <div className="field">
          <label htmlFor={id}>It was tagged at</label>
          <select id={id} className="input" value={from} onChange={(event) => setFrom(event.target.value)}>
            {rest.map((other) => (
              <option key={keyOf(other)} value={keyOf(other)}>
                {other.place}
              </option>
            ))}
          </select>
        </div>
        <button
          type="button"
          className="act act-second"
          data-bench-control="elsewhere"
          onClick={() => chosen && fit(chosen)}
        >
          May it go here?
        </button>
      </div>
    </details>
  );
}
