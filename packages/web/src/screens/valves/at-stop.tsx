import type { ValveTask } from '@gudgeon/core/workbench';
import { useState } from 'react';
import { FigureView } from '../../figures/index.js';
import { CrankFigure } from './crank-figure.js';
import type { Desk } from './desk.js';
import { FigureChoice } from './figure-choice.js';
import { LookStep } from './look-step.js';
import { MeasureShim } from './measure-shim.js';
import { ValveStep } from './valve-step.js';

const figures = [
  ['map', 'All valves'],
  ['gear', 'This valve'],
] as const;

interface AtStopProps {
  readonly desk: Desk;
  readonly task: ValveTask;
  readonly next: ValveTask['stops'][number];
}

/** The crank stands at the stop: its valves one after the other, the map beside them. */
export function AtStop({ desk, task, next }: AtStopProps) {
  const [touched, setTouched] = useState<string>();
  const [figure, setFigure] = useState<'map' | 'gear'>('map');
  const { stop, left } = next;
  const valve = left.find((one) => one.key === touched) ?? left[0];
  if (!valve) return null;
  const touch = (key: string) => {
    if (left.some((one) => one.key === key)) setTouched(key);
    else desk.recorder.complain(whyNot(desk, next, key));
  };
  const step = { desk, valve, done: () => setTouched(undefined) };
  const key = `${task.phase} ${valve.key} ${valve.given?.entry}`;
  return (
    <div className="bench-two">
      <div className="stack valve-drawing">
        {figure === 'map' ? (
          <FigureView figure={stop.map} onTouch={touch} current={valve.key} low />
        ) : (
          <CrankFigure desk={desk} name="gear" angle={stop.crankAngle} valve={valve.valve} />
        )}
      </div>
      {task.phase === 'measure' && <MeasureShim key={key} {...step} />}
      {task.phase === 'look-again' && <LookStep key={key} {...step} />}
      {task.phase === 'set' && (
        <ValveStep key={key} {...step} at={{ method: 'stop', crankDegrees: stop.crankDegrees }} />
      )}
      <FigureChoice names={figures} chosen={figure} choose={setFigure} />
    </div>
  );
}

function whyNot({ view }: Desk, { stop }: ValveTask['stops'][number], key: string): string {
  const place = view.valves.find((one) => one.key === key)?.place ?? key;
  const done = stop.valves.some((one) => one.key === key);
  return done ? `${place} is done at this stop.` : `${place} is not for this stop: it waits for another.`;
}
