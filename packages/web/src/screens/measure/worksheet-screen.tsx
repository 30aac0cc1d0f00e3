import type { Bench } from '@gudgeon/core/workbench';
import { memo } from 'react';
import { Link, useSearch } from 'wouter';
import { Progress } from '../../bench/index.js';
import { FigureView } from '../../figures/index.js';
import { useFromTop } from '../../keys/index.js';
import { BenchScreen, type OpenJob, Said, useBench, useRecord, WithJob } from '../../shell/index.js';
import { AllRead } from './all-read.js';
import { CameBack } from './came-back.js';
import { EntryDesk } from './entry-desk.js';
import { LastReading, StrikeLast } from './last-reading.js';
import { PlaceFindings } from './place-findings.js';
import { SheetGrid } from './sheet-grid.js';
import { SlotRead } from './slot-read.js';
import { TableFiles } from './table-files.js';
import { useGridKeys } from './use-grid-keys.js';
import { type SheetDesk, useSheetDesk } from './use-sheet-desk.js';
import { neighbourCell } from './walk.js';

interface WorksheetProps {
  readonly job: string;
  readonly feature: string;
}

export function WorksheetScreen({ job, feature }: WorksheetProps) {
  return <WithJob job={job}>{(open) => <Worksheet open={open} feature={feature} />}</WithJob>;
}

function Worksheet({ open, feature }: { readonly open: OpenJob; readonly feature: string }) {
  const bench = useBench(open);
  const recorder = useRecord(open, bench);
  const first = new URLSearchParams(useSearch()).get('slot') ?? undefined;
  const desk = useSheetDesk(bench, recorder, feature, first);
  if (!desk) return <h1>This engine has nothing to measure called “{feature}”</h1>;
  return (
    <BenchScreen title={desk.view.title} cautions={desk.view.cautions} begun={desk.view.progress.done > 0}>
      <Sheet job={open.job} bench={bench} desk={desk} />
    </BenchScreen>
  );
}

interface SheetProps {
  readonly job: string;
  readonly bench: Bench;
  readonly desk: SheetDesk;
}
/** Drawing and field first; the grid beside them on a laptop, below them on a phone. */
const Sheet = memo(function Sheet({ job, bench, desk }: SheetProps) {
  const { view, slot, choose, recorder } = desk;
  const cell = view.rows.flatMap((row) => row.cells).find((one) => one.slot === slot);
  const row = view.rows.find((one) => one.cells.some((each) => each.slot === slot)) ?? rowOfLast(desk);
  useFromTop(view.feature);
  useGridKeys((step) => {
    const from = slot ?? desk.last ?? view.order[0];
    if (from !== undefined) choose(neighbourCell(view, from, step));
  });
  return (
    <div className="sheet">
      <div className="sheet-desk">
        {view.figure && <FigureView figure={view.figure} onTouch={choose} {...(slot ? { current: slot } : {})} />}
        {cell === undefined && <AllRead job={job} desk={desk} />}
        {cell && (cell.readings === 0 || desk.repeat) && <EntryDesk desk={desk} cell={cell} />}
        {cell && cell.readings > 0 && !desk.repeat && <SlotRead desk={desk} cell={cell} />}
        {cell === undefined && <LastReading desk={desk} />}
        {recorder.said !== lastText(desk) && <Said recorder={recorder} />}
      </div>
      <div className="sheet-table">
        <Progress {...view.progress} />
        <StrikeLast desk={desk} />
        <SheetGrid view={view} choose={choose} {...(slot ? { current: slot } : {})} />
        <p className="field-hint">
          {view.how} <em>{view.condition}.</em>
        </p>
        {row && <PlaceFindings row={row} others={view.rows} again={desk.again} />}
        <CameBack desk={desk} bench={bench} {...(row ? { row } : {})} />
        <TableFiles desk={desk} bench={bench} />
        <AllSheets job={job} />
      </div>
    </div>
  );
});

const AllSheets = memo(function AllSheets({ job }: { readonly job: string }) {
  return (
    <Link className="button" href={`/engine/${job}/measure`}>
      All worksheets
    </Link>
  );
});

/** What was read last stands in its own place already. */
const lastText = ({ view, last }: SheetDesk) =>
  view.rows.flatMap((one) => one.cells).find((cell) => cell.slot === last)?.text ?? '';
const rowOfLast = ({ view, last }: SheetDesk) =>
  view.rows.find((one) => one.cells.some((each) => each.slot === last)) ?? view.rows[0];
