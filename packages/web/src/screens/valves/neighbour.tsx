import type { ValveSettingView, ValvesView } from '@gudgeon/core/workbench';
import { useState } from 'react';
import { Hindrances, Progress } from '../../bench/index.js';
import { Said } from '../../shell/index.js';
import { CrankFigure } from './crank-figure.js';
import type { Desk } from './desk.js';
import { FigureChoice } from './figure-choice.js';
import { ValveStep } from './valve-step.js';

type Step = ValvesView['neighbour'][number];

/** The per-cylinder method: no marks, one valve at a time, told by what its neighbour does. */
export function Neighbour({ desk }: { readonly desk: Desk }) {
  const { view } = desk;
  const [touched, setTouched] = useState<string>();
  const stand = new Map(view.valves.map((valve) => [valve.key, valve]));
  const waits = ({ key }: Step) => ['open', 'bad'].includes(stand.get(key)?.state ?? '');
  const step =
    view.neighbour.find((one) => one.key === touched) ?? view.neighbour.find((one) => one.permitted && waits(one));
  const valve = step && stand.get(step.key);
  return (
    <>
      <Progress {...view.progress} />
      <Hindrances hindrances={view.hindrances.map((words) => ({ code: 'no-plan', words }))} />
      {step && valve ? (
        <div className="bench-two step-first">
          <div className="bench">
            <p className="step-lead" data-watch={step.key}>
              {step.words}
            </p>
            <ValveStep
              key={`${step.key} ${valve.given?.entry}`}
              desk={desk}
              valve={{ ...valve, marginDegrees: step.marginDegrees ?? 0 }}
              at={{ method: 'neighbour' }}
              done={() => setTouched(undefined)}
            />
          </div>
          <Watched desk={desk} step={step} />
        </div>
      ) : (
        <p className="step-lead">Nothing is left that may be set in this way.</p>
      )}
      <Said recorder={desk.recorder} />
      <List steps={view.neighbour} stand={stand} look={setTouched} />
    </>
  );
}

const figures = [
  ['watch', 'The valve to watch'],
  ['gear', 'The valve to set'],
] as const;

/** Both valves of the cylinder at the moment in question: the one that just moves, and the one at rest. */
function Watched({ desk, step }: { readonly desk: Desk; readonly step: Step }) {
  const [figure, setFigure] = useState<'watch' | 'gear'>('watch');
  if (step.crankAngle === undefined || step.watch === undefined) return null;
  return (
    <div className="stack valve-drawing">
      <CrankFigure
        desk={desk}
        name="gear"
        angle={step.crankAngle}
        valve={figure === 'watch' ? step.watch : step.valve}
      />
      <FigureChoice names={figures} chosen={figure} choose={setFigure} />
    </div>
  );
}

interface ListProps {
  readonly steps: readonly Step[];
  readonly stand: ReadonlyMap<string, ValveSettingView>;
  readonly look: (key: string) => void;
}

function List({ steps, stand, look }: ListProps) {
  return (
    <details className="fold">
      <summary>All {steps.length} valves in this way</summary>
      <ul className="plain stack">
        {steps.map((step) => (
          <li key={step.key}>
            <button
              type="button"
              className="button row-button"
              disabled={!step.permitted}
              onClick={() => look(step.key)}
            >
              <span>
                <strong>{step.place}</strong>
                <br />
                {step.words}
              </span>
              <span>
                {stand.get(step.key)?.state === 'open' ? '' : '✓ '}
                {step.marginDegrees === undefined ? 'by eye' : `${step.marginDegrees}°`}
              </span>
            </button>
          </li>
        ))}
      </ul>
    </details>
  );
}
