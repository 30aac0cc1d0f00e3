import { NOT_AGAIN, type PartPlaceView, partChoices } from '@gudgeon/core/workbench';
import { useEffect, useState } from 'react';
import { ActButton, Pick, Reasoned, say } from '../../bench/index.js';
import { type Action, useActions, useFromTop } from '../../keys/index.js';
import type { Recorder } from '../../shell/index.js';

interface TagStepProps {
  readonly place: PartPlaceView;
  readonly recorder: Recorder;
  readonly on: () => void;
}

/** One part as it came out: which way round it stood, and whether it may go back. */
export function TagStep({ place, recorder, on }: TagStepProps) {
  const { conditions, ends, faces } = partChoices(place.part);
  const [end, setEnd] = useState(place.end ?? ends[0] ?? '');
  const [face, setFace] = useState(place.face ?? '');
  useFromTop(`${place.part} ${place.place}`);
  useEffect(() => say(`Tag the ${place.part} of ${place.place}`), [place.part, place.place]);
  const tag = (condition: string) => {
    const data = {
      part: place.part,
      valve: place.valve,
      condition,
      ...(end !== '' && { end }),
      ...(face !== '' && { face }),
    };
    if (recorder.record({ kind: 'part-tagged', data }, `${place.part} of ${place.place}: ${condition}`)) on();
  };
  const actions = conditions.map(
    (condition, index): Action => ({
      name: condition === NOT_AGAIN ? 'not-again' : 'used',
      label: condition === NOT_AGAIN ? 'Not to be used again' : 'Used, good',
      keys: index === 0 ? ['Enter', ' ', 'g'] : ['x'],
      available: true,
      run: () => tag(condition),
    }),
  );
  const run = useActions(actions);
  return (
    <section className="bench" aria-live="polite" data-place={place.place}>
      <h2 className="step-lead">
        As it came out: {place.part}, {place.place}
      </h2>
      <p className="target-number" data-current-number>
        {place.short}
      </p>
      {place.tag && <p className="field-hint">Tagged: {place.tag}</p>}
      <Pick takenBack name="This end up" choices={ends} chosen={end} choose={setEnd} />
      <Pick takenBack name="This face to the front" choices={faces} chosen={face} choose={setFace} />
      {actions.map((action, index) => (
        <div key={action.name} className={index === 0 ? undefined : 'apart'}>
          <ActButton action={action} run={run} second={index > 0} />
        </div>
      ))}
      <Reasoned
        name="Say its condition in own words"
        about="What you saw on this part, e.g. a pit on the face or a bent rod."
        button="Tag it so"
        usual={['pitted', 'bent', 'worn tip']}
        record={tag}
      />
    </section>
  );
}
