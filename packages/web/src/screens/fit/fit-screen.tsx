import { type FitView, fitView } from '@gudgeon/core/workbench';
import { useMemo } from 'react';
import { Link } from 'wouter';
import { CautionsAgain } from '../../bench/index.js';
import { type OpenJob, Title, useBench, useShownIn, WithJob } from '../../shell/index.js';
import { AgainFirst } from './again-first.js';
import { DecisionList } from './decision-list.js';
import { Findings } from './findings.js';

export function FitScreen({ job }: { readonly job: string }) {
  return <WithJob job={job}>{(open) => <Fit open={open} />}</WithJob>;
}

/** Every size and clearance with its verdict, what to read again first, and the decisions that follow. */
function Fit({ open }: { readonly open: OpenJob }) {
  const bench = useBench(open);
  const shownIn = useShownIn();
  const view = useMemo(() => fitView(bench, shownIn), [bench, shownIn]);
  const engine = `/engine/${open.job}`;
  return (
    <div className="fit stack-wide">
      <div className="stack">
        <Title tab="Fit">Fit: {open.engine.name}</Title>
        <nav className="row" aria-label="Beside this page">
          <a className="button" href="#decisions">
            Decisions
          </a>
          {view.again.length > 0 && (
            <a className="button" href="#again-first">
              Measure again first ({view.again.length})
            </a>
          )}
          <Link className="button" href={`${engine}/measure`}>
            Worksheets
          </Link>
          <Link className="button" href={`${engine}/order`}>
            Order for the machine shop
          </Link>
        </nav>
      </div>
      <Findings job={open.job} view={view} />
      <AgainFirst job={open.job} again={view.again} />
      <DecisionList job={open.job} view={view} />
      <Contradictions view={view} />
      <CautionsAgain cautions={view.cautions} />
    </div>
  );
}

/** Where the sheet disagrees with itself; what was printed is kept, and every clearance is judged from measured parts. */
function Contradictions({ view }: { readonly view: FitView }) {
  if (view.contradictions.length === 0) return null;
  return (
    <section className="stack" aria-labelledby="contradictions">
      <h2 id="contradictions">Where the sheet contradicts itself ({view.contradictions.length})</h2>
      <p>
        What was printed is kept as it stands. A clearance is judged from the measured parts, never from printed ones.
      </p>
      <ul className="plain fit-list">
        {view.contradictions.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </section>
  );
}
