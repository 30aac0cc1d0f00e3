import { nextAction } from '@gudgeon/core/workbench';
import { useMemo } from 'react';
import { Link } from 'wouter';
import { type OpenJob, Title, useBench, WithJob } from '../../shell/index.js';
import { Views } from './views.js';
import { Ways } from './ways.js';

export function EngineScreen({ job }: { readonly job: string }) {
  return <WithJob job={job}>{(open) => <OneEngine {...open} />}</WithJob>;
}

/** One engine: its drawing, what comes next, and the ways to work on it. */
function OneEngine(open: OpenJob) {
  const { job, engine } = open;
  const bench = useBench(open);
  const next = useMemo(() => nextAction(bench), [bench]);
  return (
    <div className="stack-wide">
      <div className="stack">
        <Title tab={engine.name}>{engine.name}</Title>
        <p className="row">
          {engine.invented && <span className="tag-invented">invented example</span>}
          <span>{engine.description}</span>
        </p>
        <Link href={`/engine/${job}/${next.place}`} className="next-link">
          <small>{next.finished ? 'All done' : 'Next'}</small>
          {next.words}
        </Link>
      </div>
      <div className="engine-two">
        <Views engine={engine} />
        <Ways job={job} bench={bench} next={next.place} />
      </div>
      <Remarks open={engine.gaps} cautions={engine.cautions.map((caution) => caution.message)} />
    </div>
  );
}

function Remarks({ open, cautions }: { readonly open: readonly string[]; readonly cautions: readonly string[] }) {
  if (open.length + cautions.length === 0) return null;
  return (
    <details className="card">
      <summary>What the sheet leaves open or says in two ways ({open.length + cautions.length})</summary>
      <ul className="stack">
        {[...cautions, ...open].map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </details>
  );
}
