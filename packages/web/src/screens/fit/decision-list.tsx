import type { DecisionView, FitView } from '@gudgeon/core/workbench';
import { useMemo } from 'react';
import { Link } from 'wouter';
import { useAfterPaint } from './use-after-paint.js';

const STATE: Readonly<Record<DecisionView['state'], string>> = {
  open: 'Open: can be decided now',
  changed: 'Differs from when it was decided',
  waiting: 'Waiting for readings or figures',
  decided: 'Decided',
};
/** What can be acted on comes first. */
const ORDER: readonly DecisionView['state'][] = ['changed', 'open', 'decided', 'waiting'];

interface DecisionListProps {
  readonly job: string;
  readonly view: FitView;
}

/** Every decision with its state; the whole card leads to its page. */
export function DecisionList({ job, view }: DecisionListProps) {
  const painted = useAfterPaint();
  const decisions = useMemo(() => (painted ? view.decisions : undefined), [painted, view]);
  if (decisions?.length === 0) return null;
  return (
    <section className="stack" aria-labelledby="decisions">
      <h2 id="decisions">Decisions</h2>
      {decisions === undefined ? (
        <p role="status">Working out the alternatives…</p>
      ) : (
        <ByState job={job} decisions={decisions} />
      )}
    </section>
  );
}

function ByState({ job, decisions }: { readonly job: string; readonly decisions: readonly DecisionView[] }) {
  return ORDER.map((state) => {
    const of = decisions.filter((one) => one.state === state);
    if (of.length === 0) return null;
    const title = `${STATE[state]} (${of.length})`;
    // Nothing can be done about those that wait, so they do not stand in the way.
    return state === 'waiting' ? (
      <details key={state} className="fit-fold">
        <summary>
          <h3>{title}</h3>
        </summary>
        <Cards job={job} decisions={of} />
      </details>
    ) : (
      <div key={state} className="stack">
        <h3>{title}</h3>
        <Cards job={job} decisions={of} />
      </div>
    );
  });
}

function Cards({ job, decisions }: { readonly job: string; readonly decisions: readonly DecisionView[] }) {
  return (
    <ul className="plain fit-decisions">
      {decisions.map((one) => (
        <li key={`${one.id} ${one.scope}`}>
          <Link
            href={`/engine/${job}/fit/${one.id}/${encodeURIComponent(one.scope)}`}
            className={`fit-decision fit-decision-${one.state}`}
            data-decision={`${one.id}/${one.scope}`}
          >
            <strong>{one.title}</strong>
            <span>{standing(one)}</span>
          </Link>
        </li>
      ))}
    </ul>
  );
}

/** One line: what was decided, what is recommended, or what it waits for. */
function standing({ state, decided, missing, alternatives }: DecisionView): string {
  if (decided) return state === 'changed' ? `${decided.words}. ${decided.differs[0] ?? ''}` : decided.words;
  if (state === 'waiting')
    return missing.length > 1 ? `${missing[0]}, and ${missing.length - 1} more` : (missing[0] ?? '');
  const best = alternatives.find((one) => one.recommended);
  return best ? `Recommended: ${best.words}` : 'No alternative can be taken; each says why';
}
