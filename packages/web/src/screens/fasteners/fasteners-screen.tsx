import { type Bench, type FastenersView, fastenersView } from '@gudgeon/core/workbench';
import { useState } from 'react';
import { useLocation } from 'wouter';
import { Finished, Progress } from '../../bench/index.js';
import { FigureView, usePlan } from '../../figures/index.js';
import { BenchScreen, type OpenJob, Said, useBench, useRecord, useWayOn, WithJob } from '../../shell/index.js';
import { HoleList } from './hole-list.js';
import { HoleStep } from './hole-step.js';
import { LayOutFirst } from './lay-out-first.js';

export function FastenersScreen({ job, joint }: { readonly job: string; readonly joint: string }) {
  return <WithJob job={job}>{(open) => <Fasteners open={open} joint={joint} />}</WithJob>;
}

function Fasteners({ open, joint }: { readonly open: OpenJob; readonly joint: string }) {
  const bench = useBench(open);
  const view = fastenersView(bench, joint, usePlan());
  if (!view) return <h1>This engine has no joint “{joint}”</h1>;
  const begun = view.holes.some((hole) => hole.state !== 'empty');
  return (
    <BenchScreen title={view.title} cautions={view.cautions} begun={begun}>
      <Places open={open} bench={bench} view={view} begun={begun} />
    </BenchScreen>
  );
}

interface PlacesProps {
  readonly open: OpenJob;
  readonly bench: Bench;
  readonly view: FastenersView;
  readonly begun: boolean;
}

function Places({ open, bench, view, begun }: PlacesProps) {
  const recorder = useRecord(open, bench);
  const [, go] = useLocation();
  const [laidOut, setLaidOut] = useState(begun);
  const [touched, setTouched] = useState<string>();
  const tighten = `/engine/${open.job}/tighten/${view.joint}`;
  const on = useWayOn(open.job, `fasteners/${view.joint}`, { to: tighten, toWords: 'Tighten' });
  const at = touched ?? view.current;
  const hole = view.holes.find((one) => one.hole === at);
  if (!laidOut) return <LayOutFirst rows={view.layOut} done={() => setLaidOut(true)} />;
  return (
    <>
      <Progress {...view.progress} />
      <div className="bench-two">
        {view.figure && <FigureView figure={view.figure} onTouch={setTouched} low {...(at ? { current: at } : {})} />}
        <div className="bench">
          {hole ? (
            <HoleStep
              key={`${hole.hole}/${hole.instance}/${hole.state}`}
              view={view}
              hole={hole}
              joint={open.engine.joints.find((one) => one.id === view.joint)}
              recorder={recorder}
              on={() => setTouched(undefined)}
            />
          ) : (
            <Finished words="Every hole has its fastener" {...on} go={() => go(on.to)} />
          )}
          <Said recorder={recorder} />
        </div>
      </div>
      <HoleList holes={view.holes} look={setTouched} />
    </>
  );
}
