import { type GapVerdict, judgeGap, lengthGate, usualGap, type ValveSettingView } from '@gudgeon/core/workbench';
import { useState } from 'react';
import { ActButton, Armed, NumberEntry, toneRefused, Verdict } from '../../bench/index.js';
import { type Action, useActions } from '../../keys/index.js';
import { lengthTyped, type TypedReading } from '../../shell/index.js';
import type { Desk } from './desk.js';

interface GapEntryProps {
  readonly desk: Desk;
  readonly valve: ValveSettingView;
  readonly slot: string;
  readonly take: (reading: TypedReading, words: string) => boolean;
}

/** A gap that is keyed, judged, and recorded at once where it is good; else shown, and recorded only on purpose. */
export function GapEntry({ desk, valve, slot, take }: GapEntryProps) {
  const [held, setHeld] = useState<{ readonly reading: TypedReading; readonly verdict: GapVerdict }>();
  const { engine } = desk.bench;
  const record = (reading: TypedReading, verdict: GapVerdict) => {
    if (!take(reading, `${reading.text} ${desk.condition}, ${spokenVerdict(verdict)}`)) return;
    desk.setLast({ place: valve.place, verdict });
  };
  const keyed = (raw: string, shown: string) => {
    const reading = lengthTyped(raw, shown, desk.unit);
    if (!reading) return desk.recorder.complain(`${shown} ${desk.unit} cannot be read as a length.`);
    const verdict = judgeGap(engine, valve.valve, desk.condition, reading.text);
    if (verdict.state === 'in' || verdict.state === 'near') return record(reading, verdict);
    toneRefused();
    setHeld({ reading, verdict });
  };
  if (held)
    return (
      <Held
        verdict={held.verdict}
        again={() => setHeld(undefined)}
        record={() => record(held.reading, held.verdict)}
        text={held.reading.text}
      />
    );
  return (
    <Armed again={`${desk.unit} ${desk.condition}`}>
      <NumberEntry
        slot={slot}
        unit={desk.unit}
        places={desk.unit === 'mm' ? 2 : 3}
        check={(text) => lengthGate('gap', `${text} ${desk.unit}`, usualGap(engine, valve.valve), desk.unit)}
        onRecord={keyed}
      />
    </Armed>
  );
}

const spokenVerdict = ({ state }: GapVerdict): string => (state === 'no-data' ? 'no figure to compare with' : state);

interface HeldProps {
  readonly verdict: GapVerdict;
  readonly text: string;
  readonly again: () => void;
  readonly record: () => void;
}

function Held({ verdict, text, again, record }: HeldProps) {
  const actions: readonly Action[] = [
    { name: 'set-again', label: 'Set it again, then measure', keys: ['Enter', ' '], available: true, run: again },
    { name: 'record-so', label: `Record ${text} as it is`, keys: ['k'], available: true, run: record },
  ];
  const run = useActions(actions);
  return (
    <div className="stack">
      <Verdict {...verdict} />
      {actions.map((action, index) => (
        <div key={action.name} className={index === 0 ? undefined : 'apart'}>
          <ActButton action={action} run={run} second={index > 0} />
        </div>
      ))}
    </div>
  );
}
