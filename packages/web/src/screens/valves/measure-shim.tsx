import { lengthGate, usualGap, usualShim, type ValveSettingView } from '@gudgeon/core/workbench';
import { useEffect, useState } from 'react';
import { Armed, NumberEntry, say } from '../../bench/index.js';
import { useFromTop } from '../../keys/index.js';
import { lengthTyped, type TypedReading } from '../../shell/index.js';
import type { Desk } from './desk.js';
import { GaugeChoice } from './gauge-choice.js';

interface MeasureShimProps {
  readonly desk: Desk;
  readonly valve: ValveSettingView;
  readonly done: () => void;
}

/** One valve as found: its gap with the feeler, then the shim that gave it. Both are needed for any choice. */
export function MeasureShim({ desk, valve, done }: MeasureShimProps) {
  const [gap, setGap] = useState<TypedReading>();
  const { unit } = desk;
  const { engine } = desk.bench;
  const what = gap ? 'shim that is in' : 'gap as found, cold';
  useFromTop(valve.key);
  useEffect(() => say(`${valve.place}: ${what}`), [valve.place, what]);
  const keyed = (raw: string, shown: string) => {
    const reading = lengthTyped(raw, shown, unit);
    if (!reading) return desk.recorder.complain(`${shown} ${unit} cannot be read as a length.`);
    if (!gap) return setGap(reading);
    const data = { valve: valve.valve, lash: gap.reading, shim: reading.reading };
    const words = `${valve.place}: gap ${gap.text}, shim ${reading.text}`;
    if (!desk.recorder.record({ kind: 'shim-measured', data }, words, `${gap.raw} ${raw}`)) return;
    desk.began();
    done();
  };
  return (
    <section className="bench" aria-live="polite" data-valve={valve.key} data-measure={gap ? 'shim' : 'gap'}>
      <h2 className="valve-name">{valve.place}</h2>
      {gap ? <p className="step-lead">Gap {gap.text}. Now the shim, as marked or measured.</p> : null}
      <GaugeChoice desk={desk} />
      <Armed key={gap ? 'shim' : 'gap'} again={`${unit} ${desk.condition}`}>
        <NumberEntry
          slot={`${valve.place}: ${what}`}
          unit={unit}
          places={unit === 'mm' ? 2 : 3}
          recordLabel={gap ? 'Record both' : 'Take this gap'}
          check={(text) =>
            gap
              ? lengthGate('shim', `${text} ${unit}`, usualShim(engine), unit)
              : lengthGate('gap', `${text} ${unit}`, usualGap(engine, valve.valve), unit)
          }
          onRecord={keyed}
        />
      </Armed>
      {gap && (
        <button
          type="button"
          className="act act-second apart"
          data-bench-control="gap-again"
          onClick={() => setGap(undefined)}
        >
          Measure the gap again
        </button>
      )}
    </section>
  );
}
