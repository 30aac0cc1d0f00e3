import type { MeasureView, SheetRow } from '@gudgeon/core/workbench';
import { Link } from 'wouter';
import { VerdictMark } from './verdict-mark.js';

interface SheetListProps {
  readonly job: string;
  readonly view: MeasureView;
}

/** The worksheets by area. What the strip-down destroys stands on top until it is read. */
export function SheetList({ job, view }: SheetListProps) {
  const vanishing = view.areas.flatMap(({ sheets }) => sheets.filter((sheet) => sheet.vanishes && !sheet.finished));
  return (
    <div className="stack-wide">
      {vanishing.length > 0 && (
        <section className="stack" aria-labelledby="vanishes">
          <h2 id="vanishes">Before you take it apart</h2>
          <p className="field-hint">These readings are lost when the engine comes apart.</p>
          <Sheets job={job} sheets={vanishing} />
        </section>
      )}
      {view.areas.map(({ area, title, sheets }) => {
        const rest = sheets.filter((sheet) => !vanishing.includes(sheet));
        if (rest.length === 0) return null;
        return (
          <section key={area} className="stack" aria-labelledby={`area-${area}`}>
            <h2 id={`area-${area}`}>{title}</h2>
            <Sheets job={job} sheets={rest} />
          </section>
        );
      })}
    </div>
  );
}

function Sheets({ job, sheets }: { readonly job: string; readonly sheets: readonly SheetRow[] }) {
  return (
    <ul className="plain sheet-list">
      {sheets.map((sheet) => (
        <li key={sheet.feature}>
          <Link className="way sheet-way" href={`/engine/${job}/measure/${sheet.feature}`} data-sheet={sheet.feature}>
            {sheet.progress.done > 0 && <VerdictMark verdict={sheet.verdict} />}
            <span className="sheet-way-words">
              <strong>
                {sheet.finished ? '✓ ' : ''}
                {sheet.title}
              </strong>
              <small>{sheet.progress.words}</small>
            </span>
          </Link>
        </li>
      ))}
    </ul>
  );
}
