import { jointById } from '@gudgeon/core/engine';
import { tightenView } from '@gudgeon/core/workbench';
import { Link, useLocation } from 'wouter';
import { Finished, Hindrances, useAway } from '../../bench/index.js';
import { FigureView, usePlan } from '../../figures/index.js';
import { usePerson } from '../../log/index.js';
import { BenchScreen, type OpenJob, Said, useBench, useRecord, useWayOn, WithJob } from '../../shell/index.js';
import { ActStep } from './act-step.js';
import { ComeBack } from './come-back.js';
import { DoneActs } from './done-acts.js';
import { LookForMark } from './look-for-mark.js';
import { useWrench } from './use-wrench.js';

export function TightenScreen({ job, joint }: { readonly job: string; readonly joint: string }) {
  return <WithJob job={job}>{(open) => <Tighten open={open} jointId={joint} />}</WithJob>;
}

function Tighten({ open, jointId }: { readonly open: OpenJob; readonly jointId: string }) {
  const bench = useBench(open);
  const recorder = useRecord(open, bench);
  const [, go] = useLocation();
  const away = useAway(`${open.job}/tighten/${jointId}`, usePerson());
  const joint = jointById(open.engine, jointId);
  const engine = `/engine/${open.job}`;
  const on = useWayOn(open.job, `tighten/${jointId}`, { to: engine, toWords: 'Back to the engine' });
  const wrench = useWrench(`${open.job}/${jointId}`);
  const view = tightenView(bench, jointId, away.reason, usePlan(), wrench.hand);
  if (!view || !joint) return <h1>This engine has no joint “{jointId}”</h1>;
  const { current, place, look, resume } = view;
  const part = current?.hole ?? place?.hole ?? look?.hole;
  const touch = (hole: string) => {
    if (part !== undefined && hole !== part)
      recorder.complain(`Hole ${hole} was touched. Hole ${part} is the one now.`);
  };
  return (
    <BenchScreen title={view.title} cautions={view.cautions} begun={view.done.length > 0}>
      {resume && away.reason ? (
        <ComeBack
          joint={jointId}
          bench={bench}
          reason={away.reason}
          resume={resume}
          recorder={recorder}
          back={away.back}
        />
      ) : (
        <>
          <div className="bench-two">
            {view.figure && (
              <FigureView figure={view.figure} onTouch={touch} low {...(part ? { current: part } : {})} />
            )}
            <div className="bench">
              {look && <LookForMark joint={jointId} bench={bench} look={look} recorder={recorder} />}
              {!look && !current && <Hindrances hindrances={view.hindrances} />}
              {place && (
                <Link className="act" data-bench-control="place" href={`${engine}/fasteners/${view.joint}`}>
                  Hole {place.hole}: fasteners
                </Link>
              )}
              {current && !look && (
                <ActStep
                  key={`${current.key}/${current.round}/${current.instance}`}
                  view={view}
                  act={current}
                  joint={joint}
                  bench={bench}
                  recorder={recorder}
                  begin={away.back}
                  wrench={wrench}
                  gauges={`${engine}/measure`}
                />
              )}
              {view.finished && (
                <Finished
                  words={
                    view.skipped.length > 0
                      ? `All offered; ${view.skipped.length} skipped with a reason`
                      : `${view.title}: every stage recorded`
                  }
                  {...on}
                  go={() => go(on.to)}
                />
              )}
              {(!current || look) && <Said recorder={recorder} />}
            </div>
          </div>
          <DoneActs view={view} recorder={recorder} />
        </>
      )}
    </BenchScreen>
  );
}
