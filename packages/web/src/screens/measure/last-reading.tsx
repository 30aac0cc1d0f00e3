import type { Cell, FindingView, WorksheetRow } from '@gudgeon/core/workbench';
import { useEffect } from 'react';
import { say } from '../../bench/index.js';
import { StrikeReading } from './strike-reading.js';
import type { SheetDesk } from './use-sheet-desk.js';
import { VerdictMark } from './verdict-mark.js';

const RANK = ['out', 'check again', 'near', 'in', 'no data'] as const;
/** The finding of a place that matters most now; one without a size only says how much is still to read. */
export const tellingFinding = ({ findings }: WorksheetRow): FindingView | undefined =>
  [...findings].sort((a, b) => RANK.indexOf(a.verdict) - RANK.indexOf(b.verdict))[0];

/** What was recorded last, read back with its verdict, and the way to strike it out or to take it again. */
export function LastReading({ desk }: { readonly desk: SheetDesk }) {
  const row = desk.view.rows.find((one) => one.cells.some((cell) => cell.slot === desk.last));
  const cell = row?.cells.find((one) => one.slot === desk.last);
  if (!row || !cell?.text || !cell.given || desk.repeat) return null;
  return <Told key={cell.given.entry} desk={desk} row={row} cell={cell} />;
}

interface ToldProps {
  readonly desk: SheetDesk;
  readonly row: WorksheetRow;
  readonly cell: Cell;
}
function Told({ desk, row, cell }: ToldProps) {
  const finding = tellingFinding(row);
  const spoken = finding === undefined ? cell.text : `${cell.text}, ${finding.verdict}`;
  useEffect(() => say(spoken ?? ''), [spoken]);
  const again = row.findings.find((one) => one.again)?.again;
  return (
    <section className="last" aria-live="polite" data-last={cell.slot}>
      {finding && <VerdictMark verdict={finding.verdict} {...(finding.nearEnd ? { nearEnd: finding.nearEnd } : {})} />}
      <p className="last-words">
        <strong>{cell.text}</strong> <span>{cell.name}</span>
        {finding && <span className="last-finding">{findingWords(finding)}</span>}
      </p>
      {again && (
        <button type="button" className="button" onClick={() => desk.again(again.slot)}>
          Too near to call: take it again without seeing the first
        </button>
      )}
      {cell.given && (
        <StrikeReading
          words={`${cell.name}, ${cell.text}`}
          strike={(reason) => desk.strike(cell.slot, cell.given?.entry ?? '', reason)}
        />
      )}
    </section>
  );
}

/** "bore diameter 98.612 mm, 0.004 mm from the high limit". */
export function findingWords({ title, value, distance, words }: FindingView): string {
  return [`${title} ${value}`.trim(), distance, words].filter((one) => one !== undefined && one !== '').join(', ');
}
