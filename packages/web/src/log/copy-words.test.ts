import { describe, expect, it } from 'vitest';
import { copyWords } from './copy-words.js';

const entry = (at: string) => ({
  id: at,
  job: 'j',
  device: 'd',
  counter: 1,
  at,
  person: 'p',
  kind: 'note',
  version: 1,
  data: {},
  previous: '',
  hash: '',
});

describe('what is said about copies', () => {
  it('says saved only when nothing waits', () => {
    expect(copyWords({ waiting: [] }, 0)).toBe('All entries saved');
  });

  it('counts what only this device has, with the age of the oldest', () => {
    const now = Date.parse('2026-03-01T10:00:00Z');
    expect(copyWords({ waiting: [entry('2026-03-01T09:30:00+00:00'), entry('2026-03-01T09:59:50+00:00')] }, now)).toBe(
      '2 entries on this device only, the oldest for 30 min',
    );
    expect(copyWords({ waiting: [entry('2026-02-28T10:00:00+00:00')] }, now)).toBe(
      '1 entry on this device only, the oldest for 24 h',
    );
  });

  it('never says saved while the server refuses what waits', () => {
    expect(
      copyWords(
        { waiting: [entry('2026-03-01T09:59:50+00:00')], trouble: 'refused' },
        Date.parse('2026-03-01T10:00:00Z'),
      ),
    ).not.toContain('saved');
  });

  it('does not say saved while a photo waits, and counts both', () => {
    expect(copyWords({ waiting: [] }, 0, 1)).toBe('1 photo on this device only');
    const now = Date.parse('2026-03-01T10:00:00Z');
    expect(copyWords({ waiting: [entry('2026-03-01T09:30:00+00:00')] }, now, 2)).toBe(
      '1 entry and 2 photos on this device only, the oldest for 30 min',
    );
  });
});
