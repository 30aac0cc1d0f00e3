import type { Cell } from '@gudgeon/core/workbench';
import { useEffect } from 'react';
import { Armed, NumberEntry, say } from '../../bench/index.js';
import { letGo } from '../../keys/index.js';
import { LastReading } from './last-reading.js';
import { type EntryMode, useEntryMode } from './use-entry-mode.js';
import type { SheetDesk } from './use-sheet-desk.js';

/** A gauge that sends no Enter is heard out for this long [ms]. */
const SILENCE = 150;

interface EntryDeskProps {
  readonly desk: SheetDesk;
  readonly cell: Cell;
}

/** The armed field for one slot, with the gauge in hand and the way of keying. */
export function EntryDesk({ desk, cell }: EntryDeskProps) {
  const [mode, setMode] = useEntryMode();
  const { view, repeat } = desk;
  const asked = repeat ? `${cell.name}: again, the first is hidden` : cell.name;
  useEffect(() => {
    // The reading before this one is being said; the next slot waits until it is looked at.
    if (desk.last === undefined) say(asked);
  }, [asked, desk.last]);
  return (
    <div className="bench" data-slot={cell.slot}>
      <Armed again={`${cell.slot} ${cell.readings} ${mode} ${view.instrument?.id ?? ''}`} scroll={mode === 'pad'}>
        <NumberEntry
          key={`${cell.slot} ${cell.readings}`}
          slot={asked}
          unit={view.unit}
          sign={view.signed ?? false}
          pad={mode === 'pad'}
          {...(mode === 'gauge' ? { silence: SILENCE } : {})}
          ghost={ghost(view)}
          check={desk.check}
          onRecord={(raw, shown) => desk.record(raw, shown, mode)}
        >
          <LastReading desk={desk} />
        </NumberEntry>
      </Armed>
      <Tools desk={desk} mode={mode} setMode={setMode} />
    </div>
  );
}

function ghost({ instrument }: SheetDesk['view']): string {
  if (!instrument) return 'no gauge named';
  return `${instrument.places} places, ${instrument.name}`;
}

interface ToolsProps {
  readonly desk: SheetDesk;
  readonly mode: EntryMode;
  readonly setMode: (mode: EntryMode) => void;
}
const MODES: readonly (readonly [EntryMode, string])[] = [
  ['pad', 'Number keys'],
  ['keyboard', 'Keyboard'],
  ['gauge', 'Gauge types'],
];

function Tools({ desk, mode, setMode }: ToolsProps) {
  const { view, takeGauge } = desk;
  return (
    <div className="sheet-tools">
      <fieldset className="plain figure-choice">
        <legend className="only-read">What types</legend>
        {MODES.map(([each, words]) => (
          <button
            key={each}
            type="button"
            className="button"
            aria-pressed={each === mode}
            onClick={(event) => {
              setMode(each);
              letGo(event);
            }}
          >
            {words}
          </button>
        ))}
      </fieldset>
      <fieldset className="plain figure-choice">
        <legend className="only-read">Gauge in hand</legend>
        {view.instruments.map((gauge) => (
          <button
            key={gauge.id}
            type="button"
            className="button"
            aria-pressed={gauge.id === view.instrument?.id}
            onClick={(event) => {
              takeGauge(gauge.id);
              letGo(event);
            }}
          >
            {gauge.name}, {gauge.unit}
          </button>
        ))}
        {view.instrument && !view.instrument.checked && <span className="field-hint">{view.instrument.check}</span>}
      </fieldset>
    </div>
  );
}
