import type { FitView } from '@gudgeon/core/workbench';
import { useState } from 'react';
import { useActions } from '../../keys/index.js';
import { countOf, FILTERS, type Filter, firstFilter, type Group, shownGroups } from './filters.js';
import { FindingRow } from './finding-row.js';

/** A longer group is opened by the person: hundreds of rows are no list for a thumb. */
const SHOWN_AT_ONCE = 12;

interface FindingsProps {
  readonly job: string;
  readonly view: FitView;
}

/** Sizes and clearances by area, filtered by verdict with keys or taps. */
export function Findings({ job, view }: FindingsProps) {
  const [filter, setFilter] = useState(() => firstFilter(view.counts));
  const groups = shownGroups(view.findings, filter);
  const actions = FILTERS.map((each) => ({
    name: each.id,
    label: each.label,
    keys: [each.key],
    available: true,
    run: () => setFilter(each),
  }));
  const run = useActions(actions);
  return (
    <section className="stack" aria-labelledby="sizes">
      <h2 id="sizes">Sizes and clearances</h2>
      <fieldset className="plain fit-filters">
        <legend className="only-read">Which are shown</legend>
        {FILTERS.map((each) => (
          <FilterButton key={each.id} filter={each} now={filter} count={countOf(each, view.counts)} run={run} />
        ))}
      </fieldset>
      <p role="status" className="field-hint">
        {groups.length === 0
          ? `None: ${filter.label.toLowerCase()}`
          : `${countOf(filter, view.counts)} shown, worst first in each part of the engine`}
      </p>
      {groups.map((group) => (
        <AreaGroup key={`${filter.id} ${group.area}`} job={job} group={group} />
      ))}
    </section>
  );
}

interface FilterButtonProps {
  readonly filter: Filter;
  readonly now: Filter;
  readonly count: number;
  readonly run: (name: string) => void;
}
function FilterButton({ filter, now, count, run }: FilterButtonProps) {
  return (
    <button
      type="button"
      className="button fit-filter"
      aria-pressed={filter.id === now.id}
      aria-keyshortcuts={filter.key}
      data-filter={filter.id}
      onClick={() => run(filter.id)}
    >
      <span>
        {filter.label} <strong>{count}</strong>
      </span>
      <span className="fit-key act-key-name" aria-hidden="true">
        {filter.key}
      </span>
    </button>
  );
}

function AreaGroup({ job, group }: { readonly job: string; readonly group: Group }) {
  const { title, rows } = group;
  const [open, setOpen] = useState(rows.length <= SHOWN_AT_ONCE);
  return (
    <details className="fit-area" open={open} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>
        <h3>
          {title} <span className="soft">({rows.length})</span>
        </h3>
      </summary>
      {open && (
        <ul className="plain">
          {rows.map((row) => (
            <li key={row.key} className="fit-item">
              <FindingRow job={job} row={row} />
            </li>
          ))}
        </ul>
      )}
    </details>
  );
}
