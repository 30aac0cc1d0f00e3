import type { FindingView } from '@gudgeon/core/workbench';
import { useState } from 'react';
import { Link } from 'wouter';
import { limitWords, Verdict, verdictState } from '../../bench/index.js';
import { Working } from './working.js';

interface FindingRowProps {
  readonly job: string;
  readonly row: FindingView;
}

/** One size: verdict, value, limits and where they come from; a tap or Enter opens how it was worked out. */
export function FindingRow({ job, row }: FindingRowProps) {
  const [open, setOpen] = useState(false);
  const isRead = row.value !== '';
  return (
    <details
      className="fit-row"
      data-finding={row.key}
      data-finding-verdict={row.verdict}
      onToggle={(event) => setOpen(event.currentTarget.open)}
    >
      <summary>
        <span className="fit-row-name">
          <strong>{row.title}</strong> <span>{row.place}</span>
        </span>
        <Verdict
          state={verdictState(row.verdict)}
          {...(row.nearEnd ? { nearEnd: row.nearEnd } : {})}
          {...(isRead ? { value: `${row.value} ${row.doubt}`.trim() } : {})}
          limit={isRead ? limitWords(row) : row.words}
          {...(row.distance ? { distance: row.distance } : {})}
        />
        <span className="fit-row-words">
          {isRead && <span className={row.verdict === 'out' ? 'fit-row-out' : undefined}>{row.words}</span>}
          {row.advice && <em>Advice, no limit: {row.advice.words}</em>}
          {row.origin !== '' && <span className="soft">Limit from {row.origin}</span>}
        </span>
      </summary>
      {open && <Opened job={job} row={row} />}
    </details>
  );
}

function Opened({ job, row }: FindingRowProps) {
  return (
    <div className="fit-opened stack">
      {row.advice && <p>Advice from: {row.advice.source}. A limit that the maker prints outranks it.</p>}
      {row.again && <p>Measure this again first: {row.again.words}</p>}
      <Working working={row.working} sources={row.sources} cautions={row.cautions} />
      {row.slot && (
        <Link
          className="button"
          href={`/engine/${job}/measure/${row.slot.split('/')[0]}?slot=${encodeURIComponent(row.slot)}`}
        >
          {row.value === '' ? 'Read what is missing' : 'To its readings'}
        </Link>
      )}
    </div>
  );
}
