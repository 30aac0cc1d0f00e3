import { proposeStart } from '@gudgeon/core/workbench';
import { ActButton } from '../../../bench/index.js';
import { type Action, useActions } from '../../../keys/index.js';
import { FigureEntry } from '../figure-entry.js';
import type { GoProps } from './start-props.js';
import { secondsFrom } from './use-go.js';

const UNITS = ['bar', 'psi', 'kPa', 'kgf/cm2'] as const;

/** The gauge shows something: how much. With the figure the go is written down. */
export function PressureSeen({ desk, go, written }: GoProps & { readonly written: () => void }) {
  const { crankedAt, firedAt, pressureAt } = go.run;
  const crankedSeconds = secondsFrom(crankedAt, firedAt);
  const pressureAfterSeconds = secondsFrom(firedAt, pressureAt);
  const take = (pressure: string, raw: string) => {
    const wish = { crankedSeconds, pressureAfterSeconds, pressure, outcome: 'runs' } as const;
    const words = `It runs: ${pressure} after ${pressureAfterSeconds} s`;
    if (!desk.recorder.take(proposeStart(desk.bench, wish), words, raw)) return;
    written();
    go.set({ phase: 'lines' });
  };
  const stop: Action = {
    name: 'stop',
    label: 'Stop: it stands',
    keys: ['Escape'],
    available: true,
    run: () => go.set({ ...go.run, phase: 'stopped' }),
  };
  const run = useActions([stop]);
  return (
    <section className="bench" data-go="pressure">
      <p className="step-lead">Pressure came after {pressureAfterSeconds} s. Keep to the run-in speed, and read it.</p>
      <FigureEntry slot="Oil pressure" about="first pressure" units={UNITS} memory="pressure" take={take} />
      <div className="apart">
        <ActButton action={stop} run={run} second />
      </div>
    </section>
  );
}
