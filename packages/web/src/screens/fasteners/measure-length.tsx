import type { HoleView } from '@gudgeon/core/workbench';
import { useState } from 'react';
import { NumberEntry } from '../../bench/index.js';
import { lengthTyped, type Recorder, type TypedReading } from '../../shell/index.js';
import type { Condition } from './placed.js';

interface MeasureLengthProps {
  readonly hole: HoleView;
  /** False while it is not yet said what goes on it. */
  readonly known: boolean;
  readonly recorder: Recorder;
  /** Asks the core and records; false when the fastener was refused. */
  readonly place: (condition: Condition, measured: TypedReading) => boolean;
  readonly leave: () => void;
}

/** The length under the head of the fastener in hand, judged before it goes in: too long, too short or right. */
export function MeasureLength({ hole, known, recorder, place, leave }: MeasureLengthProps) {
  const [typed, setTyped] = useState<TypedReading>();
  const unit = /in$/.test(hole.length) ? 'in' : 'mm';
  const put = (condition: Condition, measured: TypedReading) => {
    if (!place(condition, measured)) setTyped(undefined);
  };
  const take = (raw: string, shown: string) => {
    const measured = lengthTyped(raw, shown, unit);
    if (!measured) recorder.complain(`${shown} ${unit} cannot be read as a length.`);
    else if (hole.mustBeNew) put('new', measured);
    else setTyped(measured);
  };
  if (!known) return <p className="field-fault">First say what goes on it.</p>;
  return (
    <div className="stack">
      {typed ? (
        <>
          <p className="step-lead">{typed.text} under the head: new or used?</p>
          {(['new', 'used'] as const).map((condition) => (
            <button
              key={condition}
              type="button"
              className="act"
              data-bench-control={condition}
              onClick={() => put(condition, typed)}
            >
              {condition === 'new' ? 'New one' : 'Used one'}, {typed.text}
            </button>
          ))}
        </>
      ) : (
        <NumberEntry
          slot={`Hole ${hole.hole}, length under the head`}
          unit={unit}
          recordLabel="Judge and record"
          onRecord={take}
        />
      )}
      <button type="button" className="act act-second apart" data-bench-control="leave" onClick={leave}>
        Do not measure
      </button>
    </div>
  );
}
