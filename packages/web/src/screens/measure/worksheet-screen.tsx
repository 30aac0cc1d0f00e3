import type { Bench } from '@gudgeon/core/workbench';
import { memo } from 'react';
import { useSearch } from 'wouter';
import { FigureView, useWide } from '../../figures/index.js';
import { useBehind, useFromTop } from '../../keys/index.js';
import { BenchScreen, type OpenJob, Said, useBench, useRecord, WithJob } from '../../shell/index.js';
import { AllRead } from './all-read.js';
import { EntryDesk } from './entry-desk.js';
import { LastReading } from './last-reading.js';
import { SheetTable } from './sheet-table.js';
import { SlotRead } from './slot-read.js';
import { useGridKeys } from './use-grid-keys.js';
import { type SheetDesk, useSheetDesk } from './use-sheet-desk.js';
import { neighbourCell } from './walk.js';

interface WorksheetProps {
  readonly job: string;
  readonly feature: string;
}

export function WorksheetScreen({ job, feature }: WorksheetProps) {
  return <WithJob job={job}>{(open) => <Worksheet key={feature} open={open} feature={feature} />}</WithJob>;
}

function Worksheet({ open, feature }: { readonly open: OpenJob; readonly feature: string }) {
  const bench = useBench(open);
  const recorder = useRecord(open, bench);
  const first = new URLSearchParams(useSearch()).get('slot') ?? undefined;
  const desk = useSheetDesk(bench, recorder, feature, first);
  if (!desk) return <h1>This engine has nothing to measure called “{feature}”</h1>;
  return (
    <BenchScreen title={desk.view.title} cautions={desk.view.cautions} begun={desk.view.progress.done > 0} once>
      <Sheet job={open.job} bench={bench} desk={desk} />
    </BenchScreen>
  );
}

interface SheetProps {
  readonly job: string;
  readonly bench: Bench;
  readonly desk: SheetDesk;
}
/**
 * Drawing and field first; the table beside them on a laptop, below them on a phone. On a phone drawing and table follow a frame behind:
 * what a person keys by, the next slot and the read-back with its verdict, comes first.
 */
const Sheet = memo(function Sheet({ job, bench, desk }: SheetProps) {
  const { view, slot, choose, recorder } = desk;
  const second = useBehind(desk);
  const behind = useWide() ? desk : second;
  const cell = view.rows.flatMap((row) => row.cells).find((one) => one.slot === slot);
  useFromTop(view.feature);
  useGridKeys((step) => {
    const from = slot ?? desk.last ?? view.order[0];
    if (from !== undefined) choose(neighbourCell(view, from, step));
  });
  return (
    <div className="sheet">
      <div className="sheet-desk">
        <Drawing desk={behind} />
        {cell === undefined && <AllRead job={job} desk={desk} />}
        {cell && (cell.readings === 0 || desk.repeat) && <EntryDesk desk={desk} cell={cell} />}
        {cell && cell.readings > 0 && !desk.repeat && <SlotRead desk={desk} cell={cell} />}
        {cell === undefined && <LastReading desk={desk} />}
        {recorder.said !== lastText(desk) && <Said recorder={recorder} />}
      </div>
      <SheetTable job={job} bench={bench} desk={behind} />
    </div>
  );
});

const Drawing = memo(function Drawing({ desk }: { readonly desk: SheetDesk }) {
  const { view, slot, choose } = desk;
  return view.figure && <FigureView figure={view.figure} onTouch={choose} {...(slot ? { current: slot } : {})} />;
});

/** What was read last stands in its own place already. */
const lastText = ({ view, last }: SheetDesk) =>
  view.rows.flatMap((one) => one.cells).find((cell) => cell.slot === last)?.text ?? '';
