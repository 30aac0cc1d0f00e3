import type { RecordView } from '@gudgeon/core/workbench';
import { describe, expect, it } from 'vitest';
import { documentHtml, picturesForFile, recordDocument } from './index.js';

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

describe('photos in the printed record', () => {
  const photoRow = (name: string, bytes: number, struck?: string): RecordView['sections'][number]['rows'][number] => ({
    what: 'Photo: left head, hole 2',
    value: `thread <${name}>`,
    limit: '',
    origin: '',
    by: 'Ada',
    at: '2026-11-25 10:02',
    entry: `entry of ${name} ${bytes}`,
    photo: { photo: name, type: 'image/jpeg', bytes, width: 4, height: 3, about: 'hole:left/2', words: name },
    ...(struck !== undefined && { struck }),
  });
  const withPhotos = (...rows: ReturnType<typeof photoRow>[]): RecordView => ({
    ...view,
    sections: [{ key: 'photos', title: 'Photos', rows, open: [] }],
  });

  it('stand in the file itself, with words, place, person, time and hash', () => {
    const html = documentHtml(
      recordDocument(withPhotos(photoRow('aa', 300)), new Map([['aa', 'data:image/jpeg;base64,AAAA']])),
    );
    expect(html).toContain('<img src="data:image/jpeg;base64,AAAA" alt="thread &lt;aa&gt;">');
    expect(html).toContain('Photo: left head, hole 2. thread &lt;aa&gt;. Ada, 2026-11-25 10:02, SHA-256 aa');
    expect(html).not.toContain('left out');
  });

  it('that are not at hand are named, never dropped; a struck one stays and says so', () => {
    const html = documentHtml(recordDocument(withPhotos(photoRow('aa', 300, 'another engine'))));
    expect(html).toContain('Picture left out: it is neither on the device');
    expect(html).toContain('(struck out: another engine)');
    expect(html).not.toContain('<img');
  });

  it('go in as they stand until the file is full, each picture once; those left out say why', () => {
    const megabytes = (count: number) => count * 1024 ** 2;
    const full = withPhotos(
      photoRow('aa', megabytes(8)),
      photoRow('bb', megabytes(8)),
      photoRow('aa', megabytes(8)),
      photoRow('cc', megabytes(8)),
      photoRow('dd', 1),
    );
    expect(picturesForFile(full).map(({ photo }) => photo)).toEqual(['aa', 'bb', 'cc']);
    expect(recordDocument(full).pictures?.at(-1)?.why).toBe('one file takes 24 MB of pictures');
  });

  it('are no heading in a record without any', () => {
    expect(documentHtml(recordDocument(view))).not.toContain('Photos');
  });
});
