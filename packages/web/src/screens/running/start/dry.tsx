import { ActButton } from '../../../bench/index.js';
import { type Action, useActions, useFromTop } from '../../../keys/index.js';
import { useNow } from '../use-now.js';
import { Counted } from './counted.js';
import { GO_TICK } from './cranking.js';
import type { GoProps } from './start-props.js';
import { secondsFrom } from './use-go.js';

/** It runs, and the gauge shows nothing yet. The keys stay where they are when the time is over: no hand finds the other one there. */
export function Dry({ view, go }: GoProps) {
  const now = useNow(GO_TICK, go.run);
  useFromTop('dry');
  const { firedAt } = go.run;
  const seconds = secondsFrom(firedAt, now);
  const over = seconds >= view.stop.seconds;
  const shows: Action = {
    name: 'shows',
    label: 'Oil pressure shows',
    keys: ['Enter', ' ', 'PageDown'],
    available: true,
    run: () => go.set({ ...go.run, phase: 'pressure', pressureAt: Date.now() }),
  };
  const stop: Action = {
    name: 'stop',
    label: 'Stop: it stands',
    keys: ['Escape', 's'],
    available: true,
    run: () => go.set({ ...go.run, phase: 'stopped' }),
  };
  const run = useActions([shows, stop]);
  return (
    <section className="bench" data-go="dry">
      <Counted
        seconds={seconds}
        name="Runs without oil pressure"
        most={view.stop.seconds}
        stop={`the engine: ${view.stop.seconds} s without oil pressure.`}
      />
      <div className="go-main">
        <ActButton action={shows} run={run} second={over} />
      </div>
      <div className="apart">
        <ActButton action={stop} run={run} second={!over} />
      </div>
    </section>
  );
}
