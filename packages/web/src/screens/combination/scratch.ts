/** The scratch copy of a job: figures that are tried. It lives as long as this window and never enters the log by itself. */
import type { Scratch } from '@gudgeon/core/workbench';
import { useSyncExternalStore } from 'react';

const place = (job: string) => `gudgeon.scratch.${job}`;
const EMPTY: Scratch = new Map();

export interface ScratchStore {
  readonly get: () => Scratch;
  readonly subscribe: (tell: () => void) => () => void;
  /** Several figures at once; a figure for all places ends those tried for one of them. */
  readonly put: (figures: Iterable<readonly [key: string, value: number]>) => void;
  /** Takes one figure back, with those tried for one of its places. */
  readonly drop: (key: string) => void;
  readonly throwAway: () => void;
}

const stores = new Map<string, ScratchStore>();

export function scratchOf(job: string): ScratchStore {
  const known = stores.get(job) ?? makeStore(job);
  stores.set(job, known);
  return known;
}
export const useScratch = (store: ScratchStore): Scratch => useSyncExternalStore(store.subscribe, store.get);

function makeStore(job: string): ScratchStore {
  const listeners = new Set<() => void>();
  let scratch = read(job);
  const become = (next: Scratch) => {
    scratch = next;
    keepSoon(job, () => scratch);
    for (const tell of listeners) tell();
  };
  return {
    get: () => scratch,
    subscribe: (tell) => {
      listeners.add(tell);
      return () => listeners.delete(tell);
    },
    put: (figures) => {
      const next = new Map(scratch);
      for (const [key, value] of figures) {
        for (const old of scratch.keys()) if (old.startsWith(`${key}@`)) next.delete(old);
        next.set(key, value);
      }
      become(next);
    },
    drop: (key) => {
      // What counts at one place may be tried for all of them.
      const held = scratch.has(key) ? key : (key.split('@')[0] ?? key);
      become(new Map([...scratch].filter(([one]) => one !== held && !one.startsWith(`${held}@`))));
    },
    throwAway: () => become(EMPTY),
  };
}

function read(job: string): Scratch {
  try {
    const kept: unknown = JSON.parse(sessionStorage.getItem(place(job)) ?? '[]');
    return Array.isArray(kept) ? new Map(kept.filter(isFigure)) : EMPTY;
  } catch {
    return EMPTY;
  }
}
const isFigure = (one: unknown): one is [string, number] =>
  Array.isArray(one) && typeof one[0] === 'string' && Number.isFinite(one[1]);

/** A slider moves many times in a second: what stands at its rest is written. */
const REST = 150;
const waiting = new Map<string, number>();
/** When each job's scratch copy last changed. */
const changed = new Map<string, number>();
function keepSoon(job: string, now: () => Scratch): void {
  changed.set(job, performance.now());
  const look = () => {
    const left = (changed.get(job) ?? 0) + REST - performance.now();
    if (left > 0) {
      waiting.set(job, window.setTimeout(look, left));
      return;
    }
    waiting.delete(job);
    write(job, now());
  };
  if (!waiting.has(job)) waiting.set(job, window.setTimeout(look, REST));
}
// A page that is left or loaded anew while a slider still moves keeps its last place.
window.addEventListener('pagehide', () => {
  for (const [job, timer] of waiting) {
    window.clearTimeout(timer);
    write(job, scratchOf(job).get());
  }
});
function write(job: string, scratch: Scratch): void {
  try {
    if (scratch.size === 0) sessionStorage.removeItem(place(job));
    else sessionStorage.setItem(place(job), JSON.stringify([...scratch]));
  } catch {
    // A window that keeps nothing still has its scratch copy while it is open.
  }
}
