import type { Cell, FindingView, WorksheetRow } from '@gudgeon/core/workbench';
import { useEffect } from 'react';
import { StrikeReading, say, VerdictMark } from '../../bench/index.js';
import type { SheetDesk } from './use-sheet-desk.js';

const RANK = ['out', 'check again', 'near', 'in', 'no data'] as const;
/** The finding of a place that matters most now; one without a size only says how much is still to read. */
export const tellingFinding = ({ findings }: WorksheetRow): FindingView | undefined =>
  [...findings].sort((a, b) => RANK.indexOf(a.verdict) - RANK.indexOf(b.verdict))[0];

function lastOf({ view, last, repeat }: SheetDesk) {
  const row = view.rows.find((one) => one.cells.some((cell) => cell.slot === last));
  const cell = row?.cells.find((one) => one.slot === last);
  return row && cell?.text && cell.given && !repeat ? { row, cell, given: cell.given } : undefined;
}

/** What was recorded last, read back with its verdict; one too near to call is asked for again at once. */
export function LastReading({ desk }: { readonly desk: SheetDesk }) {
  const told = lastOf(desk);
  return told ? <Told desk={desk} row={told.row} cell={told.cell} entry={told.given.entry} /> : null;
}

/** The way to strike out what was recorded last, well away from the button that records. */
export function StrikeLast({ desk }: { readonly desk: SheetDesk }) {
  const told = lastOf(desk);
  if (!told) return null;
  const { cell, given } = told;
  return (
    <div className="strike-last">
      <span>
        {cell.name} <strong>{cell.text}</strong>
      </span>
      <StrikeReading
        words={`${cell.name}, ${cell.text}`}
        strike={(reason) => desk.strike(cell.slot, given.entry, reason)}
      />
    </div>
  );
}

interface ToldProps {
  readonly desk: SheetDesk;
  readonly row: WorksheetRow;
  readonly cell: Cell;
  readonly entry: string;
}
function Told({ desk, row, cell, entry }: ToldProps) {
  const finding = tellingFinding(row);
  const spoken = finding === undefined ? cell.text : `${cell.text}, ${finding.verdict}`;
  // The same figure at the next place is said again.
  // biome-ignore lint/correctness/useExhaustiveDependencies: see above
  useEffect(() => say(spoken ?? ''), [spoken, entry]);
  const open = row.findings.find((one) => one.again);
  const again = open?.again;
  return (
    <section className="last" aria-live="polite" data-last={cell.slot}>
      {finding && <VerdictMark verdict={finding.verdict} {...(finding.nearEnd ? { nearEnd: finding.nearEnd } : {})} />}
      <p className="last-words">
        <strong>{cell.text}</strong>
        <span className="only-read">{cell.name}</span>
        <span className="last-finding">
          <span className="last-place">{row.name}: </span>
          {finding && findingWords(finding)}
        </span>
      </p>
      {again && (
        <button type="button" className="button" onClick={() => desk.again(again.slot)}>
          {open?.verdict === 'check again' ? 'Readings disagree' : 'Too near to call'}: take it again without seeing the
          first
        </button>
      )}
    </section>
  );
}

/** "bore diameter 98.612 mm, 0.004 mm from the high limit", or "2 of 6 read". */
export function findingWords({ title, value, distance, words }: FindingView): string {
  if (value === '') return words;
  return [`${title} ${value}`.trim(), distance, words].filter((one) => one !== undefined && one !== '').join(', ');
}
