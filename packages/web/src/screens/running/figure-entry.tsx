import { type ReactNode, useState } from 'react';
import { Armed, EntryModes, NumberEntry, Pick, SILENCE, useEntryMode } from '../../bench/index.js';
import { lastChosen, noteChosen } from '../work/kept.js';

interface FigureEntryProps {
  /** What is read, and where. */
  readonly slot: string;
  /** Changes with what the field is about. */
  readonly about: string;
  /** The usual one first. */
  readonly units: readonly string[];
  /** What this device remembers the unit by: a gauge keeps its own. */
  readonly memory: string;
  readonly sign?: boolean;
  readonly ghost?: string;
  readonly recordLabel?: string;
  /** False where what stands above is to stay in sight. */
  readonly scroll?: boolean;
  readonly children?: ReactNode;
  /** `text` with its unit; `raw` as keyed. */
  readonly take: (text: string, raw: string) => void;
}

/** One figure of a gauge in the unit of that gauge: keyed, spoken, or typed by the gauge itself. */
export function FigureEntry({ units, memory, take, scroll = true, children, ...entry }: FigureEntryProps) {
  const name = `unit.${memory}`;
  const [mode, setMode] = useEntryMode();
  const [chosen, setChosen] = useState<string>();
  const unit = chosen ?? lastChosen(name).find((one) => units.includes(one)) ?? units[0] ?? '';
  const choose = (next: string) => {
    setChosen(next);
    noteChosen(name, next);
  };
  return (
    <div className="bench">
      <Armed again={`${mode} ${unit} ${entry.about}`} scroll={scroll && mode === 'pad'}>
        <NumberEntry
          {...entry}
          unit={unit}
          pad={mode === 'pad'}
          {...(mode === 'gauge' ? { silence: SILENCE } : {})}
          spoken
          pedal="PageDown"
          onRecord={(raw, shown) => take(`${shown} ${unit}`.trim(), raw)}
        >
          {children}
        </NumberEntry>
      </Armed>
      {units.length > 1 && <Pick name="Unit of the gauge" choices={units} chosen={unit} choose={choose} />}
      <EntryModes mode={mode} setMode={setMode} />
    </div>
  );
}
