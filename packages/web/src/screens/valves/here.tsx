import { valveKey } from '@gudgeon/core/engine';
import { type HereView, hereView } from '@gudgeon/core/workbench';
import { useMemo, useState } from 'react';
import { Hindrances } from '../../bench/index.js';
import { FigureView, useShownWidth } from '../../figures/index.js';
import { useActions } from '../../keys/index.js';
import { Said } from '../../shell/index.js';
import { CrankFigure } from './crank-figure.js';
import type { Desk } from './desk.js';
import { FigureChoice } from './figure-choice.js';
import { HereLists } from './here-lists.js';
import { KeyAngle } from './key-angle.js';
import { ValveStep } from './valve-step.js';

const figures = [
  ['map', 'All valves'],
  ['front', 'Front'],
  ['damper', 'Damper'],
] as const;
const steps = [-90, -10, 10, 90] as const;
const cycle = 720;

/** "The crank is here: what may I set?" */
export function Here({ desk }: { readonly desk: Desk }) {
  const { bench, choices } = desk;
  const [crank, setCrank] = useState(0);
  const [figure, setFigure] = useState<'map' | 'front' | 'damper'>('map');
  const [chosen, setChosen] = useState<string>();
  const shownWidth = useShownWidth();
  const view = useMemo(() => hereView(bench, crank, choices, { shownWidth }), [bench, crank, choices, shownWidth]);
  const turn = (by: number) => {
    setChosen(undefined);
    setCrank((now) => (((now + by) % cycle) + cycle) % cycle);
  };
  useActions([
    { name: 'back', label: '−10°', keys: ['ArrowLeft'], available: true, run: () => turn(-10) },
    { name: 'forward', label: '+10°', keys: ['ArrowRight'], available: true, run: () => turn(10) },
  ]);
  if (!view) return <Hindrances hindrances={desk.view.hindrances.map((words) => ({ code: 'no-timing', words }))} />;
  const valve = view.may.find((one) => one.key === chosen);
  const touch = (key: string) => {
    if (view.may.some((one) => one.key === key)) setChosen(key);
    else desk.recorder.complain(reasonFor(view.mayNot, key) ?? 'That valve may not be set here.');
  };
  return (
    <div className="bench-two">
      <div className="stack valve-drawing">
        {figure === 'map' ? (
          <FigureView figure={view.map} onTouch={touch} {...(valve ? { current: valve.key } : {})} />
        ) : (
          <CrankFigure desk={desk} name={figure} angle={view.crankAngle} />
        )}
        <FigureChoice names={figures} chosen={figure} choose={setFigure} />
      </div>
      <div className="bench">
        {valve ? (
          <>
            <ValveStep
              key={`${valve.key} ${valve.given?.entry}`}
              desk={desk}
              valve={valve}
              at={{ method: 'crank-here', crankDegrees: view.crankDegrees }}
              done={() => setChosen(undefined)}
            />
            <button type="button" className="button" onClick={() => setChosen(undefined)}>
              Back to all valves here
            </button>
          </>
        ) : (
          <>
            <p className="step-lead">After firing dead centre of cylinder {bench.engine.layout.firingOrder[0]}</p>
            <p className="target-number" data-current-number>
              {view.crankDegrees}°
            </p>
            <div className="here-steps-row">
              {steps.map((step) => (
                <button
                  key={step}
                  type="button"
                  className="act act-second"
                  data-bench-control={`turn ${step}`}
                  onClick={() => turn(step)}
                >
                  {step > 0 ? `+${step}°` : `−${-step}°`}
                </button>
              ))}
            </div>
            <HereLists view={view} choose={setChosen} />
            <KeyAngle take={(degrees) => setCrank(degrees)} />
          </>
        )}
        <Said recorder={desk.recorder} />
      </div>
    </div>
  );
}

function reasonFor(mayNot: HereView['mayNot'], key: string): string | undefined {
  const one = mayNot.find(({ valve }) => valveKey(valve) === key);
  return one && `${one.place} may not be set here. ${one.reason}.`;
}
