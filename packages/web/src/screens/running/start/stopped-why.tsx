import { proposeStart } from '@gudgeon/core/workbench';
import { ActButton, ReasonForm } from '../../../bench/index.js';
import { type Action, useActions, useFromTop } from '../../../keys/index.js';
import type { GoProps } from './start-props.js';
import { secondsFrom } from './use-go.js';

/** It was stopped: what for. A gauge that showed nothing is a reading of nothing, not a reading that is missing. */
export function StoppedWhy({ desk, view, go, written }: GoProps & { readonly written: () => void }) {
  useFromTop('stopped');
  const { crankedAt, firedAt, pressureAt } = go.run;
  const write = (why: string, pressure?: string) => {
    const wish = {
      crankedSeconds: secondsFrom(crankedAt, firedAt),
      ...(pressureAt !== undefined && { pressureAfterSeconds: secondsFrom(firedAt, pressureAt) }),
      ...(pressure !== undefined && { pressure }),
      outcome: 'stopped',
    } as const;
    const { recorder, bench } = desk;
    if (!recorder.take(proposeStart(bench, wish), `Stopped: ${why}`)) return;
    recorder.record({ kind: 'note', data: { about: 'first start', text: `Stopped: ${why}` } }, `Stopped: ${why}`);
    written();
    go.set({ phase: 'lines' });
  };
  const dry: Action = {
    name: 'no-pressure',
    label: 'No oil pressure: the gauge showed nothing',
    keys: ['Enter', ' ', 'PageDown'],
    available: pressureAt === undefined,
    run: () => write('no oil pressure', '0 bar'),
  };
  const run = useActions([dry]);
  const others = view.stop.rules.slice(1).map(({ words }) => words.replace(/\.$/, ''));
  return (
    <section className="bench" data-go="stopped">
      <h2 className="aloud">It stands. Why?</h2>
      {dry.available && <ActButton action={dry} run={run} />}
      <div className={dry.available ? 'apart' : undefined}>
        <ReasonForm button="Stopped for this" usual={others} record={(reason) => write(reason)} />
      </div>
    </section>
  );
}
