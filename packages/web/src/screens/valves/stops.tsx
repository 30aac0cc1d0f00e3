import { crankApproach, type ValveTask, valveTask } from '@gudgeon/core/workbench';
import { useMemo, useState } from 'react';
import { useLocation } from 'wouter';
import { Finished, Progress } from '../../bench/index.js';
import { useShownWidth } from '../../figures/index.js';
import { Said, useWayOn } from '../../shell/index.js';
import { AtStop } from './at-stop.js';
import type { Desk } from './desk.js';
import { NoStop } from './no-stop.js';
import { TurnPage } from './turn-page.js';
import type { WayName } from './ways.js';

interface StopsProps {
  readonly desk: Desk;
  readonly goTo: (way: WayName) => void;
}
/** Where the person last said that the crank stands, and for which phase of the work. */
interface Arrived {
  readonly phase: ValveTask['phase'];
  readonly crankDegrees: number;
}

/** Stop by stop: how to turn and what to see, then each valve of the stop, then all again after two turns. */
export function Stops({ desk, goTo }: StopsProps) {
  const { bench, view, job } = desk;
  const [arrived, setArrived] = useState<Arrived>();
  const [, go] = useLocation();
  const shownWidth = useShownWidth();
  const task = useMemo(() => valveTask(view, arrived?.crankDegrees), [view, arrived]);
  const next = task.stops[0];
  const twoTurns = task.phase === 'look-again' && asksTwoTurns(arrived, view.recheck.progress.done);
  const approach = useMemo(
    () => next && crankApproach(bench, next.stop, arrived?.crankDegrees, twoTurns, { shownWidth }),
    [bench, next, arrived, twoTurns, shownWidth],
  );
  const on = useWayOn(job, 'valves', { to: `/engine/${job}/record`, toWords: 'The record' });
  if (task.phase === 'finished')
    return (
      <Finished words="Every valve is set, and was looked at again after two turns" {...on} go={() => go(on.to)} />
    );
  if (!next || !approach) return <NoStop view={view} goTo={goTo} />;
  const here = arrived?.phase === task.phase && arrived.crankDegrees === next.stop.crankDegrees;
  return (
    <>
      <Progress {...progressOf(desk, task)} />
      {here ? (
        <AtStop desk={desk} task={task} next={next} />
      ) : (
        <TurnPage
          key={`${task.phase} ${next.stop.crankDegrees}`}
          desk={desk}
          task={task}
          next={next}
          approach={approach}
          arrive={() => setArrived({ phase: task.phase, crankDegrees: next.stop.crankDegrees })}
        />
      )}
      <Said recorder={desk.recorder} />
    </>
  );
}

/** Once at the beginning of the second look; a person who comes back in the middle of it has turned them already. */
const asksTwoTurns = (arrived: Arrived | undefined, looked: number): boolean =>
  arrived === undefined ? looked === 0 : arrived.phase !== 'look-again';

function progressOf({ view }: Desk, task: ValveTask) {
  if (task.phase === 'measure' && view.shims) return view.shims.progress;
  return task.phase === 'look-again' ? view.recheck.progress : view.progress;
}
