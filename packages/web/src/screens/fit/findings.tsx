import type { FindingView, FitView } from '@gudgeon/core/workbench';
import { useState } from 'react';
import { useActions } from '../../keys/index.js';
import { countOf, FILTERS, type Filter, firstFilter, type Group, shownGroups } from './filters.js';
import { FindingRow } from './finding-row.js';

/** Rows of an area until the person asks for the rest: hundreds of rows are no list for a thumb. */
const SHOWN_AT_ONCE = 6;

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
          : `${countOf(filter, view.counts)} in all, worst first in each part of the engine`}
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
        {filter.label}: <strong>{count}</strong>
      </span>
      <span className="fit-key act-key-name" aria-hidden="true">
        key {filter.key}
      </span>
    </button>
  );
}

function AreaGroup({ job, group }: { readonly job: string; readonly group: Group }) {
  const { area, title, rows } = group;
  const [all, setAll] = useState(false);
  const shown = all ? rows : rows.slice(0, SHOWN_AT_ONCE);
  const rest = rows.slice(shown.length);
  return (
    <section className="fit-area" aria-labelledby={`area-${area}`}>
      <h3 id={`area-${area}`}>
        {title} <span className="soft">({rows.length})</span>
      </h3>
      <ul className="plain">
        {shown.map((row) => (
          <li key={row.key} className="fit-item">
            <FindingRow job={job} row={row} />
          </li>
        ))}
      </ul>
      {rest.length > 0 && (
        <button type="button" className="button fit-more" onClick={() => setAll(true)}>
          {moreWords(rest, title)}
        </button>
      )}
    </section>
  );
}

/** What stands behind the button, so that nothing bad is out of sight without a word. */
function moreWords(rest: readonly FindingView[], title: string): string {
  const out = rest.filter(({ verdict }) => verdict === 'out').length;
  return `${rest.length} more: ${title.toLowerCase()}${out === 0 ? '' : `, ${out} of them out`}`;
}
