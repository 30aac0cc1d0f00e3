import type { Envelope } from '@gudgeon/core/record';
import type { ChainEnd } from './job-state.js';

const prefix = 'gudgeon.outbox.';
/** One item of storage for each entry, so that keeping one costs the same however many wait. */
const keyOf = (job: string, id: string): string => `${prefix}${job}/${id}`;

/** Entries never change, so each is read from its text once. */
const read = new Map<string, Envelope>();

function entryAt(key: string): Envelope[] {
  const known = read.get(key);
  if (known) return [known];
  const text = localStorage.getItem(key);
  if (text === null) return [];
  const entry = JSON.parse(text) as Envelope;
  read.set(key, entry);
  return [entry];
}

/** Entries of a job that no other machine has confirmed yet, oldest first. */
export function readOutbox(job: string): readonly Envelope[] {
  try {
    return Object.keys(localStorage)
      .filter((key) => key.startsWith(`${prefix}${job}/`))
      .flatMap(entryAt)
      .sort((a, b) => a.counter - b.counter);
  } catch {
    return [];
  }
}

/** Keeps one more entry; false when this device has no room for it. */
export function keepInOutbox(job: string, entry: Envelope): boolean {
  try {
    localStorage.setItem(keyOf(job, entry.id), JSON.stringify(entry));
    return true;
  } catch {
    return false;
  }
}

/** Lets go of entries that another machine has confirmed. */
export function dropFromOutbox(job: string, ids: Iterable<string>): void {
  for (const id of ids) {
    read.delete(keyOf(job, id));
    try {
      localStorage.removeItem(keyOf(job, id));
    } catch {
      // A confirmed entry that stays is sent again and counts once.
    }
  }
}

/** Jobs that have entries waiting on this device. */
export function jobsWaiting(): readonly string[] {
  try {
    const keys = Object.keys(localStorage).filter((key) => key.startsWith(prefix));
    return [...new Set(keys.map((key) => key.slice(prefix.length).split('/')[0] ?? ''))];
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
