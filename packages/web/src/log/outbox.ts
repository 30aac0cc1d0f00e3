import type { Envelope } from '@gudgeon/core/record';
import type { ChainEnd } from './job-state.js';

const prefix = 'gudgeon.outbox.';

/** Entries of a job that no other machine has confirmed yet, oldest first. */
export function readOutbox(job: string): readonly Envelope[] {
  try {
    return JSON.parse(localStorage.getItem(prefix + job) ?? '[]') as Envelope[];
  } catch {
    return [];
  }
}

/** Writes the whole outbox; false when this device has no room for it. An empty one leaves nothing behind. */
export function writeOutbox(job: string, entries: readonly Envelope[]): boolean {
  try {
    if (entries.length === 0) localStorage.removeItem(prefix + job);
    else localStorage.setItem(prefix + job, JSON.stringify(entries));
    return true;
  } catch {
    return false;
  }
}

/** Jobs that have entries waiting on this device. */
export function jobsWaiting(): readonly string[] {
  try {
    return Object.keys(localStorage)
      .filter((key) => key.startsWith(prefix))
      .map((key) => key.slice(prefix.length));
  } catch {
    return [];
  }
}

const endPrefix = 'gudgeon.chain.';

export function readEnd(job: string): ChainEnd | undefined {
  try {
    const text = localStorage.getItem(endPrefix + job);
    return text ? (JSON.parse(text) as ChainEnd) : undefined;
  } catch {
    return undefined;
  }
}

export function writeEnd(job: string, end: ChainEnd): void {
  try {
    localStorage.setItem(endPrefix + job, JSON.stringify(end));
  } catch {
    // The outbox itself was written, and the chain's end can be read from it.
  }
}
