/** A store in memory, for tests and for trying things out. A shelf outlives the store, so that it can be opened again. */
import type { Envelope, PhotoType, StoredEnvelope } from '@gudgeon/core/record';
import { admit, type Ledger } from '../admission.js';
import { fromText, toText } from '../envelope-text.js';
import { type HeldPhoto, type PhotoResult, photoFault } from '../photo.js';
import type { AppendResult, JobSummary, Receipt, ReceiveClock, Store } from '../store.js';
import { StoreFailure } from '../store-failure.js';

interface Row {
  readonly id: string;
  readonly job: string;
  readonly device: string;
  readonly counter: number;
  readonly hash: string;
  readonly sequence: number;
  readonly receivedAt: string;
  readonly text: string;
}
export interface Shelf {
  readonly rows: Row[];
  readonly byId: Map<string, Row>;
  readonly chains: Map<string, Row[]>;
  /** Job -> hash -> picture. */
  readonly photos: Map<string, Map<string, HeldPhoto>>;
}

/** What a memory store keeps; hand the same one to a second store and it finds what the first has written. */
export const emptyShelf = (): Shelf => ({ rows: [], byId: new Map(), chains: new Map(), photos: new Map() });

const chainKey = (job: string, device: string) => JSON.stringify([job, device]);

/** A store that keeps its log in `shelf` and forgets it with the program: for tests, and for looking at a log. */
export function openMemoryStore(shelf: Shelf, clock: ReceiveClock): Store {
  let open = true;
  const whenOpen = <T>(work: () => T): Promise<T> => {
    if (!open) return Promise.reject(new StoreFailure('failed', 'The log is closed.'));
    return Promise.resolve(work());
  };
  return {
    append: (batch) => whenOpen(() => appendBatch(shelf, clock, batch)),
    entries: (job, after = 0) => whenOpen(() => entriesOf(shelf, job, after)),
    jobs: () => whenOpen(() => summaries(shelf)),
    keepPhoto: (job, hash, type, bytes) => whenOpen(() => putPhoto(shelf, job, hash, type, bytes)),
    photo: (job, hash) => whenOpen(() => heldPhoto(shelf, job, hash)),
    photos: (job) => whenOpen(() => [...(shelf.photos.get(job)?.keys() ?? [])]),
    close: async () => {
      open = false;
    },
  };
}

function appendBatch(shelf: Shelf, clock: ReceiveClock, batch: readonly Envelope[]): AppendResult {
  const before = shelf.rows.length;
  const receivedAt = clock();
  const receipts: Receipt[] = [];
  for (const [index, entry] of batch.entries()) {
    const admission = admit(entry, index, ledgerOf(shelf));
    if (admission.kind === 'refused') {
      takeBack(shelf, before);
      return { ok: false, fault: admission.fault };
    }
    const duplicate = admission.kind === 'duplicate';
    const held = duplicate ? admission.held : put(shelf, entry, receivedAt);
    receipts.push({ id: entry.id, sequence: held.sequence, receivedAt: held.receivedAt, duplicate });
  }
  return { ok: true, value: receipts };
}

function putPhoto(shelf: Shelf, job: string, hash: string, type: PhotoType, bytes: Uint8Array): PhotoResult {
  const fault = photoFault(hash, type, bytes);
  if (fault) return { ok: false, fault };
  if (!shelf.rows.some((row) => row.job === job)) return { ok: false, fault: { code: 'unknown-job', job } };
  const held = shelf.photos.get(job) ?? new Map<string, HeldPhoto>();
  const duplicate = held.has(hash);
  if (!duplicate) shelf.photos.set(job, held.set(hash, { type, bytes: bytes.slice() }));
  return { ok: true, value: { duplicate } };
}

function heldPhoto(shelf: Shelf, job: string, hash: string): HeldPhoto | undefined {
  const held = shelf.photos.get(job)?.get(hash);
  return held && { ...held, bytes: held.bytes.slice() };
}

function ledgerOf(shelf: Shelf): Ledger {
  const chain = (job: string, device: string) => shelf.chains.get(chainKey(job, device)) ?? [];
  return {
    entryWithId: (id) => shelf.byId.get(id),
    tip: (job, device) => chain(job, device).at(-1),
    idAtCounter: (job, device, counter) => chain(job, device).find((row) => row.counter === counter)?.id,
  };
}

function put(shelf: Shelf, entry: Envelope, receivedAt: string): Row {
  const { id, job, device, counter, hash } = entry;
  const row: Row = { id, job, device, counter, hash, sequence: shelf.rows.length + 1, receivedAt, text: toText(entry) };
  const key = chainKey(job, device);
  const chain = shelf.chains.get(key) ?? [];
  chain.push(row);
  shelf.chains.set(key, chain);
  shelf.byId.set(id, row);
  shelf.rows.push(row);
  return row;
}

function takeBack(shelf: Shelf, length: number): void {
  while (shelf.rows.length > length) {
    const row = shelf.rows.pop()!;
    shelf.byId.delete(row.id);
    shelf.chains.get(chainKey(row.job, row.device))?.pop();
  }
}

function entriesOf(shelf: Shelf, job: string, after: number): StoredEnvelope[] {
  const wanted = shelf.rows.filter((row) => row.job === job && row.sequence > after);
  return wanted.map((row) => fromText(row.text, row.sequence, row.receivedAt));
}

function summaries(shelf: Shelf): JobSummary[] {
  const found = new Map<string, JobSummary>();
  for (const { job, sequence, receivedAt } of shelf.rows) {
    const count = (found.get(job)?.count ?? 0) + 1;
    found.set(job, { job, count, lastSequence: sequence, lastReceivedAt: receivedAt });
  }
  return [...found.values()];
}
