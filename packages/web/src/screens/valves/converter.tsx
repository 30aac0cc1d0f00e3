import type { Engine } from '@gudgeon/core/engine';
import { preloadTravel, turnCount, turnsForTypedTravel } from '@gudgeon/core/workbench';
import { useState } from 'react';
import { NumberEntry } from '../../bench/index.js';

interface ConverterProps {
  readonly engine: Engine;
  readonly turns: number;
  readonly setTurns: (turns: number) => void;
}
const step = 0.125;

/** Turns of the nut to plunger travel and back, for this engine's thread and ratio. */
export function Converter({ engine, turns, setTurns }: ConverterProps) {
  const [open, setOpen] = useState(false);
  const [back, setBack] = useState('');
  return (
    <details className="fold" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>Another amount, or turns to plunger travel</summary>
      <div className="stack">
        <div className="step-buttons">
          <button
            type="button"
            className="button"
            aria-label="− 1/8 turn: one eighth less"
            onClick={() => setTurns(Math.max(0, turns - step))}
          >
            − 1/8
          </button>
          <output className="ask-number">{turnCount(turns)} turn</output>
          <button
            type="button"
            className="button"
            aria-label="+ 1/8 turn: one eighth more"
            onClick={() => setTurns(Math.min(10, turns + step))}
          >
            + 1/8
          </button>
        </div>
        <p>{preloadTravel(engine, turns).words}</p>
        <p role="status">{back}</p>
        {open && (
          <NumberEntry
            slot="Plunger travel wanted"
            unit="mm"
            recordLabel="How many turns is that?"
            ghost="e.g. 1.00 mm"
            onRecord={(_, shown) => setBack(turnsForTypedTravel(engine, `${shown} mm`))}
          />
        )}
      </div>
    </details>
  );
}
