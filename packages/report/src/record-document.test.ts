import type { RecordView } from '@gudgeon/core/workbench';
import { describe, expect, it } from 'vitest';
import { documentHtml, recordDocument } from './index.js';

const view: RecordView = {
  title: 'Record of a <made-up> engine',
  invented: true,
  headCode: 'AB12-CD34',
  chain: 'The chain is whole.',
  entries: 3,
  sections: [
    {
      key: 'tightening',
      title: 'Left head, tightened',
      rows: [
        {
          what: 'hole 1',
          value: '95 N·m',
          limit: '95 N·m',
          origin: 'manual p. 4',
          by: 'Ada',
          at: '2026-11-25 10:00',
          entry: 'e1',
        },
        {
          what: 'hole 2',
          value: '59 N·m',
          limit: '95 N·m',
          origin: 'manual p. 4',
          by: 'Ada',
          at: '2026-11-25 10:01',
          entry: 'e2',
          struck: 'wrong wrench',
        },
      ],
      open: ['hole 3, stage 2'],
    },
  ],
  notUnderstood: [],
  cautions: [],
};

describe('the printed record', () => {
  it('shows each value with its limit, the origin of the limit, who and when', () => {
    expect(recordDocument(view).tables[0]?.rows[0]?.cells).toEqual([
      'hole 1',
      '95 N·m',
      '95 N·m',
      'manual p. 4',
      'Ada',
      '2026-11-25 10:00',
    ]);
  });
  it('keeps a struck line, with its reason', () => {
    const struck = recordDocument(view).tables[0]?.rows[1];
    expect(struck?.struck).toBe(true);
    expect(struck?.cells[1]).toBe('59 N·m (struck out: wrong wrench)');
  });
  it('says that an invented engine is invented, and lists what is open', () => {
    const html = documentHtml(recordDocument(view));
    expect(html).toContain('Invented demonstration engine');
    expect(html).toContain('Open: hole 3, stage 2');
  });
  it('writes angle brackets of a name as text, not as markup', () => {
    expect(documentHtml(recordDocument(view))).toContain('<h1>Record of a &lt;made-up&gt; engine</h1>');
  });
});
