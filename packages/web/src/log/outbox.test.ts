import type { Envelope } from '@gudgeon/core/record';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { dropFromOutbox, jobsWaiting, keepInOutbox, readOutbox } from './outbox.js';

/** Storage of a browser with room for a number of items; its items are seen as keys, as in a browser. */
function storage(room: number) {
  const items: Record<string, string> = {};
  Object.defineProperties(items, {
    getItem: { value: (key: string) => items[key] ?? null },
    setItem: {
      value: (key: string, text: string) => {
        if (Object.keys(items).length >= room) throw new DOMException('full', 'QuotaExceededError');
        items[key] = text;
      },
    },
    removeItem: { value: (key: string) => delete items[key] },
  });
  return items;
}
const entry = (counter: number, id = `e${counter}`) => ({ id, counter, kind: 'note' }) as Envelope;

beforeEach(() => vi.stubGlobal('localStorage', storage(3)));
afterEach(() => {
  dropFromOutbox('j', ['e1', 'e2', 'e3']);
  vi.unstubAllGlobals();
});

it('gives back what waits in the order in which it was made, each job its own', () => {
  keepInOutbox('j', entry(2));
  keepInOutbox('j', entry(1));
  keepInOutbox('other', entry(1, 'o1'));
  expect(readOutbox('j').map((one) => one.id)).toEqual(['e1', 'e2']);
  expect(jobsWaiting()).toEqual(['j', 'other']);
});

it('lets go of what was confirmed and of nothing else', () => {
  keepInOutbox('j', entry(1));
  keepInOutbox('j', entry(2));
  dropFromOutbox('j', ['e1', 'unknown']);
  expect(readOutbox('j').map((one) => one.id)).toEqual(['e2']);
});

it('says that a full device kept nothing', () => {
  for (const counter of [1, 2, 3]) expect(keepInOutbox('j', entry(counter))).toBe(true);
  expect(keepInOutbox('j', entry(4))).toBe(false);
  expect(readOutbox('j').length).toBe(3);
});
