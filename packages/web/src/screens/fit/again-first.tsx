import type { FitView } from '@gudgeon/core/workbench';
import { useState } from 'react';
import { Link } from 'wouter';

/** As many as are read in one go; the rest unfold. */
const FIRST = 3;

interface AgainFirstProps {
  readonly job: string;
  readonly again: FitView['again'];
}

/** The readings whose doubt keeps a verdict open, the most useful one first; each leads to its place in the worksheet. */
export function AgainFirst({ job, again }: AgainFirstProps) {
  const [all, setAll] = useState(false);
  if (again.length === 0) return null;
  const shown = all ? again : again.slice(0, FIRST);
  return (
    <section className="stack" aria-labelledby="again-first">
      <h2 id="again-first">Measure this again first</h2>
      <ol className="plain stack">
        {shown.map(({ slot, feature, words }) => (
          <li key={slot}>
            <Link className="fit-link" href={`/engine/${job}/measure/${feature}?slot=${encodeURIComponent(slot)}`}>
              {words}
            </Link>
          </li>
        ))}
      </ol>
      {again.length > FIRST && (
        <button type="button" className="button" aria-expanded={all} onClick={() => setAll(!all)}>
          {all ? `Only the first ${FIRST}` : `All ${again.length}`}
        </button>
      )}
    </section>
  );
}
