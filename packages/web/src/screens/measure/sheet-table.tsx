import type { Bench } from '@gudgeon/core/workbench';
import { memo } from 'react';
import { Link } from 'wouter';
import { Progress } from '../../bench/index.js';
import { CameBack } from './came-back.js';
import { StrikeLast } from './last-reading.js';
import { PlaceFindings } from './place-findings.js';
import { SheetGrid } from './sheet-grid.js';
import { TableFiles } from './table-files.js';
import type { SheetDesk } from './use-sheet-desk.js';

interface SheetTableProps {
  readonly job: string;
  readonly bench: Bench;
  readonly desk: SheetDesk;
}

/** All readings of the sheet in their grid, what follows from them, and what can be done with them besides keying. */
export const SheetTable = memo(function SheetTable({ job, bench, desk }: SheetTableProps) {
  const { view, slot, choose } = desk;
  const row = view.rows.find((one) => one.cells.some((each) => each.slot === slot)) ?? rowOfLast(desk);
  return (
    <div className="sheet-table">
      <Progress {...view.progress} />
      <StrikeLast desk={desk} />
      <SheetGrid view={view} choose={choose} {...(slot ? { current: slot } : {})} />
      <p className="field-hint">
        {view.how} <em>{view.condition}.</em>
      </p>
      {view.assumed.map((words) => (
        <p key={words} className="field-hint">
          Taken for granted: {words}.
        </p>
      ))}
      {row && <PlaceFindings row={row} others={view.rows} again={desk.again} />}
      <CameBack desk={desk} bench={bench} {...(row ? { row } : {})} />
      <TableFiles desk={desk} bench={bench} />
      <AllSheets job={job} />
    </div>
  );
});

const rowOfLast = ({ view, last }: SheetDesk) =>
  view.rows.find((one) => one.cells.some((each) => each.slot === last)) ?? view.rows[0];

const AllSheets = memo(function AllSheets({ job }: { readonly job: string }) {
  return (
    <Link className="button" href={`/engine/${job}/measure`}>
      All worksheets
    </Link>
  );
});
