import type { OperationActsView, WorkActView } from '@gudgeon/core/workbench';
import { describe, expect, it } from 'vitest';
import { earlierWords, recordedLast } from './act-earlier.js';

const act = (id: string, given?: Partial<NonNullable<WorkActView['given']>>): WorkActView => ({
  id,
  operation: 'mains',
  operationTitle: 'Mains',
  phase: 'permanent-parts',
  place: '',
  does: id,
  ask: '',
  answer: 'felt-or-seen',
  units: [],
  minutes: 1,
  state: 'ready',
  waitsFor: [],
  critical: false,
  closes: false,
  photos: '',
  ...(given && {
    given: { by: 'Ada', at: '2026-03-01 10:00', entry: id, words: '', method: '', result: 'good', ...given },
  }),
});
const operation = (...acts: readonly WorkActView[]) =>
  ({ chunks: [{ number: 1, title: '', acts }] }) as unknown as OperationActsView;

describe('words that are offered again at the next place', () => {
  const view = operation(
    act('shells@main-1', { words: 'snug', at: '2026-03-01 10:00' }),
    act('shells@main-2', { words: 'snug, oil under none', at: '2026-03-01 10:05' }),
    act('shells@main-3', { words: 'tight', at: '2026-03-01 10:06', result: 'bad' }),
    act('shells@main-4', { words: 'snug', at: '2026-03-01 10:04' }),
    act('caps@main-1', { words: 'reads the same', at: '2026-03-01 10:09' }),
    act('shells@main-5'),
  );

  it('are those of the same act, newest first, each once, and never what was found bad', () => {
    expect(earlierWords(view, act('shells@main-5'))).toEqual(['snug, oil under none', 'snug']);
    expect(earlierWords(view, act('caps@main-2'))).toEqual(['reads the same']);
    expect(earlierWords(view, act('studs'))).toEqual([]);
  });

  it('can be struck out where they were recorded last', () => {
    expect(recordedLast(view)?.id).toBe('caps@main-1');
    expect(recordedLast(operation(act('shells@main-1')))).toBeUndefined();
  });
});
