import { useSyncExternalStore } from 'react';

/** Where a person came from to do a piece of work elsewhere, and goes back to when it is done. */
export interface WayBack {
  readonly job: string;
  /** Place in the program, e.g. `/engine/…/bench/shells-in`. */
  readonly to: string;
  /** The place of work that was left, e.g. `/engine/…/bench`: a hand at the piece of work is at it too. */
  readonly left: string;
  /** The piece of work that it was left for, e.g. `tighten/main-caps`: its end leads back. */
  readonly aim: string;
  readonly words: string;
}

const PLACE = 'gudgeon.way-back';
const listeners = new Set<() => void>();
let now: WayBack | undefined = kept();

/** Kept for this page and its reloads only: another day begins at the front door. */
function kept(): WayBack | undefined {
  try {
    const { job, to, left, aim, words } = JSON.parse(sessionStorage.getItem(PLACE) ?? '{}') as Partial<WayBack>;
    return job && to && left && aim && words ? { job, to, left, aim, words } : undefined;
  } catch {
    return undefined;
  }
}

export function setWayBack(way: WayBack | undefined): void {
  if (way === now) return;
  now = way;
  try {
    if (way === undefined) sessionStorage.removeItem(PLACE);
    else sessionStorage.setItem(PLACE, JSON.stringify(way));
  } catch {
    // Then it holds until the page is closed.
  }
  for (const tell of listeners) tell();
}

function subscribe(tell: () => void): () => void {
  listeners.add(tell);
  return () => listeners.delete(tell);
}

/** The way back of this job, where the person came from somewhere. */
export function useWayBack(job: string): WayBack | undefined {
  const way = useSyncExternalStore(subscribe, () => now);
  return way?.job === job ? way : undefined;
}

export interface WayOn {
  readonly to: string;
  readonly toWords: string;
}
/** Where a finished piece of work leads: back to where the person came from to do it, else the usual way. */
export function useWayOn(job: string, place: string, usual: WayOn): WayOn {
  const back = useWayBack(job);
  return back?.aim.split('?')[0] === place ? { to: back.to, toWords: back.words } : usual;
}
