import type { OperationView, WorkView } from '@gudgeon/core/workbench';
import { Link } from 'wouter';
import { operationPlace } from './act-words.js';

/** Every operation by phase; the phase that is under way stands open. */
export function Phases({ job, view }: { readonly job: string; readonly view: WorkView }) {
  const here = view.phases.find(({ operations }) => operations.some(({ id }) => id === view.now[0]?.operation));
  return (
    <section className="stack" aria-labelledby="phases">
      <h2 id="phases">From bare block to run-in</h2>
      {view.phases.map((phase) => (
        <details key={phase.phase} className="card phase" open={phase === here}>
          <summary>
            <span>{phase.title}</span>
            <span className="soft">{phase.progress.words}</span>
          </summary>
          <ul className="plain stack">
            {phase.operations.map((operation) => (
              <li key={operation.id}>
                <OperationLink job={job} operation={operation} />
              </li>
            ))}
          </ul>
        </details>
      ))}
      <p>
        <Link className="button" href={`/engine/${job}/registers`}>
          What came from where
        </Link>
      </p>
    </section>
  );
}

function OperationLink({ job, operation }: { readonly job: string; readonly operation: OperationView }) {
  const { title, progress, finished, waitsFor } = operation;
  return (
    <Link className="act-link" href={operationPlace(job, operation.id)}>
      <span className="act-link-words">
        <span>
          {finished && progress.done > 0 ? '✓ ' : ''}
          {title}
        </span>
        <small>
          {progress.words}
          {waitsFor.length > 0 ? `. After: ${waitsFor.join('; ')}` : ''}
        </small>
      </span>
    </Link>
  );
}
