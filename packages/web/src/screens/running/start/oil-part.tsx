import { valveKey, valvesOf } from '@gudgeon/core/engine';
import type { OilPlaceView } from '@gudgeon/core/workbench';
import { useState } from 'react';
import { useLocation } from 'wouter';
import { Finished, Pick, Progress, StrikeOut } from '../../../bench/index.js';
import { type Action, useActions } from '../../../keys/index.js';
import { useWayOn } from '../../../shell/index.js';
import { startPlace } from '../places.js';
import { NoOil } from './no-oil.js';
import type { StartProps } from './start-props.js';

const HOWS = ['it runs', 'it drips', 'only while the crank is turned'] as const;

/** Priming: a hand for each valve at which oil came, in whatever order it comes. The pedal takes the next one in the list. */
export function OilPart({ desk, view }: StartProps) {
  const { bench, job, recorder } = desk;
  const { places, progress } = view.oil;
  const [how, setHow] = useState<string>(HOWS[0]);
  const [, go] = useLocation();
  const on = useWayOn(job, 'start/oil', { to: startPlace(job), toWords: 'The list: ready to start?' });
  const next = places.find(({ seen }) => seen === undefined);
  const came = (place: OilPlaceView | undefined) => {
    const valve = valvesOf(bench.engine).find((one) => valveKey(one) === place?.key);
    if (place !== undefined && valve !== undefined)
      recorder.record({ kind: 'oil-seen', data: { valve, how } }, `Oil came at ${place.name}: ${how}`);
  };
  const taps = places.map(
    (place): Action => ({
      name: `oil ${place.key}`,
      label: place.name,
      keys: [],
      available: place.seen === undefined,
      run: () => came(place),
    }),
  );
  const run = useActions([
    {
      name: 'record',
      label: 'The next one',
      keys: ['Enter', ' ', 'PageDown'],
      available: next !== undefined,
      run: () => came(next),
    },
    ...taps,
  ]);
  if (places.length === 0)
    return <p>The sheet does not say which valves this engine has: tell it at the bench, in its own act.</p>;
  return (
    <>
      <Progress {...progress} />
      {next === undefined ? (
        <Finished words="Oil came at every valve" {...on} go={() => go(on.to)} after="record" />
      ) : (
        <>
          <h2 className="step-lead">Drive the pump and look: where does oil come?</h2>
          <Pick name="How it comes" choices={HOWS} chosen={how} choose={setHow} />
        </>
      )}
      <ul className="plain oil-places">
        {places.map((place) => (
          <li key={place.key}>
            <button
              type="button"
              className={place.seen ? 'act act-second oil-seen' : 'act act-second'}
              data-bench-control={`oil ${place.key}`}
              data-seen={place.seen !== undefined}
              aria-disabled={place.seen !== undefined}
              aria-current={place === next ? 'step' : undefined}
              onClick={() => run(`oil ${place.key}`)}
            >
              {place.seen ? '✓ ' : ''}
              {place.name}
              <span className="act-key">
                {place.seen ? `seen ${place.seen.at.slice(11)}` : place === next ? 'next by the pedal' : 'oil came?'}
              </span>
            </button>
          </li>
        ))}
      </ul>
      <NoOil desk={desk} places={places} />
      {progress.done > 0 && (
        <details className="fold">
          <summary>Seen so far ({progress.done})</summary>
          {places.map(
            ({ key, name, seen }) =>
              seen && (
                <StrikeOut
                  key={key}
                  words={`Oil at ${name}`}
                  given={seen}
                  strike={(reason) => recorder.strikeOut(seen.entry, reason)}
                />
              ),
          )}
        </details>
      )}
    </>
  );
}
