import { lengthGate, type ShimsView, usualShim } from '@gudgeon/core/workbench';
import { useState } from 'react';
import { Armed, NumberEntry } from '../../bench/index.js';
import { lengthTyped } from '../../shell/index.js';
import type { Desk } from './desk.js';
import { GaugeChoice } from './gauge-choice.js';

interface SpareShimsProps {
  readonly desk: Desk;
  readonly shims: ShimsView;
}

/** Loose shims on hand, noted one by one: the choice takes them before anything is bought. */
export function SpareShims({ desk, shims }: SpareShimsProps) {
  const [adding, setAdding] = useState(false);
  return (
    <section className="stack" aria-labelledby="spares">
      <h2 id="spares" className="step-title">
        Spare shims on hand ({shims.spares.length})
      </h2>
      <ul className="plain stack">
        {shims.spares.map((spare) => (
          <li key={spare.entry} className="recorded">
            <span>{spare.text}</span>
            <button
              type="button"
              className="button"
              aria-label={`Take out the spare ${spare.text}`}
              onClick={() => desk.recorder.strikeOut(spare.entry, 'no longer in the box')}
            >
              Take out
            </button>
          </li>
        ))}
      </ul>
      {adding && <SpareEntry desk={desk} count={shims.spares.length} />}
      <button type="button" className="button" onClick={() => setAdding(!adding)}>
        {adding ? 'No more spares' : 'Note spare shims'}
      </button>
    </section>
  );
}

function SpareEntry({ desk, count }: { readonly desk: Desk; readonly count: number }) {
  const { unit } = desk;
  const keyed = (raw: string, shown: string) => {
    const reading = lengthTyped(raw, shown, unit);
    if (!reading) return desk.recorder.complain(`${shown} ${unit} cannot be read as a length.`);
    desk.recorder.record({ kind: 'spare-shim', data: { shim: reading.reading } }, `Spare shim ${reading.text}`, raw);
  };
  return (
    <>
      <GaugeChoice desk={desk} />
      <Armed key={count} again={unit}>
        <NumberEntry
          slot="thickness of a spare shim"
          unit={unit}
          places={unit === 'mm' ? 2 : 3}
          recordLabel="Into the box"
          check={(text) => lengthGate('shim', `${text} ${unit}`, usualShim(desk.bench.engine), unit)}
          onRecord={keyed}
        />
      </Armed>
    </>
  );
}
