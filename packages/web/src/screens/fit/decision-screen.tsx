import { type DecisionView, decisionsAt, decisionViewOf, proposeDecided } from '@gudgeon/core/workbench';
import { useMemo, useState } from 'react';
import { Link } from 'wouter';
import { useFromTop } from '../../keys/index.js';
import { usePerson } from '../../log/index.js';
import { AskPerson, type OpenJob, Said, Title, useBench, useRecord, useShownIn, WithJob } from '../../shell/index.js';
import { Alternatives } from './alternatives.js';
import { DecideStep } from './decide-step.js';
import { Decided } from './decided.js';
import { Working } from './working.js';

interface DecisionScreenProps {
  readonly job: string;
  readonly decision: string;
  readonly scope: string;
}

export function DecisionScreen({ job, decision, scope }: DecisionScreenProps) {
  return <WithJob job={job}>{(open) => <OneDecision open={open} id={decision} scope={scope} />}</WithJob>;
}

interface OneDecisionProps {
  readonly open: OpenJob;
  readonly id: string;
  readonly scope: string;
}

/** One decision: its alternatives side by side, or, once one is picked, the step that records it. */
function OneDecision({ open, id, scope }: OneDecisionProps) {
  const bench = useBench(open);
  const shownIn = useShownIn();
  const recorder = useRecord(open, bench);
  const person = usePerson();
  const [picked, setPicked] = useState<string>();
  const view = useMemo(() => decisionViewOf(bench, { id, scope }, shownIn), [bench, id, scope, shownIn]);
  useFromTop(picked ?? 'side by side');
  if (!view) return <NotAsked job={open.job} id={id} />;
  const chosen = view.alternatives.find((one) => one.id === picked && one.possible);
  const record = (reason: string) => {
    if (!chosen) return;
    const wish = { decision: id, scope, alternative: chosen.id, reason };
    const proposal = proposeDecided(bench, decisionsAt(bench, shownIn), wish);
    if (recorder.take(proposal, `Decided: ${chosen.words}`)) setPicked(undefined);
  };
  if (chosen)
    return (
      <div className="fit stack-wide">
        <Title tab={`Decide: ${view.title}`}>{view.question}</Title>
        {person === '' ? (
          <AskPerson />
        ) : (
          <DecideStep view={view} chosen={chosen} record={record} back={() => setPicked(undefined)} />
        )}
        <Said recorder={recorder} />
      </div>
    );
  return (
    <div className="fit stack-wide">
      <div className="stack">
        <Title tab={view.title}>{view.title}</Title>
        {view.question !== '' && <p className="fit-question">{view.question}</p>}
        <Said recorder={recorder} />
      </div>
      <Decided view={view} strike={recorder.strikeOut} />
      <Missing view={view} />
      <Proof view={view} />
      <Alternatives view={view} pick={setPicked} />
      <Behind view={view} />
      <Link className="button" href={`/engine/${open.job}/fit`}>
        All sizes and decisions
      </Link>
    </div>
  );
}

function NotAsked({ job, id }: { readonly job: string; readonly id: string }) {
  return (
    <div className="stack">
      <h1>This engine asks for no decision called “{id}”</h1>
      <Link className="button" href={`/engine/${job}/fit`}>
        All sizes and decisions
      </Link>
    </div>
  );
}

function Missing({ view }: { readonly view: DecisionView }) {
  // What was decided and has come back waits for nothing here: the order says what is still to be read.
  if (view.missing.length === 0 || view.state === 'decided') return null;
  return (
    <section className="hindrances" aria-labelledby="missing">
      <h2 id="missing">It waits for</h2>
      <ul className="stack">
        {view.missing.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </section>
  );
}

/** Why the recommended one is best, before what it is compared with. */
function Proof({ view }: { readonly view: DecisionView }) {
  if (view.proof === '') return null;
  return (
    <section className="stack" aria-labelledby="proof">
      <h2 id="proof">Why this one is recommended</h2>
      <p>{view.proof}</p>
    </section>
  );
}

function Behind({ view }: { readonly view: DecisionView }) {
  if (view.alternatives.length === 0) return view.cautions.map((line) => <p key={line}>{line}</p>);
  return (
    <details className="fit-fold">
      <summary>
        <h2>Working and sources</h2>
      </summary>
      <div className="stack fit-opened">
        <Working working={view.working} sources={view.sources} cautions={view.cautions} />
      </div>
    </details>
  );
}
