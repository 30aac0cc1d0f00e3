import type { StoredEnvelope } from '@gudgeon/core/record';
import { sealEntry } from '@gudgeon/core/record';
import { v7 } from 'uuid';
import { appendEntries, livePath, readJob } from '../api/index.js';
import { afterFrame } from '../keys/index.js';
import { deviceId, personName } from './device.js';
import { type JobStore, jobStore, type Wires } from './job-store.js';
import { localTime } from './local-time.js';
import { dropFromOutbox, jobsWaiting, keepInOutbox, readEnd, readOutbox, writeEnd } from './outbox.js';

function openLive(job: string, after: number, on: (entry: StoredEnvelope) => void): () => void {
  const stream = new EventSource(livePath(job, after));
  stream.onmessage = (message: MessageEvent<string>) => on(JSON.parse(message.data) as StoredEnvelope);
  return () => stream.close();
}

const wires: Wires = {
  read: readJob,
  append: appendEntries,
  live: openLive,
  readOutbox,
  keepInOutbox,
  dropFromOutbox,
  readEnd,
  writeEnd,
  later: (milliseconds, run) => void window.setTimeout(run, milliseconds),
  afterFrame,
  device: deviceId,
  seal: ({ previous, ...draft }) =>
    sealEntry({ ...draft, id: v7(), at: localTime(new Date()), person: personName(), version: 1 }, previous),
};

const stores = new Map<string, JobStore>();

/** The one store of a job in this page; made and loaded on first use. */
export function openJob(job: string): JobStore {
  const before = stores.get(job);
  if (before) return before;
  const made = keep(job);
  made.reload();
  return made;
}

/** A job that no server knows yet; its first entry makes it. */
export function beginJob(): { readonly job: string; readonly store: JobStore } {
  const job = v7();
  return { job, store: keep(job) };
}

function keep(job: string): JobStore {
  const made = jobStore(job, wires);
  stores.set(job, made);
  return made;
}

/** Starts the copying of whatever earlier visits left on this device. */
export function sendWhatWaits(): void {
  for (const job of jobsWaiting()) openJob(job);
}
