import type { FindingView, WorksheetRow } from '@gudgeon/core/workbench';
import { memo, useState } from 'react';
import { limitWords, VerdictMark } from '../../bench/index.js';

interface PlaceFindingsProps {
  readonly row: WorksheetRow;
  readonly others: readonly WorksheetRow[];
  readonly again: (slot: string) => void;
}

/** What follows from the readings of one place; those of the other places unfold below. */
export function PlaceFindings({ row, others, again }: PlaceFindingsProps) {
  const [open, setOpen] = useState(false);
  return (
    <section className="stack" aria-labelledby="follows">
      <h2 id="follows">What follows: {row.name}</h2>
      <Findings row={row} again={again} />
      {others.length > 1 && (
        <details className="fold" onToggle={(event) => setOpen(event.currentTarget.open)}>
          <summary>The other places ({others.length - 1})</summary>
          {open &&
            others
              .filter((other) => other.place !== row.place)
              .map((other) => (
                <section key={other.place} className="stack" aria-label={other.name}>
                  <h3>{other.name}</h3>
                  <Findings row={other} again={again} />
                </section>
              ))}
        </details>
      )}
    </section>
  );
}

interface FindingsProps {
  readonly row: WorksheetRow;
  readonly again: (slot: string) => void;
}
const Findings = memo(function Findings({ row, again }: FindingsProps) {
  return (
    <div className="findings" data-place={row.place}>
      {row.occasion > 1 && <p className="field-hint">Measured again after work, occasion {row.occasion}.</p>}
      {row.findings.length === 0 && <p>Nothing is computed from these readings.</p>}
      {row.findings.map((finding) => (
        <OneFinding key={finding.key} finding={finding} again={again} />
      ))}
      {row.before.length > 0 && (
        <details className="fold">
          <summary>As it was before the work</summary>
          <ul className="stack">
            {row.before.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        </details>
      )}
    </div>
  );
});

interface OneFindingProps {
  readonly finding: FindingView;
  readonly again?: (slot: string) => void;
}

/** One size with its verdict; a tap opens how it was worked out and where limit and formula come from. */
export const OneFinding = memo(function OneFinding({ finding, again }: OneFindingProps) {
  const [open, setOpen] = useState(false);
  return (
    <details
      className="finding"
      data-finding={finding.property}
      onToggle={(event) => setOpen(event.currentTarget.open)}
    >
      <summary>
        <VerdictMark verdict={finding.verdict} {...(finding.nearEnd ? { nearEnd: finding.nearEnd } : {})} />
        <span className="finding-words">
          <span>
            {finding.title} <strong>{finding.value}</strong> {finding.doubt}
          </span>
          <span>{limitWords(finding)}</span>
          <span>{[finding.distance, finding.words].filter(Boolean).join(', ')}</span>
          {finding.advice && <em>Advice, no limit: {finding.advice.words}</em>}
        </span>
      </summary>
      {open && <Why finding={finding} {...(again ? { again } : {})} />}
    </details>
  );
});

/** How a size was worked out, and where limit and formula come from. */
function Why({ finding, again }: OneFindingProps) {
  return (
    <div className="stack finding-why">
      {finding.origin && <p>Limit from: {finding.origin}</p>}
      {finding.advice && <p>Advice from: {finding.advice.source}. A limit that the maker prints outranks it.</p>}
      {finding.working.length > 0 && (
        <ol className="stack">
          {finding.working.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ol>
      )}
      {finding.cautions.map((line) => (
        <p key={line}>{line}</p>
      ))}
      {finding.sources.length > 0 && <p className="field-hint">Formula: {finding.sources.join('; ')}</p>}
      {finding.again && (
        <p>
          Measure this again first: {finding.again.words}
          {again && (
            <button type="button" className="button" onClick={() => again(finding.again?.slot ?? '')}>
              Take it again without seeing the first
            </button>
          )}
        </p>
      )}
    </div>
  );
}
