import { actView, operationView, workBenchView } from '@gudgeon/core/workbench';
import { useEffect, useMemo } from 'react';
import { Link, useLocation } from 'wouter';
import { Progress, useAway } from '../../bench/index.js';
import { usePerson } from '../../log/index.js';
import { BenchScreen, momentNow, type OpenJob, Said, setWayBack, useShownIn, WithJob } from '../../shell/index.js';
import { actName, benchPlace, workPlace } from '../work/act-words.js';
import { useMinutes, withinMinutes } from '../work/use-minutes.js';
import { useWork, type WorkDesk } from '../work/use-work.js';
import { earlierWords, recordedLast } from './act-earlier.js';
import { ActStep } from './act-step.js';
import { ComeBack } from './come-back.js';
import { LookStep } from './look-step.js';
import { OtherWays } from './other-ways.js';

interface WorkBenchProps {
  readonly job: string;
  readonly act: string | undefined;
}
export function WorkBenchScreen({ job, act }: WorkBenchProps) {
  return <WithJob job={job}>{(open) => <WorkBench open={open} chosen={act} />}</WithJob>;
}

/** The whole work, one act at a time, to be read from arm's length. */
function WorkBench({ open, chosen }: { readonly open: OpenJob; readonly chosen: string | undefined }) {
  const desk = useWork(open);
  const { bench, job } = desk;
  const [, go] = useLocation();
  const [minutes] = useMinutes();
  const shown = useShownIn();
  const away = useAway(benchPlace(job), usePerson());
  // Back here, there is no other place to go back to.
  useEffect(() => setWayBack(undefined), []);
  const view = useMemo(
    () =>
      workBenchView(bench, {
        ...withinMinutes(minutes),
        ...(chosen !== undefined && { act: chosen }),
        ...(away.reason && { arrival: away.reason }),
        shown,
        now: momentNow().at,
      }),
    [bench, minutes, chosen, away.reason, shown],
  );
  const owed = useMemo(
    () => (chosen === undefined ? undefined : actView(bench, chosen, shown)),
    [bench, chosen, shown],
  );
  const { operation, resume, current } = view;
  const returning = resume !== undefined && away.reason !== undefined;
  const toNext = () => {
    if (!returning) away.back();
    if (chosen !== undefined) go(benchPlace(job), { replace: true });
  };
  return (
    <BenchScreen
      key={operation?.id ?? 'none'}
      title={view.title}
      cautions={view.cautions}
      begun={(operation?.progress.done ?? 0) > 0}
      once
    >
      {owed?.look === 'owed' ? (
        // Who only looks does not go on with the work, so nothing is touched anew for it.
        <LookStep key={owed.id} act={owed} desk={desk} looked={toNext} />
      ) : returning && away.reason ? (
        <ComeBack
          desk={desk}
          arrival={away.reason}
          resume={resume}
          back={(begun) => {
            away.back();
            if (begun !== undefined) go(benchPlace(job, begun));
          }}
        />
      ) : (
        // Found not good, the same act stands there anew.
        <Work
          key={`${current?.act.id} ${current?.act.given?.entry}`}
          desk={desk}
          view={view}
          current={current}
          begin={away.back}
          toNext={toNext}
        />
      )}
    </BenchScreen>
  );
}

interface WorkProps {
  readonly desk: WorkDesk;
  readonly view: ReturnType<typeof workBenchView>;
  readonly current: ReturnType<typeof workBenchView>['current'];
  readonly begin: () => void;
  readonly toNext: () => void;
}
function Work({ desk, view, current, begin, toNext }: WorkProps) {
  const { bench, job } = desk;
  const shown = useShownIn();
  const own = useMemo(
    () => (current ? operationView(bench, current.act.operation, shown) : undefined),
    [bench, current, shown],
  );
  const last = own && recordedLast(own);
  return (
    <>
      <Progress {...view.progress} />
      {view.complete && (
        <p className="work-complete" role="status" data-complete>
          ✓ {view.complete}
        </p>
      )}
      {current && own ? (
        <ActStep
          desk={desk}
          view={view}
          offer={current}
          earlier={earlierWords(own, current.act)}
          begin={begin}
          done={toNext}
        />
      ) : (
        <section className="finished" data-nothing>
          <p className="finished-words">{view.nothing}</p>
          <Link className="act" data-bench-control="work" href={workPlace(job)}>
            The whole work
          </Link>
        </section>
      )}
      <Said recorder={desk.recorder} />
      {view.next && <p className="next-step">Then: {actName(view.next)}</p>}
      {view.looksOwed > 0 && (
        <Link className="button" href={`${workPlace(job)}#looks`}>
          Second looks owed: {view.looksOwed}
        </Link>
      )}
      <OtherWays
        desk={desk}
        {...(current && { act: current.act })}
        {...(view.operation && { operation: view.operation })}
        {...(last && { last })}
        done={toNext}
      />
    </>
  );
}
