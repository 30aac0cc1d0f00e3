import { type WorkActView, type WorkView, workView } from '@gudgeon/core/workbench';
import { type ReactNode, useEffect, useMemo } from 'react';
import { Progress } from '../../bench/index.js';
import { usePerson } from '../../log/index.js';
import { AskPerson, type OpenJob, Said, Title, useShownIn, WithJob } from '../../shell/index.js';
import { LeftCard } from '../work-bench/come-back.js';
import { ActLink } from './act-link.js';
import { AddAct } from './add-act.js';
import { Aids } from './aids.js';
import { Changed } from './changed.js';
import { Leave } from './leave.js';
import { Now } from './now.js';
import { Phases } from './phases.js';
import { Skips } from './skips.js';
import { MINUTES, useMinutes, withinMinutes } from './use-minutes.js';
import { useWork, type WorkDesk } from './use-work.js';

export function WorkScreen({ job }: { readonly job: string }) {
  return <WithJob job={job}>{(open) => <Work open={open} />}</WithJob>;
}

/** The whole job at a glance: what can be begun, what it waits for, and how far it is. */
function Work({ open }: { readonly open: OpenJob }) {
  const desk = useWork(open);
  const person = usePerson();
  const [minutes, setMinutes] = useMinutes();
  const shown = useShownIn();
  const view = useMemo(() => workView(desk.bench, { ...withinMinutes(minutes), shown }), [desk.bench, minutes, shown]);
  useAnchor();
  return (
    <div className="stack-wide work">
      <div className="stack">
        <Title tab="Assemble">{view.title}</Title>
        <Progress {...view.progress} />
        {view.left && <LeftCard left={view.left} />}
        <fieldset className="plain pick">
          <legend className="field-name">In the time I have</legend>
          <div className="pick-row">
            {MINUTES.map((each) => (
              <button
                key={String(each)}
                type="button"
                className="button"
                aria-pressed={each === minutes}
                onClick={() => setMinutes(each)}
              >
                {each === undefined ? 'No limit' : `${each} min`}
              </button>
            ))}
          </div>
        </fieldset>
        {person === '' && <AskPerson />}
        {desk.recorder.said !== '' && <Said recorder={desk.recorder} />}
      </div>
      <div className="work-two">
        <div className="stack-wide">
          <Now job={desk.job} view={view} limited={minutes !== undefined} />
          <Waiting desk={desk} view={view} />
        </div>
        <div className="stack-wide">
          <Phases job={desk.job} view={view} />
          {person !== '' && <Tell desk={desk} view={view} />}
        </div>
      </div>
      <Notes view={view} />
    </div>
  );
}

/** An address may name a section of this page; it is only there once the job has been read. */
function useAnchor(): void {
  useEffect(() => {
    const section = document.getElementById(window.location.hash.slice(1));
    if (section instanceof HTMLDetailsElement) section.open = true;
    section?.scrollIntoView({ block: 'start' });
  }, []);
}

function Waiting({ desk, view }: { readonly desk: WorkDesk; readonly view: WorkView }) {
  const { job } = desk;
  return (
    <>
      <Acts id="looks" title="Second looks owed" job={job} acts={view.looks} verb="Look" />
      <Aids desk={desk} aids={view.aids} />
      <Acts id="shop" title="At the shop" job={job} acts={view.away.shop} verb="It is back" />
      <Acts id="parts" title="Parts to come" job={job} acts={view.away.parts} verb="It is back" />
      <Acts
        id="again"
        title="Open again"
        job={job}
        acts={view.reopened}
        verb="Go to it"
        why={(act) => act.again?.why}
      />
      <Skips job={job} skips={view.skips} />
    </>
  );
}

interface ActsProps {
  readonly id: string;
  readonly title: string;
  readonly job: string;
  readonly acts: readonly WorkActView[];
  readonly verb: string;
  readonly why?: (act: WorkActView) => ReactNode;
}
const MOST = 8;
function Acts({ id, title, job, acts, verb, why }: ActsProps) {
  if (acts.length === 0) return null;
  return (
    <section id={id} className="stack" aria-labelledby={`${id}-name`}>
      <h2 id={`${id}-name`}>
        {title} ({acts.length})
      </h2>
      <ul className="plain stack">
        {acts.slice(0, MOST).map((act) => (
          <li key={act.id}>
            <ActLink job={job} act={act} verb={verb}>
              {why?.(act)}
            </ActLink>
          </li>
        ))}
      </ul>
      {acts.length > MOST && <p className="field-hint">And {acts.length - MOST} more, at their operations below.</p>}
    </section>
  );
}

/** What a person tells the plan. */
function Tell({ desk, view }: { readonly desk: WorkDesk; readonly view: WorkView }) {
  return (
    <section className="stack" aria-labelledby="tell">
      <h2 id="tell">Tell the plan</h2>
      <Changed desk={desk} />
      <Leave desk={desk} />
      <AddAct desk={desk} operations={view.phases.flatMap(({ operations }) => operations)} />
    </section>
  );
}

function Notes({ view }: { readonly view: WorkView }) {
  const lines = [
    ...view.assumptions.map((line) => `Taken for granted: ${line}.`),
    ...view.unknown.map((line) => `Named in the record, not in this plan, kept as it is: ${line}`),
  ];
  if (lines.length === 0) return null;
  return (
    <details className="card">
      <summary>What was taken for granted ({lines.length})</summary>
      <ul className="stack notes">
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </details>
  );
}
