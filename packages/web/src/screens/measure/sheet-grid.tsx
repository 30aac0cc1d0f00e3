import type { WorksheetRow, WorksheetView } from '@gudgeon/core/workbench';
import { useEffect, useRef } from 'react';
import { afterFrame } from '../../keys/index.js';
import { GridHeads } from './grid-heads.js';
import { GridRow } from './grid-row.js';

interface SheetGridProps {
  readonly view: WorksheetView;
  readonly current?: string;
  readonly choose: (slot: string) => void;
}
const inRow = (row: WorksheetRow, slot: string | undefined): string | undefined =>
  row.cells.some((cell) => cell.slot === slot) ? slot : undefined;

/** Places down, stations across; it scrolls within its own box and keeps the current cell in sight. */
export function SheetGrid({ view, current, choose }: SheetGridProps) {
  const box = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (current === undefined) return;
    return afterFrame(() => {
      const inside = box.current;
      const cell = inside?.querySelector<HTMLElement>(`[data-cell="${CSS.escape(current)}"]`);
      if (inside && cell) keepInSight(inside, cell);
    });
  }, [current]);
  return (
    <div className="grid-box" ref={box}>
      <table className="sheet-grid">
        <caption className="only-read">{view.title}: places down, stations across</caption>
        <GridHeads columns={view.columns} />
        <tbody>
          {view.rows.map((row) => (
            <GridRow
              key={row.place}
              row={row}
              columns={view.columns}
              current={inRow(row, current)}
              stop={inRow(row, current ?? view.order[0])}
              choose={choose}
            />
          ))}
        </tbody>
      </table>
    </div>
  );
}

/** Scrolls the box alone: the page must not move under the person's hands. */
function keepInSight(box: HTMLElement, cell: HTMLElement): void {
  const [outer, inner] = [box.getBoundingClientRect(), cell.getBoundingClientRect()];
  const names = box.querySelector('th[scope="row"]')?.getBoundingClientRect().width ?? 0;
  if (inner.left < outer.left + names) box.scrollLeft -= outer.left + names - inner.left;
  if (inner.right > outer.right) box.scrollLeft += inner.right - outer.right;
  const heads = box.querySelector('thead')?.getBoundingClientRect().height ?? 0;
  if (inner.top < outer.top + heads) box.scrollTop -= outer.top + heads - inner.top;
  if (inner.bottom > outer.bottom) box.scrollTop += inner.bottom - outer.bottom;
}
