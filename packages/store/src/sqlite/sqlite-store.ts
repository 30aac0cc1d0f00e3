/** A store in one SQLite file: write-ahead log, every commit on the disk before it is acknowledged. */
import { existsSync } from 'node:fs';
import { dirname } from 'node:path';
import type { Envelope, StoredEnvelope } from '@gudgeon/core/record';
import Database from 'better-sqlite3';
import { admit, type ChainTip, type HeldEntry, type Ledger } from '../admission.js';
import type { AppendFault } from '../append-fault.js';
import { fromText, toText } from '../envelope-text.js';
import type { AppendResult, JobSummary, Receipt, ReceiveClock, Store } from '../store.js';
import { StoreFailure } from '../store-failure.js';
import { asStoreFailure, guarded } from './failure.js';
import { sqlitePhotos } from './photos.js';
import { migrate } from './schema.js';

export interface SqliteStore extends Store {
  /** Copies the log into a new file while the store goes on working, and checks the copy. */
  backup(file: string): Promise<void>;
}
export interface SqliteOptions {
  /** How long to wait for a locked file [ms]; 5000 unless told. */
  readonly patience?: number;
}

/** Opens or makes the file. Throws a `StoreFailure` with one clear line when it is damaged, locked, newer or foreign. */
export function openSqliteStore(file: string, clock: ReceiveClock, options: SqliteOptions = {}): SqliteStore {
  const db = guarded(file, () => openDatabase(file, options.patience ?? 5000));
  const statements = prepareStatements(db);
  const appendAll = db.transaction((batch: readonly Envelope[]) => appendBatch(statements, clock, batch));
  const photos = sqlitePhotos(db, clock);
  const attempt = async <T>(work: () => T): Promise<T> => {
    if (!db.open) throw new StoreFailure('failed', 'The log is closed.');
    return guarded(file, work);
  };
  return {
    append: (batch) => attempt(() => settled(() => appendAll.immediate(batch))),
    entries: (job, after = 0) => attempt(() => entriesOf(statements, job, after)),
    jobs: () => attempt(() => statements.summaries.all()),
    keepPhoto: (job, hash, type, bytes) => attempt(() => photos.keep(job, hash, type, bytes)),
    photo: (job, hash) => attempt(() => photos.one(job, hash)),
    photos: (job) => attempt(() => photos.hashes(job)),
    backup: (target) => backUp(db, target),
    close: async () => {
      db.close();
    },
  };
}

function openDatabase(file: string, patience: number): Database.Database {
  if (!existsSync(dirname(file)))
    throw new StoreFailure('cannot-open', `${dirname(file)} is not there: make the folder first.`);
  const db = new Database(file, { timeout: patience });
  try {
    // First the checks that change nothing, so that a file of another program is left exactly as it was.
    db.pragma('trusted_schema = OFF');
    db.pragma('cell_size_check = ON');
    db.pragma('foreign_keys = ON');
    refuseDamage(db, file);
    migrate(db, file);
    db.pragma('journal_mode = WAL');
    db.pragma('synchronous = FULL');
    return db;
  } catch (error) {
    db.close();
    throw error;
  }
}

function refuseDamage(db: Database.Database, file: string): void {
  const verdict = String(db.pragma('quick_check(1)', { simple: true }));
  if (verdict === 'ok') return;
  const firstFinding = verdict.split('\n').find((line) => !line.startsWith('***')) ?? verdict;
  throw new StoreFailure(
    'damaged',
    `${file} is damaged (${firstFinding.trim()}): put a backup in its place, and keep the damaged file.`,
  );
}

interface EntryRow {
  readonly sequence: number;
  readonly receivedAt: string;
  readonly body: string;
}
type Statements = ReturnType<typeof prepareStatements>;

function prepareStatements(db: Database.Database) {
  return {
    byId: db.prepare<[string], HeldEntry>('select sequence, received_at as receivedAt, hash from entry where id = ?'),
    tip: db.prepare<[string, string], ChainTip>(
      'select counter, hash from entry where job = ? and device = ? order by counter desc limit 1',
    ),
    atCounter: db.prepare<[string, string, number], { readonly id: string }>(
      'select id from entry where job = ? and device = ? and counter = ?',
    ),
    last: db.prepare<[], { readonly sequence: number }>('select coalesce(max(sequence), 0) as sequence from entry'),
    insert: db.prepare(
      `insert into entry (sequence, id, job, device, counter, hash, received_at, body)
       values (:sequence, :id, :job, :device, :counter, :hash, :receivedAt, :body)`,
    ),
    ofJob: db.prepare<[string, number], EntryRow>(
      'select sequence, received_at as receivedAt, body from entry where job = ? and sequence > ? order by sequence',
    ),
    summaries: db.prepare<[], JobSummary>(
      `select entry.job, count, sequence as lastSequence, received_at as lastReceivedAt
       from (select count(*) as count, min(sequence) as first, max(sequence) as last from entry group by job)
       join entry on sequence = last order by first`,
    ),
  };
}

/** Thrown to make the transaction roll back, and caught again just outside it. */
class Refusal extends Error {
  readonly fault: AppendFault;
  constructor(fault: AppendFault) {
    super(fault.code);
    this.fault = fault;
  }
}

function settled(work: () => readonly Receipt[]): AppendResult {
  try {
    return { ok: true, value: work() };
  } catch (error) {
    if (error instanceof Refusal) return { ok: false, fault: error.fault };
    throw error;
  }
}

function appendBatch(statements: Statements, clock: ReceiveClock, batch: readonly Envelope[]): readonly Receipt[] {
  const ledger = ledgerOf(statements);
  const receivedAt = clock();
  let sequence = statements.last.get()!.sequence;
  return batch.map((entry, index) => {
    const admission = admit(entry, index, ledger);
    if (admission.kind === 'refused') throw new Refusal(admission.fault);
    if (admission.kind === 'duplicate') return receipt(entry.id, admission.held, true);
    sequence += 1;
    insert(statements, entry, sequence, receivedAt);
    return receipt(entry.id, { sequence, receivedAt }, false);
  });
}

const receipt = (id: string, held: Pick<HeldEntry, 'sequence' | 'receivedAt'>, duplicate: boolean): Receipt => ({
  id,
  sequence: held.sequence,
  receivedAt: held.receivedAt,
  duplicate,
});

function ledgerOf(statements: Statements): Ledger {
  return {
    entryWithId: (id) => statements.byId.get(id),
    tip: (job, device) => statements.tip.get(job, device),
    idAtCounter: (job, device, counter) => statements.atCounter.get(job, device, counter)?.id,
  };
}

function insert(statements: Statements, entry: Envelope, sequence: number, receivedAt: string): void {
  const { id, job, device, counter, hash } = entry;
  statements.insert.run({ sequence, id, job, device, counter, hash, receivedAt, body: toText(entry) });
}

function entriesOf(statements: Statements, job: string, after: number): StoredEnvelope[] {
  return statements.ofJob.all(job, after).map((row) => fromText(row.body, row.sequence, row.receivedAt));
}

async function backUp(db: Database.Database, target: string): Promise<void> {
  if (existsSync(target))
    throw new StoreFailure('target-exists', `${target} exists already: name a new file for the backup.`);
  try {
    await db.backup(target);
    checkCopy(target);
  } catch (error) {
    throw asStoreFailure(error, target);
  }
}

function checkCopy(target: string): void {
  const copy = new Database(target, { readonly: true });
  try {
    const verdict = copy.pragma('integrity_check(1)', { simple: true });
    if (verdict !== 'ok')
      throw new StoreFailure('damaged', `${target}: the copy is damaged (${verdict}); make another on a sound disk.`);
  } finally {
    copy.close();
  }
}
