import type { RunInView } from '@gudgeon/core/workbench';
import { clockText } from '../clock-text.js';

/** The step that runs or comes next, and what is left of it, to be read from the far side of the engine. */
export function ClockFace({ view }: { readonly view: RunInView }) {
  const { clock, schedule } = view;
  const step = schedule.steps.find(({ number }) => number === clock.step);
  if (clock.state === 'finished' || step === undefined)
    return <h2 className="step-lead">✓ All timed steps have run</h2>;
  const left = clock.leftSeconds;
  const over = left !== undefined && left <= 0;
  return (
    <section className="clock-face" data-clock={clock.state} data-step={step.number}>
      <h2 className="step-lead">
        {clock.state === 'running' ? 'Now' : clock.state === 'stopped' ? 'It stands. Next' : 'First'}: step{' '}
        {step.number}
      </h2>
      {left !== undefined && (
        <p className="target-number clock-left" data-current-number role="timer" aria-live="off">
          {clockText(left)}
          <span className="only-read">{over ? ' beyond its time' : ' left'}</span>
        </p>
      )}
      <p className="clock-does">{step.words}</p>
      <p className="clock-held">
        {step.speed !== '' && <strong>{step.speed}</strong>}
        {step.load !== '' && <span>load: {step.load}</span>}
        {left === undefined && <span>no time is printed for it</span>}
      </p>
      {clock.call !== undefined && (
        <p className="work-word" role="status" data-call>
          {clock.call}
        </p>
      )}
      <p className="soft clock-origin">{step.origin}</p>
    </section>
  );
}
