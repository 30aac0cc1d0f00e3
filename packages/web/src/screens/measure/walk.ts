import type { WorksheetView } from '@gudgeon/core/workbench';
import type { Step } from './use-grid-keys.js';

type Grid = Pick<WorksheetView, 'rows' | 'order' | 'columns'>;
const cellsOf = ({ rows }: Pick<Grid, 'rows'>) => rows.flatMap((row) => row.cells);
const stationOf = (slot: string): string => slot.slice(slot.lastIndexOf('/') + 1);

/** The next empty slot after this one on the walk round the engine, from the beginning again at its end. */
export function nextEmpty(view: Grid, after: string): string | undefined {
  const empty = new Set(
    cellsOf(view)
      .filter((cell) => cell.readings === 0)
      .map((cell) => cell.slot),
  );
  empty.delete(after);
  const from = view.order.indexOf(after) + 1;
  return [...view.order.slice(from), ...view.order.slice(0, from)].find((slot) => empty.has(slot));
}

/** The cell one step away in the grid; the same one at its edge. A column that a place does not have is stepped over. */
export function neighbourCell({ rows, columns }: Grid, slot: string, step: Step): string {
  const row = rows.findIndex((one) => one.cells.some((cell) => cell.slot === slot));
  const column = columns.findIndex((one) => one.id === stationOf(slot));
  const at = (r: number, c: number) => rows[r]?.cells.find((cell) => stationOf(cell.slot) === columns[c]?.id)?.slot;
  const [down, right] = { up: [-1, 0], down: [1, 0], left: [0, -1], right: [0, 1] }[step] as [number, number];
  for (let far = 1; far <= rows.length + columns.length; far += 1) {
    const [r, c] = [row + down * far, column + right * far];
    if (r < 0 || c < 0 || r >= rows.length || c >= columns.length) return slot;
    const found = at(r, c);
    if (found !== undefined) return found;
  }
  return slot;
}
