import type { JobLine } from '@gudgeon/server/api';
import { lazy, Suspense } from 'react';
import { Link } from 'wouter';

/** What to do next needs the whole workbench, so it comes a moment after the list. */
const NextStep = lazy(() => import('./next-step.js').then((m) => ({ default: m.NextStep })));

export function EngineOnStand({ line }: { readonly line: JobLine }) {
  return (
    <article className="card home-engine" aria-labelledby={`job-${line.job}`}>
      <h2 id={`job-${line.job}`}>
        <Link href={`/engine/${line.job}`}>{line.name}</Link>
      </h2>
      <p className="row soft">
        {line.invented && <span className="tag-invented">invented example</span>}
        <span>
          {line.entries} {line.entries === 1 ? 'entry' : 'entries'}, last on{' '}
          {new Date(line.lastAt).toLocaleDateString('en-GB', { dateStyle: 'medium' })}
        </span>
      </p>
      <Suspense fallback={<p className="soft">Working out what comes next…</p>}>
        <NextStep job={line.job} />
      </Suspense>
    </article>
  );
}
