import { startView } from '@gudgeon/core/workbench';
import { useMemo } from 'react';
import { useFromTop } from '../../../keys/index.js';
import { BenchScreen, type OpenJob, Said, WithJob } from '../../../shell/index.js';
import { useRunning } from '../use-running.js';
import { GoPart } from './go-part.js';
import { IgnitionPart } from './ignition-part.js';
import { OilPart } from './oil-part.js';
import { type PartName, Parts, partNamed } from './parts.js';
import { ReadyPart } from './ready-part.js';
import { useGo } from './use-go.js';

interface StartScreenProps {
  readonly job: string;
  readonly part: string | undefined;
}
export function StartScreen({ job, part }: StartScreenProps) {
  return <WithJob job={job}>{(open) => <Start open={open} part={partNamed(part)} />}</WithJob>;
}

/** From oil at the valves to the first start: what has to be so, as the log has it, and then the start itself. */
function Start({ open, part }: { readonly open: OpenJob; readonly part: PartName }) {
  const desk = useRunning(open);
  const { bench, job } = desk;
  const view = useMemo(() => startView(bench), [bench]);
  const go = useGo(job);
  useFromTop(part);
  const begun = view.oil.progress.done > 0 || view.tries.length > 0;
  const props = { desk, view };
  // A go at the starter that is under way has the screen to itself, wherever it was opened.
  const turning = go.run.phase !== 'lines' && go.run.phase !== 'clear';
  return (
    <BenchScreen title="Prime and start" cautions={view.cautions} begun={begun}>
      {turning || part === 'go' ? (
        <GoPart {...props} go={go} />
      ) : (
        <>
          {part === 'ready' && <ReadyPart {...props} />}
          {part === 'oil' && <OilPart {...props} />}
          {part === 'ignition' && <IgnitionPart desk={desk} />}
        </>
      )}
      <Said recorder={desk.recorder} />
      {!turning && <Parts job={job} part={part} />}
    </BenchScreen>
  );
}
