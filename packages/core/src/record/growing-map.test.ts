import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { GrowingMap } from './growing-map.js';

const keys = fc.array(fc.integer({ min: 0, max: 150 }), { minLength: 1, maxLength: 300 });

describe('a map that grows and is handed out each time', () => {
  it('is, each time, what a map of the language would be, in the same order, and stays so', () => {
    fc.assert(
      fc.property(keys, (given) => {
        const growing = new GrowingMap<number, number>();
        const plain = new Map<number, number>();
        const handedOut = given.map((key, at) => {
          growing.set(key, at);
          plain.set(key, at);
          return [growing.asItStands(), [...plain]] as const;
        });
        for (const [map, then] of handedOut) {
          expect([...map]).toEqual(then);
          expect(map.size).toBe(then.length);
        }
      }),
      { numRuns: 40 },
    );
  });

  it('is looked up, asked and gone through by key, by value and by both', () => {
    const growing = new GrowingMap<string, number>();
    for (let at = 0; at < 60; at += 1) growing.set(`${at}`, at);
    growing.asItStands();
    growing.set('3', 300);
    growing.set('new', 61);
    const map = growing.asItStands();
    expect([growing.get('3'), growing.get('4'), growing.get('none')]).toEqual([300, 4, undefined]);
    expect([map.get('3'), map.get('4'), map.get('none')]).toEqual([300, 4, undefined]);
    expect([map.has('new'), map.has('59'), map.has('none')]).toEqual([true, true, false]);
    expect([...map.keys()].slice(-2)).toEqual(['59', 'new']);
    expect([...map.values()].slice(2, 5)).toEqual([2, 300, 4]);
    const seen: [string, number][] = [];
    map.forEach((value, key) => {
      seen.push([key, value]);
    });
    expect(seen).toEqual([...map.entries()]);
  });
});
