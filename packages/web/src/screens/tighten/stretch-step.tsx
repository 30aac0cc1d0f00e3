import type { Seen } from '@gudgeon/core/plan';
import { type ActView, type Answer, type Bench, propose } from '@gudgeon/core/workbench';
import { useState } from 'react';
import { NumberEntry } from '../../bench/index.js';
import { lengthTyped, type Recorder, type TypedReading } from '../../shell/index.js';

interface StretchStepProps {
  readonly act: ActView;
  readonly joint: string;
  readonly bench: Bench;
  readonly recorder: Recorder;
  readonly begin: () => void;
}

function commandFor(joint: string, act: ActView, seen: string, typed: TypedReading) {
  const { stage, hole, instance, round, printed } = act;
  const data = { joint, stage, hole, instance, round, target: printed, seen: seen as Seen, reading: typed.reading };
  return { kind: 'act-done', data } as const;
}

/** Stretch is read off a gauge; what the reading means is the core's to say, and is shown before it is recorded. */
export function StretchStep({ act, joint, bench, recorder, begin }: StretchStepProps) {
  const [typed, setTyped] = useState<TypedReading>();
  const unit = act.reading?.unit ?? 'mm';
  if (!typed) {
    const take = (raw: string, shown: string) => {
      const reading = lengthTyped(raw, shown, unit);
      if (reading) setTyped(reading);
      else recorder.complain(`${shown} ${unit} cannot be read as a length.`);
    };
    return (
      <NumberEntry
        slot={`Hole ${act.hole}, ${act.reading?.name}`}
        unit={unit}
        sign
        recordLabel="Take this reading"
        onRecord={take}
      />
    );
  }
  const answer = act.answers.find((each) => propose(bench, commandFor(joint, act, each.id, typed)).ok);
  const record = (said: Answer) => {
    begin();
    recorder.record(
      commandFor(joint, act, said.id, typed),
      `Hole ${act.hole}: ${typed.text}, ${said.label}`,
      typed.raw,
    );
  };
  return (
    <div className="stack">
      <p className="step-lead">
        {typed.text}: {answer ? answer.label : 'does not fit this step'}
      </p>
      {answer && (
        <button type="button" className="act" data-bench-control="record-reading" onClick={() => record(answer)}>
          Record {typed.text}, {answer.label.toLowerCase()}
        </button>
      )}
      <button
        type="button"
        className="act act-second apart"
        data-bench-control="read-again"
        onClick={() => setTyped(undefined)}
      >
        Read again
      </button>
    </div>
  );
}
