import type { Cell, WorksheetView } from '@gudgeon/core/workbench';
import { describe, expect, it } from 'vitest';
import { neighbourCell, nextEmpty } from './walk.js';

const cell = (slot: string, readings = 0): Cell => ({
  slot,
  name: slot,
  state: readings > 0 ? 'read' : 'empty',
  readings,
});
const grid = (read: readonly string[]): Pick<WorksheetView, 'rows' | 'order' | 'columns'> => {
  const slots = [['b/1/top', 'b/1/low'], ['b/2/low'], ['b/3/top', 'b/3/low']];
  return {
    columns: [
      { id: 'top', name: 'top' },
      { id: 'low', name: 'low' },
    ],
    rows: slots.map((row, i) => ({
      place: String(i + 1),
      name: `place ${i + 1}`,
      cells: row.map((slot) => cell(slot, read.includes(slot) ? 1 : 0)),
      findings: [],
      occasion: 1,
      before: [],
    })),
    order: slots.flat(),
  };
};

describe('walking round with a gauge', () => {
  it('goes on to the next place that is not read', () => {
    expect(nextEmpty(grid(['b/1/low']), 'b/1/top')).toBe('b/2/low');
  });
  it('comes back to what was left out', () => {
    expect(nextEmpty(grid(['b/3/low']), 'b/3/low')).toBe('b/1/top');
  });
  it('ends when nothing but the last reading is left', () => {
    expect(nextEmpty(grid(['b/1/top', 'b/1/low', 'b/2/low', 'b/3/top']), 'b/3/low')).toBeUndefined();
  });
  it('steps over a place that has no such station, and stays at the edge', () => {
    expect(neighbourCell(grid([]), 'b/1/top', 'down')).toBe('b/3/top');
    expect(neighbourCell(grid([]), 'b/1/low', 'down')).toBe('b/2/low');
    expect(neighbourCell(grid([]), 'b/1/top', 'left')).toBe('b/1/top');
    expect(neighbourCell(grid([]), 'b/2/low', 'left')).toBe('b/2/low');
  });
});
