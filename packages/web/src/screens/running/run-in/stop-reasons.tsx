import { ActButton, Reasoned } from '../../../bench/index.js';
import { type Action, useActions, useFromTop } from '../../../keys/index.js';
import type { RunInProps } from './run-in-props.js';

/** Why it is stopped: one touch stops the clock. Where the step is over, that is the usual reason. */
export function StopReasons({ desk, view, done }: RunInProps & { readonly done: () => void }) {
  useFromTop('stopping');
  const { clock, stopReasons } = view;
  const over = clock.leftSeconds === undefined || clock.leftSeconds <= 0;
  const stop = (why: string) => {
    if (desk.recorder.record({ kind: 'run-in-stopped', data: { why } }, `Stopped: ${why}`)) done();
  };
  const offered = stopReasons.filter(({ id }) => over || id !== 'over');
  const reasons = offered.map(
    ({ id, words }, index): Action => ({
      name: `stop ${id}`,
      label: words,
      keys: id === 'over' ? ['Enter', ' ', 'PageDown'] : [`${index + 1}`],
      available: true,
      run: () => stop(words),
    }),
  );
  const back: Action = {
    name: 'back',
    label: 'It runs on: back to the clock',
    keys: ['Escape'],
    available: true,
    run: done,
  };
  const run = useActions([...reasons, back]);
  return (
    <section className="stack" aria-labelledby="why-stopped">
      <h2 id="why-stopped" className="step-lead">
        Stop it now. Why?
      </h2>
      <div className="reason-grid">
        {reasons.map((action, index) => (
          <ActButton key={action.name} action={action} run={run} second={index > 0 || !over} />
        ))}
      </div>
      <Reasoned name="Another reason" about="In your own words." button="Stopped for this" usual={[]} record={stop} />
      <div className="apart">
        <ActButton action={back} run={run} second />
      </div>
    </section>
  );
}
