import type { Cell, WorksheetRow, WorksheetView } from '@gudgeon/core/workbench';
import { memo } from 'react';
import { VerdictShape, verdictState } from '../../bench/index.js';
import { tellingFinding } from './last-reading.js';

const stationOf = (slot: string): string => slot.slice(slot.lastIndexOf('/') + 1);

interface RowProps {
  readonly row: WorksheetRow;
  readonly columns: WorksheetView['columns'];
  /** Slot of this row that is current; undefined where another row has it. */
  readonly current: string | undefined;
  /** Slot of this row at which Tab stops; one in the whole grid. */
  readonly stop: string | undefined;
  readonly choose: (slot: string) => void;
}
/** A view is made anew with each entry; only the rows that look different are drawn again. */
export const GridRow = memo(function GridRow({ row, columns, current, stop, choose }: RowProps) {
  const finding = tellingFinding(row);
  return (
    <tr>
      <th scope="row">
        <span className="grid-place">
          {finding && finding.verdict !== 'no data' && (
            <span className={`grid-mark verdict-${verdictState(finding.verdict)}`}>
              <VerdictShape
                state={verdictState(finding.verdict)}
                {...(finding.nearEnd ? { nearEnd: finding.nearEnd } : {})}
              />
              <span className="only-read">{finding.verdict}</span>
            </span>
          )}
          {row.name}
        </span>
      </th>
      {columns.map((column) => {
        const cell = row.cells.find((one) => stationOf(one.slot) === column.id);
        return (
          <td key={column.id}>
            {cell && <GridCell cell={cell} current={cell.slot === current} stop={cell.slot === stop} choose={choose} />}
          </td>
        );
      })}
    </tr>
  );
}, sameRow);

/** The view gives the same row again where nothing of it has changed. */
function sameRow(a: RowProps, b: RowProps): boolean {
  return a.row === b.row && a.current === b.current && a.stop === b.stop && a.columns === b.columns;
}

interface GridCellProps {
  readonly cell: Cell;
  readonly current: boolean;
  readonly stop: boolean;
  readonly choose: (slot: string) => void;
}
/** One cell: hollow until it is read. Tab stops at one only; arrow keys go on from it. */
const GridCell = memo(function GridCell({ cell, current, stop, choose }: GridCellProps) {
  const shown = cell.text?.replace(/\s.*$/, '') ?? (cell.readings > 0 ? 'hidden' : '–');
  const [mark, count] = [cell.state === 'disagrees' ? '⇄ ' : '', cell.readings > 1 ? ` ×${cell.readings}` : ''];
  const state = { empty: 'not read', read: '', disagrees: ', readings disagree' }[cell.state];
  // What is seen is part of what is read out.
  const said = mark || count ? `${mark}${shown}${count}` : (cell.text ?? '');
  return (
    <button
      type="button"
      className={`cell cell-${cell.state}`}
      data-cell={cell.slot}
      tabIndex={stop ? 0 : -1}
      aria-current={current ? 'true' : undefined}
      aria-label={`${cell.name}: ${said}${state}`}
      onClick={() => choose(cell.slot)}
    >
      {mark}
      {shown}
      {count && <small>{count}</small>}
    </button>
  );
}, sameCell);

function sameCell(a: GridCellProps, b: GridCellProps): boolean {
  if (a.current !== b.current || a.stop !== b.stop) return false;
  const [one, other] = [a.cell, b.cell];
  return (
    one.slot === other.slot && one.text === other.text && one.state === other.state && one.readings === other.readings
  );
}
