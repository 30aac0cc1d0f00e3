/** The pictures of a log in SQLite: in the same file as the entries, so that one file and one backup hold all of a job. */
import type { PhotoType } from '@gudgeon/core/record';
import type { Database } from 'better-sqlite3';
import { type HeldPhoto, type PhotoResult, photoFault } from '../photo.js';
import type { ReceiveClock } from '../store.js';

export interface SqlitePhotos {
  readonly keep: (job: string, hash: string, type: PhotoType, bytes: Uint8Array) => PhotoResult;
  readonly one: (job: string, hash: string) => HeldPhoto | undefined;
  readonly hashes: (job: string) => readonly string[];
}

export function sqlitePhotos(db: Database, clock: ReceiveClock): SqlitePhotos {
  const hasEntries = db.prepare<[string]>('select 1 from entry where job = ? limit 1').pluck();
  const held = db.prepare<[string, string]>('select 1 from photo where job = ? and hash = ?').pluck();
  const insert = db.prepare<[string, string, string, string, Uint8Array]>(
    'insert into photo (job, hash, type, received_at, bytes) values (?, ?, ?, ?, ?)',
  );
  const one = db.prepare<[string, string], { readonly type: PhotoType; readonly bytes: Buffer }>(
    'select type, bytes from photo where job = ? and hash = ?',
  );
  const hashes = db.prepare<[string], string>('select hash from photo where job = ? order by place').pluck();
  // Looked up and added in one transaction: two programs that send the same picture at once keep it once.
  const add = db.transaction((job: string, hash: string, type: PhotoType, bytes: Uint8Array): PhotoResult => {
    if (hasEntries.get(job) === undefined) return { ok: false, fault: { code: 'unknown-job', job } };
    const duplicate = held.get(job, hash) !== undefined;
    if (!duplicate) insert.run(job, hash, type, clock(), bytes);
    return { ok: true, value: { duplicate } };
  });
  return {
    keep: (job, hash, type, bytes) => {
      const fault = photoFault(hash, type, bytes);
      return fault ? { ok: false, fault } : add.immediate(job, hash, type, bytes);
    },
    one: (job, hash) => {
      const found = one.get(job, hash);
      return found && { type: found.type, bytes: new Uint8Array(found.bytes) };
    },
    hashes: (job) => hashes.all(job),
  };
}
