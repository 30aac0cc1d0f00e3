import { useState } from 'react';
import { NumberEntry } from '../../bench/index.js';
import type { Desk } from './desk.js';

interface MarginProps {
  readonly desk: Desk;
  readonly setMargin: (margin: number) => void;
}
const usual = [0, 5, 10, 20] as const;

/** How far a valve must be from its own opening and closing before it may be set. */
export function Margin({ desk, setMargin }: MarginProps) {
  const [open, setOpen] = useState(false);
  const { marginDegrees, stops, refused } = desk.view;
  return (
    <section className="stack" aria-labelledby="margin">
      <h2 id="margin" className="step-title">
        Margin from opening and closing
      </h2>
      <p className="target-number" data-current-number>
        {marginDegrees === undefined ? '–' : `${marginDegrees}°`}
      </p>
      <p>
        {stops.length} {stops.length === 1 ? 'stop' : 'stops'} in the plan
        {refused.length > 0 ? `; ${refused.length} valves find no stop with this margin` : ''}. Kept on this device for
        this engine.
      </p>
      <div className="here-steps-row">
        {usual.map((each) => (
          <button
            key={each}
            type="button"
            className={each === marginDegrees ? 'act' : 'act act-second'}
            aria-pressed={each === marginDegrees}
            data-bench-control={`margin ${each}`}
            onClick={() => setMargin(each)}
          >
            {each}°
          </button>
        ))}
      </div>
      <details className="fold" onToggle={(event) => setOpen(event.currentTarget.open)}>
        <summary>Another margin</summary>
        {open && (
          <NumberEntry
            slot="Margin"
            unit="°"
            ghost="0 to 90 crank degrees"
            recordLabel="Use this margin"
            check={(text) =>
              Number(text) <= 90
                ? { level: 'fine' }
                : { level: 'impossible', reason: `${text}° would leave no place to set a valve; 0 to 90 is valid.` }
            }
            onRecord={(_, shown) => setMargin(Number(shown))}
          />
        )}
      </details>
      <ul className="field-hint">
        {refused.map((one) => (
          <li key={one.valve}>{one.reason}</li>
        ))}
        {desk.view.hindrances.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </section>
  );
}
