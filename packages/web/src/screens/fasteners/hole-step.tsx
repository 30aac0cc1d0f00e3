import type { Joint } from '@gudgeon/core/engine';
import type { FastenersView, HoleView } from '@gudgeon/core/workbench';
import { useState } from 'react';
import { ActButton, BigTarget, StrikeOut } from '../../bench/index.js';
import { type Action, useActions } from '../../keys/index.js';
import type { Recorder, TypedReading } from '../../shell/index.js';
import { AskDressing } from './ask-dressing.js';
import { MeasureLength } from './measure-length.js';
import { type Condition, type Dressing, dressingAsked, placedData } from './placed.js';

interface HoleStepProps {
  readonly view: FastenersView;
  readonly hole: HoleView;
  readonly joint: Joint | undefined;
  readonly recorder: Recorder;
  /** Goes on to the hole that is due. */
  readonly on: () => void;
}

/** One hole: what goes in, what goes on it, and what was put there. */
export function HoleStep({ view, hole, joint, recorder, on }: HoleStepProps) {
  const [dressing, setDressing] = useState<Dressing>({});
  const [measuring, setMeasuring] = useState(false);
  const asked = dressingAsked(joint, hole.hole);
  const known = asked.every((place) => (dressing[place] ?? '').trim() !== '');
  const placed = hole.state !== 'empty';

  const place = (condition: Condition, measured?: TypedReading) => {
    const data = placedData(view.joint, hole, joint, dressing, condition, measured?.reading);
    const words = `Hole ${hole.hole}: ${condition} one in${measured ? `, ${measured.text}` : ''}`;
    if (!recorder.record({ kind: 'fastener-placed', data }, words, measured?.raw)) return false;
    on();
    return true;
  };
  const act = (condition: Condition, label: string, keys: readonly string[]): Action => ({
    name: condition,
    label,
    keys,
    available: known,
    run: () => place(condition),
  });
  const actions = [
    act('new', 'New one in, dressed so', ['Enter', ' ', 'n']),
    ...(hole.mustBeNew ? [] : [act('used', 'Used one in, dressed so', ['u'])]),
  ];
  const run = useActions(placed || measuring ? [] : actions);

  if (!placed && measuring)
    return (
      <section className="stack" data-hole={hole.hole}>
        <MeasureLength hole={hole} known={known} recorder={recorder} place={place} leave={() => setMeasuring(false)} />
      </section>
    );
  return (
    <section className="stack" aria-live="polite" data-hole={hole.hole}>
      <BigTarget name={`Hole ${hole.hole} takes`} text={hole.length} />
      <p>
        {hole.expected}. {hole.opensInto}. {hole.mustBeNew ? 'A new one each time.' : ''}
      </p>
      <dl className="dressing">
        <div>
          <dt>Thread</dt>
          <dd>{hole.onThread}</dd>
        </div>
        <div>
          <dt>Under the head</dt>
          <dd>{hole.underHead}</dd>
        </div>
      </dl>
      {placed && <Placed hole={hole} recorder={recorder} />}
      {!placed && asked.length > 0 && <AskDressing asked={asked} dressing={dressing} change={setDressing} />}
      {!placed && (
        <>
          {actions.map((action, index) => (
            <ActButton key={action.name} action={action} run={run} second={index > 0} />
          ))}
          <div className="apart">
            <button
              type="button"
              className="act act-second"
              data-bench-control="measure"
              onClick={() => setMeasuring(true)}
            >
              Measure the one in hand
            </button>
          </div>
        </>
      )}
    </section>
  );
}

function Placed({ hole, recorder }: { readonly hole: HoleView; readonly recorder: Recorder }) {
  return (
    <>
      {hole.reason && <p className="field-fault">{hole.reason}</p>}
      {hole.given && (
        <StrikeOut
          words={`Hole ${hole.hole}: ${hole.state === 'wrong' ? 'wrong fastener in' : 'fastener in'}`}
          given={hole.given}
          strike={(reason) => hole.given && recorder.strikeOut(hole.given.entry, reason)}
        />
      )}
    </>
  );
}
