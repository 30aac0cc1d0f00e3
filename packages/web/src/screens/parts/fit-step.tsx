import { LUBRICANTS, type PartPlaceView } from '@gudgeon/core/workbench';
import { useEffect } from 'react';
import { ActButton, Pick, StrikeOut, say } from '../../bench/index.js';
import { type Action, useActions, useFromTop } from '../../keys/index.js';
import type { Recorder } from '../../shell/index.js';
import { FromElsewhere } from './from-elsewhere.js';

interface FitStepProps {
  readonly place: PartPlaceView;
  readonly others: readonly PartPlaceView[];
  readonly recorder: Recorder;
  readonly lubricant: string;
  readonly setLubricant: (words: string) => void;
  readonly on: () => void;
}

/** One place: its own part goes back the way it stood, or a new one goes in. */
export function FitStep({ place, others, recorder, lubricant, setLubricant, on }: FitStepProps) {
  useFromTop(`${place.part} ${place.place}`);
  useEffect(() => say(`${place.part} of ${place.place}`), [place.part, place.place]);
  const fit = (from: PartPlaceView | 'new') => {
    const own = from !== 'new' && from === place;
    const data = {
      part: place.part,
      to: place.valve,
      from: from === 'new' ? from : from.valve,
      ...(own && place.end !== undefined && { end: place.end }),
      ...(own && place.face !== undefined && { face: place.face }),
      ...(lubricant !== '' && { lubricant }),
    };
    const words = from === 'new' ? 'a new one' : own ? 'its own' : `the one from ${from.place}`;
    if (recorder.record({ kind: 'part-fitted', data }, `${place.part} of ${place.place}: ${words} in`)) on();
  };
  const fitted = place.state !== 'open';
  const own: Action = {
    name: 'own',
    label: `Its own ${place.part} is in`,
    keys: ['Enter', ' ', 'o'],
    available: true,
    run: () => fit(place),
  };
  const fresh: Action = {
    name: 'new',
    label: `A new ${place.part} is in`,
    keys: place.mayReturn ? ['n'] : ['Enter', ' ', 'n'],
    available: true,
    run: () => fit('new'),
  };
  const actions = place.mayReturn ? [own, fresh] : [fresh];
  const run = useActions(fitted ? [] : actions);
  return (
    <section className="bench" aria-live="polite" data-place={place.place}>
      <h2 className="step-lead">
        {place.part}, {place.place}
      </h2>
      <p className="target-number" data-current-number>
        {place.short}
      </p>
      <p className="tag-words">
        {place.tag ? <>Tagged: {place.tag}.</> : null} {place.rule}
      </p>
      {fitted ? (
        place.fitted && (
          <StrikeOut
            words={`In: ${place.fitted.words}`}
            given={place.fitted}
            strike={(reason) => place.fitted && recorder.strikeOut(place.fitted.entry, reason)}
          />
        )
      ) : (
        <>
          {actions.map((action, index) => (
            <ActButton key={action.name} action={action} run={run} second={index > 0} />
          ))}
          <Pick takenBack name="What goes on it" choices={LUBRICANTS} chosen={lubricant} choose={setLubricant} />
          <FromElsewhere place={place} others={others} fit={fit} />
        </>
      )}
    </section>
  );
}
