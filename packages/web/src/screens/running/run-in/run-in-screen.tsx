import { runInView, startView } from '@gudgeon/core/workbench';
import { useEffect, useMemo, useState } from 'react';
import { Progress, say } from '../../../bench/index.js';
import { localTime } from '../../../log/index.js';
import { BenchScreen, type OpenJob, Said, WithJob } from '../../../shell/index.js';
import { StopRules } from '../start/stop-rules.js';
import { StopSign } from '../stop-sign.js';
import { useNow } from '../use-now.js';
import { useRunning } from '../use-running.js';
import { Afterwards } from './afterwards.js';
import { ClockFace } from './clock-face.js';
import { ClockKeys } from './clock-keys.js';
import { GaugeBoard } from './gauge-board.js';
import { GaugeWalk } from './gauge-walk.js';
import { LoadWords } from './load-words.js';
import { Readings } from './readings.js';
import { ScheduleList } from './schedule-list.js';
import { StopReasons } from './stop-reasons.js';
import { Stops } from './stops.js';

export function RunInScreen({ job }: { readonly job: string }) {
  return <WithJob job={job}>{(open) => <RunIn open={open} />}</WithJob>;
}

/** A clock that runs is told each second; one that stands only so that the minute is right [ms]. */
const TICK = { running: 1000, still: 30_000 };
type Doing = 'clock' | 'gauges' | 'stopping';

/** The run-in by the clock: the step, what is left of it, the gauges in between. All of it is computed from the log and the time of this device. */
function RunIn({ open }: { readonly open: OpenJob }) {
  const desk = useRunning(open);
  const { bench } = desk;
  const [running, setRunning] = useState(false);
  const now = useNow(running ? TICK.running : TICK.still, bench);
  const view = useMemo(() => runInView(bench, localTime(new Date(now))), [bench, now]);
  const start = useMemo(() => startView(bench), [bench]);
  const [doing, setDoing] = useState<Doing>('clock');
  const { clock } = view;
  useEffect(() => setRunning(clock.state === 'running'), [clock.state]);
  useEffect(() => {
    if (clock.call !== undefined) say(clock.call);
  }, [clock.call]);
  const toClock = () => setDoing('clock');
  const props = { desk, view };
  const [stop] = view.stopNow;
  return (
    <BenchScreen title={view.title} cautions={view.cautions} begun={clock.state !== 'not-begun'}>
      <Progress words={clock.words} done={clock.totalSeconds} of={clock.ofSeconds} />
      {stop !== undefined && <StopSign words={`the engine: ${view.stopNow.join('; ')}.`} />}
      {doing === 'stopping' && clock.state === 'running' ? (
        <StopReasons {...props} done={toClock} />
      ) : doing === 'gauges' ? (
        <GaugeWalk {...props} done={toClock} stop={() => setDoing('stopping')} />
      ) : (
        <>
          <ClockFace view={view} />
          <ClockKeys {...props} read={() => setDoing('gauges')} stop={() => setDoing('stopping')} />
        </>
      )}
      <Said recorder={desk.recorder} />
      {doing === 'clock' && (
        <>
          {view.stops.length > 0 && clock.state !== 'running' && <Stops view={view} />}
          {clock.state === 'finished' && <Afterwards {...props} />}
          <GaugeBoard view={view} />
          <LoadWords {...props} />
          <Readings {...props} />
          <ScheduleList {...props} />
          <StopRules view={start} />
          {clock.state !== 'finished' && (
            <details className="fold">
              <summary>What comes after the run-in</summary>
              <Afterwards {...props} />
            </details>
          )}
          {view.stops.length > 0 && clock.state === 'running' && (
            <details className="fold">
              <summary>Times that it was stopped ({view.stops.length})</summary>
              <Stops view={view} />
            </details>
          )}
        </>
      )}
    </BenchScreen>
  );
}
