import type { Cell, WorksheetRow, WorksheetView } from '@gudgeon/core/workbench';
import { memo, useEffect, useRef } from 'react';
import { VerdictShape } from '../../bench/index.js';
import { tellingFinding } from './last-reading.js';
import { verdictState } from './verdict-mark.js';

interface SheetGridProps {
  readonly view: WorksheetView;
  readonly current?: string;
  readonly choose: (slot: string) => void;
}
const stationOf = (slot: string): string => slot.slice(slot.lastIndexOf('/') + 1);

/** Places down, stations across; it scrolls within its own box and keeps the current cell in sight. */
export function SheetGrid({ view, current, choose }: SheetGridProps) {
  const box = useRef<HTMLDivElement>(null);
  const latest = useRef(choose);
  const pick = useRef((slot: string) => latest.current(slot));
  useEffect(() => {
    latest.current = choose;
  });
  useEffect(() => {
    const inside = box.current;
    const cell = inside?.querySelector<HTMLElement>(`[data-cell="${CSS.escape(current ?? '')}"]`);
    if (inside && cell) keepInSight(inside, cell);
  }, [current]);
  return (
    <div className="grid-box" ref={box}>
      <table className="sheet-grid">
        <caption className="only-read">{view.title}: places down, stations across</caption>
        <Heads columns={view.columns} />
        <tbody>
          {view.rows.map((row) => (
            <Row
              key={row.place}
              row={row}
              columns={view.columns}
              current={row.cells.some((cell) => cell.slot === current) ? current : undefined}
              choose={pick.current}
            />
          ))}
        </tbody>
      </table>
    </div>
  );
}

/** One line of heads, or heights over directions. */
const Heads = memo(
  function Heads({ columns }: { readonly columns: WorksheetView['columns'] }) {
    const groups = columns.filter((column, i) => column.group !== undefined && column.group !== columns[i - 1]?.group);
    const grouped = groups.length > 0;
    return (
      <thead>
        {grouped && (
          <tr>
            <th scope="col" rowSpan={2} className="grid-corner">
              Place
            </th>
            {groups.map(({ group = '' }) => (
              <th key={group} scope="colgroup" colSpan={columns.filter((column) => column.group === group).length}>
                {group}
              </th>
            ))}
          </tr>
        )}
        <tr>
          {!grouped && (
            <th scope="col" className="grid-corner">
              Place
            </th>
          )}
          {columns.map((column) => (
            <th key={column.id} scope="col">
              {column.name}
            </th>
          ))}
        </tr>
      </thead>
    );
  },
  (a, b) => a.columns.length === b.columns.length && a.columns.every((one, i) => one.name === b.columns[i]?.name),
);

/** Scrolls the box alone: the page must not move under the person's hands. */
function keepInSight(box: HTMLElement, cell: HTMLElement): void {
  const [outer, inner] = [box.getBoundingClientRect(), cell.getBoundingClientRect()];
  const names = box.querySelector('th[scope="row"]')?.getBoundingClientRect().width ?? 0;
  if (inner.left < outer.left + names) box.scrollLeft -= outer.left + names - inner.left;
  if (inner.right > outer.right) box.scrollLeft += inner.right - outer.right;
  if (inner.top < outer.top) box.scrollTop -= outer.top - inner.top;
  if (inner.bottom > outer.bottom) box.scrollTop += inner.bottom - outer.bottom;
}

interface RowProps {
  readonly row: WorksheetRow;
  readonly columns: WorksheetView['columns'];
  /** Slot of this row that is current; undefined where another row has it. */
  readonly current: string | undefined;
  readonly choose: (slot: string) => void;
}
/** A view is made anew with each entry; only the rows that look different are drawn again. */
const Row = memo(function Row({ row, columns, current, choose }: RowProps) {
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
          <td key={column.id}>{cell && <GridCell cell={cell} current={cell.slot === current} choose={choose} />}</td>
        );
      })}
    </tr>
  );
}, sameRow);

function sameRow(a: RowProps, b: RowProps): boolean {
  if (a.current !== b.current || a.row.name !== b.row.name || a.columns.length !== b.columns.length) return false;
  if (a.row.findings.some((one, i) => one.verdict !== b.row.findings[i]?.verdict)) return false;
  return a.row.cells.every((cell, i) => {
    const other = b.row.cells[i];
    return (
      other !== undefined &&
      cell.slot === other.slot &&
      cell.text === other.text &&
      cell.state === other.state &&
      cell.readings === other.readings
    );
  });
}

interface GridCellProps {
  readonly cell: Cell;
  readonly current: boolean;
  readonly choose: (slot: string) => void;
}
/** One cell: hollow until it is read. Tab stops at the current one only; arrow keys go on from it. */
function GridCell({ cell, current, choose }: GridCellProps) {
  const shown = cell.text?.replace(/\s.*$/, '') ?? (cell.readings > 0 ? 'hidden' : '–');
  const state = { empty: 'not read', read: '', disagrees: ', readings disagree' }[cell.state];
  return (
    <button
      type="button"
      className={`cell cell-${cell.state}`}
      data-cell={cell.slot}
      tabIndex={current ? 0 : -1}
      aria-current={current ? 'true' : undefined}
      aria-label={`${cell.name}: ${cell.text ?? ''}${state}`}
      onClick={() => choose(cell.slot)}
    >
      {cell.state === 'disagrees' && '⇄ '}
      {shown}
      {cell.readings > 1 && <small> ×{cell.readings}</small>}
    </button>
  );
}
