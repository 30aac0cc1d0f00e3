import { type Bench, importWorksheet, type TableFault, type TableRead, worksheetTable } from '@gudgeon/core/workbench';
import { type ChangeEvent, useId, useState } from 'react';
import { saveFile, useShownIn } from '../../shell/index.js';
import type { SheetDesk } from './use-sheet-desk.js';

interface TableFilesProps {
  readonly desk: SheetDesk;
  readonly bench: Bench;
}

/** A worksheet as a table for a spreadsheet, and back: all of a file or nothing of it, with a line for each fault. */
export function TableFiles(props: TableFilesProps) {
  const [open, setOpen] = useState(false);
  return (
    <details className="fold" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>As a table (CSV)</summary>
      {open && <OutAndIn {...props} />}
    </details>
  );
}

function OutAndIn({ desk, bench }: TableFilesProps) {
  const id = useId();
  const shownIn = useShownIn();
  const [faults, setFaults] = useState<readonly TableFault[]>([]);
  const [asked, setAsked] = useState<TableRead>();
  const { view, recorder } = desk;
  const take = (read: TableRead) => {
    setAsked(undefined);
    recorder.take({ ok: true, value: read.entries }, `${read.entries.length} readings taken from the table`);
  };
  const load = async (event: ChangeEvent<HTMLInputElement>) => {
    const file = event.target.files?.[0];
    event.target.value = '';
    if (!file) return;
    const read = importWorksheet(bench, await file.text());
    setFaults(read.ok ? [] : read.fault);
    setAsked(undefined);
    if (!read.ok) return;
    if (read.value.questions.length > 0) setAsked(read.value);
    else take(read.value);
  };
  return (
    <div className="stack">
      <button
        type="button"
        className="button"
        onClick={() =>
          saveFile(`${bench.engine.name} ${view.title}`, 'csv', worksheetTable(bench, view.feature, shownIn))
        }
      >
        Save this sheet as CSV
      </button>
      <div className="field">
        <label htmlFor={id}>Load a filled CSV</label>
        <input id={id} className="input" type="file" accept=".csv,text/csv,text/plain" onChange={load} />
      </div>
      <div role="alert" className="stack">
        {faults.length > 0 && (
          <>
            <p className="field-fault">
              Nothing was taken. {faults.length === 1 ? 'One line' : `${faults.length} lines`} to put right:
            </p>
            <ul className="stack">
              {faults.map((fault) => (
                <li key={`${fault.line} ${fault.words}`}>
                  Line {fault.line}: {fault.words}
                </li>
              ))}
            </ul>
          </>
        )}
        {asked && (
          <>
            <p className="field-fault">Look at these before they are taken:</p>
            <ul className="stack">
              {asked.questions.map((question) => (
                <li key={`${question.line} ${question.words}`}>
                  Line {question.line}: {question.words}
                </li>
              ))}
            </ul>
            <button type="button" className="button" onClick={() => take(asked)}>
              They are right: take all {asked.entries.length}
            </button>
            <button type="button" className="button" onClick={() => setAsked(undefined)}>
              Take nothing
            </button>
          </>
        )}
      </div>
    </div>
  );
}
