import { ActButton } from '../../../bench/index.js';
import { type Action, useActions, useFromTop } from '../../../keys/index.js';
import { useNow } from '../use-now.js';
import { Counted } from './counted.js';
import type { GoProps } from './start-props.js';
import { secondsFrom } from './use-go.js';

/** The clock of a go is looked at this often [ms]. */
export const GO_TICK = 200;

/** It turns on the starter. */
export function Cranking({ desk, view, go }: GoProps) {
  const now = useNow(GO_TICK, go.run);
  useFromTop('cranking');
  const { crankedAt } = go.run;
  const runs: Action = {
    name: 'runs',
    label: 'It runs',
    keys: ['Enter', ' ', 'PageDown'],
    available: true,
    run: () => go.set({ ...go.run, phase: 'dry', firedAt: Date.now() }),
  };
  const stop: Action = {
    name: 'stop',
    label: 'Stop: it does not fire',
    keys: ['Escape', 's'],
    available: true,
    run: () => {
      const crankedSeconds = secondsFrom(crankedAt, Date.now());
      const data = { crankedSeconds, outcome: 'no-start' } as const;
      if (desk.recorder.record({ kind: 'start-tried', data }, `${crankedSeconds} s on the starter, it did not fire`))
        go.set({ phase: 'lines' });
    },
  };
  const run = useActions([runs, stop]);
  return (
    <section className="bench" data-go="cranking">
      <Counted
        seconds={secondsFrom(crankedAt, now)}
        name="On the starter"
        most={view.stop.cranking?.seconds}
        stop="cranking. Longer wipes the paste off the lobes."
      />
      <div className="go-main">
        <ActButton action={runs} run={run} />
      </div>
      <div className="apart">
        <ActButton action={stop} run={run} second />
      </div>
      <details className="fold">
        <summary>It was not turned at all</summary>
        <button type="button" className="button" onClick={() => go.set({ phase: 'lines' })}>
          Forget this go
        </button>
      </details>
    </section>
  );
}
