import type { Cell } from '@gudgeon/core/workbench';
import { memo, useEffect } from 'react';
import { Armed, type EntryMode, EntryModes, NumberEntry, SILENCE, say, useEntryMode } from '../../bench/index.js';
import { letGo } from '../../keys/index.js';
import { LastReading } from './last-reading.js';
import type { SheetDesk } from './use-sheet-desk.js';

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
          slot={asked}
          about={`${cell.slot} ${cell.readings}`}
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
      <Tools
        instruments={view.instruments}
        inHand={view.instrument}
        takeGauge={desk.takeGauge}
        mode={mode}
        setMode={setMode}
      />
    </div>
  );
}

function ghost({ instrument }: SheetDesk['view']): string {
  if (!instrument) return 'no gauge named';
  return `${instrument.places} places, ${instrument.name}`;
}

interface ToolsProps {
  readonly instruments: SheetDesk['view']['instruments'];
  readonly inHand: SheetDesk['view']['instrument'];
  readonly takeGauge: SheetDesk['takeGauge'];
  readonly mode: EntryMode;
  readonly setMode: (mode: EntryMode) => void;
}
const Tools = memo(function Tools({ instruments, inHand, takeGauge, mode, setMode }: ToolsProps) {
  return (
    <div className="sheet-tools">
      <EntryModes mode={mode} setMode={setMode} />
      <fieldset className="plain figure-choice">
        <legend className="only-read">Gauge in hand</legend>
        {instruments.map((gauge) => (
          <button
            key={gauge.id}
            type="button"
            className="button"
            aria-pressed={gauge.id === inHand?.id}
            onClick={(event) => {
              takeGauge(gauge.id);
              letGo(event);
            }}
          >
            {gauge.name}, {gauge.unit}
          </button>
        ))}
        {inHand && !inHand.checked && <span className="field-hint">{inHand.check}</span>}
      </fieldset>
    </div>
  );
}, sameTools);

/** Gauges are told anew with each view; a row of buttons is drawn again only where one of them is another. */
function sameTools(a: ToolsProps, b: ToolsProps): boolean {
  const told = ({ instruments, inHand }: ToolsProps) =>
    [...instruments, inHand].map((one) => one && `${one.id} ${one.name} ${one.unit} ${one.check}`).join('|');
  return a.mode === b.mode && a.setMode === b.setMode && a.takeGauge === b.takeGauge && told(a) === told(b);
}
