import { proposeLineDone, type RunInView } from '@gudgeon/core/workbench';
import { useLocation } from 'wouter';
import { ActButton, Finished } from '../../../bench/index.js';
import { type Action, useActions } from '../../../keys/index.js';
import { useWayOn } from '../../../shell/index.js';
import { clockText } from '../clock-text.js';
import type { RunInProps } from './run-in-props.js';

interface ClockKeysProps extends RunInProps {
  readonly read: () => void;
  readonly stop: () => void;
}
const PEDAL = ['Enter', ' ', 'PageDown'] as const;

/** Lines without a time that stand before the step that comes next, and were not done. */
const owed = ({ schedule, clock }: RunInView) =>
  schedule.steps.filter(
    ({ number, ofSeconds, state }) =>
      ofSeconds === undefined && state !== 'done' && number <= (clock.step ?? Number.POSITIVE_INFINITY),
  );

/** What can be done at the clock: one usual key, which the pedal presses, and what is unlike it well apart. */
export function ClockKeys(props: ClockKeysProps) {
  const { desk, view, read, stop } = props;
  const { clock, schedule } = view;
  const running = clock.state === 'running';
  const [line] = running ? [] : owed(view);
  const next = nextStep(view);
  const begin = (step: number) => () =>
    desk.recorder.record({ kind: 'run-in-begun', data: { step } }, `The clock runs: step ${step}`);
  const due = clock.nextReadingSeconds ?? Number.POSITIVE_INFINITY;
  const reading: Action = {
    name: 'read',
    label: !running || due <= 0 ? 'Read the gauges now' : `Read the gauges: due in ${clockText(due)}`,
    keys: ['g'],
    available: true,
    run: read,
  };
  const go: Action | undefined =
    line !== undefined
      ? {
          name: 'line-done',
          label: `Done: ${line.words}`,
          keys: [],
          available: true,
          run: () => desk.recorder.take(proposeLineDone(desk.bench, line.number), `Line ${line.number} is done`),
        }
      : next === undefined
        ? undefined
        : { name: 'begin', label: beginWords(view, next), keys: [], available: true, run: begin(next) };
  const passed: Action | undefined =
    line !== undefined && next !== undefined && next !== line.number
      ? { name: 'begin-all-the-same', label: beginWords(view, next), keys: [], available: true, run: begin(next) }
      : undefined;
  const stopping: Action = { name: 'stop', label: 'Stop it', keys: ['Escape', 's'], available: running, run: stop };
  const over = running && clock.leftSeconds !== undefined && clock.leftSeconds <= 0;
  const hurry = running && view.stopNow.length > 0;
  const usual = hurry ? stopping : running && !over ? reading : (go ?? (over ? stopping : reading));
  const main: Action = { ...usual, keys: [...PEDAL, ...usual.keys] };
  const others = [go, running || clock.state === 'stopped' ? reading : undefined].filter(
    (one): one is Action => one !== undefined && one.name !== main.name && !(running && (!over || hurry) && one === go),
  );
  const run = useActions([main, ...others, ...(passed ? [passed] : []), ...(main === stopping ? [] : [stopping])]);
  if (clock.state === 'finished' && line === undefined) return <RunInOver {...props} />;
  return (
    <div className="stack">
      <ActButton action={main} run={run} />
      {others.map((action) => (
        <ActButton key={action.name} action={action} run={run} second />
      ))}
      {[passed, running && main.name !== 'stop' ? stopping : undefined].map(
        (action) =>
          action && (
            <div key={action.name} className="apart">
              <ActButton action={action} run={run} second />
            </div>
          ),
      )}
      {schedule.steps.length === 0 && <p>The sheet prints no run-in.</p>}
    </div>
  );
}

/** The step to begin: the one that is due, or while one runs that is over the next timed one. */
function nextStep({ clock, schedule }: RunInView): number | undefined {
  if (clock.state === 'finished') return undefined;
  if (clock.state !== 'running') return clock.step;
  return schedule.steps.find(
    ({ number, ofSeconds, state }) => ofSeconds !== undefined && state === 'later' && number > (clock.step ?? 0),
  )?.number;
}

function beginWords({ clock, schedule }: RunInView, number: number): string {
  const ran = schedule.steps.find((step) => step.number === number)?.ranSeconds ?? 0;
  if (clock.state === 'not-begun') return `Begin step ${number}`;
  return ran > 0 ? `Begin again: go on with step ${number}` : `Go on with step ${number}`;
}

function RunInOver({ desk }: RunInProps) {
  const [, go] = useLocation();
  const on = useWayOn(desk.job, 'run-in', { to: `/engine/${desk.job}/tests`, toWords: 'Compression and leakage' });
  return <Finished words="The run-in is over. What comes after stands below" {...on} go={() => go(on.to)} />;
}
