import type { MeasureView, SheetRow } from '@gudgeon/core/workbench';
import { Link } from 'wouter';
import { VerdictMark } from '../../bench/index.js';

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
      <div className="stack">
        {view.areas.map((area) => (
          <AreaFold
            key={area.area}
            job={job}
            area={area}
            sheets={area.sheets.filter((sheet) => !vanishing.includes(sheet))}
            open={area.sheets.some((sheet) => !vanishing.includes(sheet) && sheet.feature === view.next?.feature)}
          />
        ))}
      </div>
    </div>
  );
}

interface AreaFoldProps {
  readonly job: string;
  readonly area: MeasureView['areas'][number];
  readonly sheets: readonly SheetRow[];
  readonly open: boolean;
}
/** One area, folded: an engine has some seventy sheets, and a person works in one area at a time. */
function AreaFold({ job, area, sheets, open }: AreaFoldProps) {
  if (sheets.length === 0) return null;
  return (
    <details className="area-fold" open={open} data-area={area.area}>
      <summary>
        <h2>{area.title}</h2>
        {area.progress.done > 0 && <VerdictMark verdict={area.verdict} />}
        <span>{area.progress.words}</span>
      </summary>
      <Sheets job={job} sheets={sheets} />
    </details>
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
              <small>
                {sheet.progress.words}
                {sheet.optional ? ', a cross-check' : ''}
              </small>
            </span>
          </Link>
        </li>
      ))}
    </ul>
  );
}
