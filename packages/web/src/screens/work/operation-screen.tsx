import { type OperationActsView, operationView, type WorkActView } from '@gudgeon/core/workbench';
import { useMemo, useState } from 'react';
import { Link } from 'wouter';
import { Progress, Reasoned, SignalPanel } from '../../bench/index.js';
import { usePerson } from '../../log/index.js';
import { AskPerson, type OpenJob, Said, Title, useShownIn, WithJob } from '../../shell/index.js';
import { ActDetails } from './act-details.js';
import { ActMark, markOf } from './act-mark.js';
import { workPlace } from './act-words.js';
import { leavable } from './leavable.js';
import { OperationHelp } from './operation-help.js';
import { useWork, type WorkDesk } from './use-work.js';

interface OperationProps {
  readonly job: string;
  readonly operation: string;
}
export function OperationScreen({ job, operation }: OperationProps) {
  return <WithJob job={job}>{(open) => <Operation open={open} id={operation} />}</WithJob>;
}

/** One operation: what holds for all of it, and its acts, each with what it waits for. */
function Operation({ open, id }: { readonly open: OpenJob; readonly id: string }) {
  const desk = useWork(open);
  const person = usePerson();
  const shown = useShownIn();
  const view = useMemo(() => operationView(desk.bench, id, shown), [desk.bench, id, shown]);
  if (!view) return <h1>This engine has no operation “{id}”</h1>;
  const { operation, chunks } = view;
  return (
    <div className="stack-wide work">
      <div className="stack">
        <Title tab={operation.title}>{operation.title}</Title>
        <Progress {...operation.progress} />
        {operation.waitsFor.length > 0 && <p>Comes after: {operation.waitsFor.join('; ')}.</p>}
        <p>
          <Link className="button" href={workPlace(desk.job)}>
            The whole work
          </Link>
        </p>
      </div>
      {person === '' && <AskPerson />}
      {desk.recorder.said !== '' && <Said recorder={desk.recorder} />}
      <div className="work-two">
        <div className="stack-wide">
          {chunks.map((chunk) => (
            <section key={chunk.number} className="stack" aria-labelledby={`chunk-${chunk.number}`}>
              <h2 id={`chunk-${chunk.number}`}>{chunk.title}</h2>
              <ul className="plain work-acts">
                {chunk.acts.map((act) => (
                  <li key={act.id}>
                    <Act desk={desk} act={act} />
                  </li>
                ))}
              </ul>
            </section>
          ))}
        </div>
        <div className="stack-wide">
          {operation.cautions.map((caution) => (
            <SignalPanel key={caution.can} {...caution} />
          ))}
          <OperationHelp operation={operation} />
          {person !== '' && <ForMany desk={desk} view={view} />}
        </div>
      </div>
    </div>
  );
}

/** A row that opens: what is asked, what it waits for, what can be done about it. */
function Act({ desk, act }: { readonly desk: WorkDesk; readonly act: WorkActView }) {
  const [open, setOpen] = useState(false);
  return (
    <details className="act-row" data-act={act.id} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>
        <ActMark mark={markOf(act)} />
        <span className="act-link-words">
          {act.place !== '' && <strong>{act.place}</strong>}
          <span>{act.does}</span>
          {act.given && <small>{act.given.words}</small>}
          {act.skipped && <small>{act.skipped.reason}</small>}
        </span>
      </summary>
      {open && <ActDetails desk={desk} act={act} />}
    </details>
  );
}

/** Groups that are left out with one reason, and a book that is begun here. */
function ForMany({ desk, view }: { readonly desk: WorkDesk; readonly view: OperationActsView }) {
  const groups = useMemo(() => leavable(view), [view]);
  const { id, title } = view.operation;
  return (
    <section className="stack" aria-labelledby="many">
      <h2 id="many">For many at once</h2>
      {groups.map(({ key, acts, name, each }) => (
        <Reasoned
          key={key}
          name={name}
          about="What is left out stays on the list of skips, and is read before the work is signed."
          button={`Leave out these ${acts.length}`}
          usual={['not measured on this engine', 'done before this book was begun']}
          record={(reason) =>
            desk.wish({ kind: 'skip', acts: acts.map((act) => act.id), reason }, `Left out: ${acts.length} × ${each}`)
          }
        />
      ))}
      <Reasoned
        name="The book begins here"
        about={`Everything that comes before “${title}” is left out, because nobody recorded it; it never counts as good.`}
        button="Begin the book here"
        usual={['done before this book was begun']}
        record={(why) => desk.wish({ kind: 'begin-at', operation: id, why }, `The book begins at: ${title}`)}
      />
    </section>
  );
}
