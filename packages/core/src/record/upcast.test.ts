import { describe, expect, it } from 'vitest';
import type { EntryKind } from './entry.js';
import { SAMPLES_V1 } from './samples.suite.js';
import { upcast } from './upcast.js';

describe('reading old and new entries', () => {
  it.each(Object.entries(SAMPLES_V1))('%s of version 1 is understood as it was written', (kind, data) => {
    expect(upcast({ kind, version: 1, data })).toEqual({ understood: true, known: { kind, data } });
  });

  it('keeps an entry of a newer version, of an unknown kind or of another shape, and says so', () => {
    const data = SAMPLES_V1.note;
    expect(upcast({ kind: 'note', version: 2, data })).toEqual({ understood: false, why: 'newer-version' });
    expect(upcast({ kind: 'cylinder-bored', version: 1, data })).toEqual({ understood: false, why: 'unknown-kind' });
    expect(upcast({ kind: 'note', version: 1, data: { about: 3 } })).toMatchObject({ why: 'unreadable', at: 'about' });
  });

  it('takes an old entry through every step from the version it was written in', () => {
    // Two invented older shapes of a note: first "words" alone, then "words" with "on".
    const steps = {
      note: [
        (data: unknown) => ({ ...(data as object), on: '' }),
        (data: unknown) => {
          const { words, on } = data as { words: string; on: string };
          return { about: on, text: words };
        },
      ],
    };
    const known = (data: object) => ({ understood: true, known: { kind: 'note' as EntryKind, data } });
    expect(upcast({ kind: 'note', version: 1, data: { words: 'dry' } }, steps)).toEqual(
      known({ about: '', text: 'dry' }),
    );
    expect(upcast({ kind: 'note', version: 2, data: { words: 'dry', on: 'head' } }, steps)).toEqual(
      known({ about: 'head', text: 'dry' }),
    );
    expect(upcast({ kind: 'note', version: 3, data: { about: 'head', text: 'dry' } }, steps)).toEqual(
      known({ about: 'head', text: 'dry' }),
    );
    expect(upcast({ kind: 'note', version: 4, data: {} }, steps)).toMatchObject({ why: 'newer-version' });
    expect(upcast({ kind: 'note', version: 2, data: null }, steps)).toMatchObject({ why: 'unreadable' });
  });
});
