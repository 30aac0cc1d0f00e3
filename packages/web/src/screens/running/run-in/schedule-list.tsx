import { proposeLineDone, type RunInStepView } from '@gudgeon/core/workbench';
import { StateMark } from '../state-mark.js';
import type { RunInProps } from './run-in-props.js';

/** The whole schedule with where it comes from. While the engine stands, any line can be taken up: one that was passed, or one to run anew. */
export function ScheduleList({ desk, view }: RunInProps) {
  const { schedule, clock } = view;
  const still = clock.state !== 'running';
  const take = ({ number, ofSeconds }: RunInStepView) =>
    ofSeconds === undefined
      ? desk.recorder.take(proposeLineDone(desk.bench, number), `Line ${number} is done`)
      : desk.recorder.record({ kind: 'run-in-begun', data: { step: number } }, `The clock runs: step ${number}`);
  return (
    <section className="stack" aria-labelledby="schedule">
      <h2 id="schedule">Schedule</h2>
      <p className={schedule.fromSheet ? 'soft' : 'still-open'}>
        {schedule.fromSheet ? schedule.origin : `The sheet prints no run-in; this one is ${schedule.origin}.`}
      </p>
      <ol className="plain state-list">
        {schedule.steps.map((step) => (
          <li key={step.number} className="schedule-line" data-line-state={step.state}>
            <StateMark state={step.state} />
            <span className="act-link-words">
              <strong>
                {step.number}. {step.words}
              </strong>
              <span>{[step.time, step.speed, step.load && `load: ${step.load}`].filter(Boolean).join(', ')}</span>
              {step.ranSeconds > 0 && <small>{Math.floor(step.ranSeconds / 60)} min run</small>}
            </span>
            {still && (
              <button
                type="button"
                className="button"
                aria-label={`${takeWords(step)}: line ${step.number}`}
                onClick={() => take(step)}
              >
                {takeWords(step)}
              </button>
            )}
          </li>
        ))}
      </ol>
    </section>
  );
}
const takeWords = ({ ofSeconds, state }: RunInStepView): string =>
  ofSeconds === undefined ? 'Done' : state === 'done' ? 'Run anew' : 'Run this';
