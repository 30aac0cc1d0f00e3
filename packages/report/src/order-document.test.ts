import type { OrderView } from '@gudgeon/core/workbench';
import { describe, expect, it } from 'vitest';
import { documentHtml, orderDocument } from './index.js';

const view: OrderView = {
  title: 'Machine-shop order for a <made-up> engine',
  invented: true,
  lines: [
    {
      id: 'bore/all',
      number: 1,
      operation: 'Bore and hone',
      part: 'cylinder block',
      target: 'each place its own',
      tolerance: '',
      places: [
        {
          name: 'cylinder 1',
          target: '99.100 to 99.109 mm',
          fittedTo: 'piston of cylinder 1, 99.066 mm',
          returned: { state: 'out', words: '99.121 mm ±0.004 mm, 0.012 mm too large' },
        },
        {
          name: 'cylinder 2',
          target: '99.102 to 99.111 mm',
          fittedTo: 'piston of cylinder 2, 99.068 mm',
          returned: { state: 'no data', words: 'not back yet' },
        },
      ],
      finish: 'crosshatch 30 to 45 degrees',
      fittedTo: '',
      with: 'iron plate, head bolts at their torque',
      notes: ['Break the edges.'],
      decidedBy: { by: 'Ada', at: '2026-01-01 10:00', entry: 'e1', reason: 'cleans up all eight' },
      returned: { state: 'out', words: '0 of 2 in; out: cylinder 1; 1 not back' },
    },
  ],
  buys: [{ part: 'piston', partNumber: 'P-50', size: '0.50 mm', count: 8, for: 'cylinders 1 to 8' }],
  open: ['Deck: to be decided'],
  measuredWith: ['bore gauge (reads 0.001 mm, held to a standard 2 times)'],
  cautions: [{ word: 'NOTICE', can: 'A cut cannot be undone', because: 'it rests on readings', act: 'stop and ask' }],
};

describe('the printed order', () => {
  const { lead, tables, notes } = orderDocument(view);
  const titled = (title: string) => tables.find((table) => table.title.startsWith(title));

  it('gives each line with finish, what must be on, who decided it and why', () => {
    const cells = titled('Work to be done')?.rows[0]?.cells;
    expect(cells).toContain('crosshatch 30 to 45 degrees');
    expect(cells).toContain('iron plate, head bolts at their torque');
    const notes = titled('Notes')?.rows.map((line) => line.cells[1]);
    expect(notes).toContain('Decided by Ada, 2026-01-01 10:00: cleans up all eight.');
    expect(notes).toContain('Fitted to: each place to its own part, see below.');
  });
  it('gives every place its own size and its own piston, and leaves room for what the shop measures', () => {
    expect(titled('Line 1')?.rows[0]?.cells).toEqual([
      'cylinder 1',
      '99.100 to 99.109 mm',
      'piston of cylinder 1, 99.066 mm',
      '',
      '99.121 mm ±0.004 mm, 0.012 mm too large',
      'OUT',
    ]);
    expect(titled('Line 1')?.rows[1]?.cells.slice(-2)).toEqual(['not back yet', 'NO DATA']);
  });
  it('says what is still open, so that a half order never looks whole', () => {
    expect(titled('Work to be done')?.open).toEqual(['Deck: to be decided']);
    expect(documentHtml(orderDocument(view))).toContain('Open: Deck: to be decided');
  });
  it('lists the parts to buy with count and number', () => {
    expect(titled('Parts to buy')?.rows[0]?.cells.slice(0, 4)).toEqual(['8', 'piston', 'P-50', '0.50 mm']);
  });
  it('names the gauges, and that the manual outranks it', () => {
    expect(lead.join(' ')).toContain('bore gauge (reads 0.001 mm');
    expect(lead.join(' ')).toContain('outrank every computed figure');
    expect(notes).toEqual(['NOTICE. A cut cannot be undone: it rests on readings. Stop and ask.']);
  });
  it('is one file without script or address outside, and writes names as text', () => {
    const html = documentHtml(orderDocument(view));
    expect(html).not.toMatch(/<script|https?:|src=|<link/);
    expect(html).toContain('a &lt;made-up&gt; engine');
  });
  it('is readable without anything decided', () => {
    const empty = orderDocument({ ...view, lines: [], buys: [], open: [], measuredWith: [] });
    expect(empty.tables).toEqual([]);
    expect(empty.lead.join(' ')).toContain('no gauge is named');
  });
});
