import { describe, expect, it } from 'vitest';
import { actName, benchPlace, groupOf, lengthWords } from './act-words.js';

describe('an act in words', () => {
  it('is what the hand does, and where', () => {
    expect(actName({ does: 'Set the cap on.', place: 'main 3' })).toBe('Set the cap on, main 3');
    expect(actName({ does: 'Count every aid of the trial back.', place: '' })).toBe(
      'Count every aid of the trial back',
    );
  });

  it('has a usual length, rounded as a person says it', () => {
    expect([0.4, 5, 89, 90, 240].map(lengthWords)).toEqual([
      'about 1 min',
      'about 5 min',
      'about 89 min',
      'about 1.5 h',
      'about 4 h',
    ]);
  });

  it('stands together with the other places of its worksheet, or of its rule', () => {
    const group = (id: string, answer: 'worksheet' | 'felt-or-seen') => groupOf({ id, answer });
    expect(group('new-parts-worksheet@cylinder-bore/1', 'worksheet')).toBe('new-parts-worksheet@cylinder-bore');
    expect(group('cap-on@main-3', 'felt-or-seen')).toBe('cap-on');
    expect(group('signed-off', 'felt-or-seen')).toBe('signed-off');
  });

  it('has an address that holds its place, whatever letters it has', () => {
    expect(benchPlace('j')).toBe('/engine/j/bench');
    expect(decodeURIComponent(benchPlace('j', 'read@bore/head:left').slice('/engine/j/bench/'.length))).toBe(
      'read@bore/head:left',
    );
    expect(benchPlace('j', 'read@bore/1').split('/')).toHaveLength(5);
  });
});
