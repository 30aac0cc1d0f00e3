import { type Engine, type ValveId, valveKey, valveName } from '../engine/index.js';
import type { MarkState, Point, Shape, Touch } from './figure.js';
import { at } from './geometry.js';
import { withState } from './marks.js';
import type { Marks, Shown } from './options.js';
import { arrow, label, line, polygon, roundedRectangle } from './shapes.js';
import { type Scale, scaleFor } from './sheet-scale.js';
import { textLines } from './text-lines.js';
import { type BankPlan, type ValvePlan, type ValveSlot, valvePlan } from './valve-plan.js';

/** One place of the grid on the page. */
export interface Cell {
  readonly valve: ValveId;
  readonly key: string;
  readonly name: string;
  readonly state: MarkState;
  readonly centre: Point;
}
export interface Grid {
  readonly cells: readonly Cell[];
  /** Bank outlines, cylinder numbers, bank names and the front arrow. */
  readonly frame: readonly Shape[];
  readonly scale: Scale;
  /** Width of one column. */
  readonly column: number;
  readonly note: string;
  readonly leastWidth: number;
}
/** Drawn at the size of a phone: one unit is one CSS pixel there. A row is a touch of 44 px and a little air. */
const PAGE = { width: 348, row: 47, between: 9, gutter: 30, gap: 14, column: 92, top: 46 };

/** Lays every valve of the engine out in plan, banks side by side, front at the top. */
export function valveGrid(engine: Engine, marks: Marks, shown: Shown): Grid {
  const plan = valvePlan(engine);
  const columns = plan.banks.reduce((sum, bank) => sum + bank.columns, 0);
  const sides = plan.banks.length * PAGE.gutter + (plan.banks.length - 1) * PAGE.gap;
  const column = Math.min(PAGE.column, (PAGE.width - sides) / Math.max(1, columns));
  const scale = scaleFor(PAGE.width, shown);
  const used = columns * column + sides;
  let left = (PAGE.width - used) / 2;
  const parts = plan.banks.map((bank, i) => {
    // Numbers stand on the outer side: left of the first bank, right of the others.
    const numbersLeft = i === 0;
    const start = left + (numbersLeft ? PAGE.gutter : 0);
    left += bank.columns * column + PAGE.gutter + PAGE.gap;
    return {
      cells: cellsOf(engine, bank, start, column, marks),
      frame: frameOf(bank, start, column, numbersLeft, scale),
    };
  });
  return {
    cells: parts.flatMap((part) => part.cells),
    frame: [...frontArrow(scale), ...parts.flatMap((part) => part.frame), ...noteLines(plan, scale)],
    scale,
    column,
    note: plan.note,
    leastWidth: PAGE.width + 2 * scale.margin,
  };
}
/** Middle of a row; each cylinder before it adds a little air. */
function rowMiddle(bank: BankPlan, slot: Pick<ValveSlot, 'row'>): number {
  const before = bank.cylinders.filter((cylinder) => cylinder.lastRow < slot.row).length;
  return PAGE.top + PAGE.row * (slot.row + 0.5) + PAGE.between * (before + 0.5);
}
function cellsOf(engine: Engine, bank: BankPlan, start: number, column: number, marks: Marks): readonly Cell[] {
  return bank.slots.map((slot) => {
    const key = valveKey(slot.valve);
    return {
      valve: slot.valve,
      key,
      name: valveName(engine, slot.valve),
      state: marks[key] ?? 'idle',
      centre: at(start + column * (slot.column + 0.5), rowMiddle(bank, slot)),
    };
  });
}
function frameOf(bank: BankPlan, start: number, column: number, numbersLeft: boolean, scale: Scale): readonly Shape[] {
  const width = bank.columns * column;
  const bottom = bottomOf(bank);
  const numberAt = numbersLeft ? start - PAGE.gutter / 2 : start + width + PAGE.gutter / 2;
  return [
    polygon(roundedRectangle(start, PAGE.top, width, bottom - PAGE.top, 10), 'visible', {
      fill: 'metal',
      part: `bank ${bank.bank.id}`,
    }),
    label(at(start + width / 2, PAGE.top - scale.small * 0.9), bank.bank.id, scale.small),
    ...bank.cylinders.map((cylinder) => {
      const y = (rowMiddle(bank, { row: cylinder.firstRow }) + rowMiddle(bank, { row: cylinder.lastRow })) / 2;
      return label(at(numberAt, y), String(cylinder.number), scale.text * 1.2, { part: `cylinder ${cylinder.number}` });
    }),
    ...bank.cylinders.slice(1).map((cylinder) => {
      const y = rowMiddle(bank, { row: cylinder.firstRow }) - (PAGE.row + PAGE.between) / 2;
      return line(at(start, y), at(start + width, y), 'thin');
    }),
  ];
}
function frontArrow(scale: Scale): readonly Shape[] {
  const middle = PAGE.width / 2;
  const x = middle - scale.px * 30;
  return [
    ...arrow(at(x, scale.px * 22), at(x, 0), scale.px * 12, { part: 'front' }),
    label(at(x + scale.px * 10, scale.px * 11), 'FRONT', scale.small, { anchor: 'start', part: 'front' }),
  ];
}
/** An assumed order along the head is said in the drawing itself: a part could land in its neighbour's place. */
function noteLines(plan: ValvePlan, scale: Scale): readonly Shape[] {
  if (plan.note === '') return [];
  const lowest = Math.max(...plan.banks.map(bottomOf));
  return textLines(plan.note, 0, lowest + scale.px * 6, PAGE.width, scale.small);
}
const bottomOf = (bank: BankPlan): number => PAGE.top + PAGE.row * bank.rows + PAGE.between * bank.cylinders.length;
/** I or E, numbered from the front where a cylinder has several of the kind. */
export function valveLetter(engine: Engine, valve: ValveId): string {
  const letter = valve.kind === 'intake' ? 'I' : 'E';
  const numbered =
    valveName(engine, valve).endsWith(` ${valve.index}`) && !valveName(engine, valve).endsWith(valve.kind);
  return numbered ? `${letter}${valve.index}` : letter;
}
/** The mark stands left of its letter; the ring of a touch goes round the mark. */
export const markAt = (cell: Cell, scale: Scale): Point => at(cell.centre.x - scale.px * 14, cell.centre.y);

export const cellTouch = (cell: Cell, scale: Scale): Touch => ({
  part: cell.key,
  name: withState(cell.name, cell.state),
  centre: markAt(cell, scale),
  reach: scale.reach,
});
