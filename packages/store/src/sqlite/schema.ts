/**
 * The shape of the file and the steps that lead to it. `user_version` counts the steps taken; a step is never edited
 * after a release, a new shape gets a new step at the end.
 */
import type { Database } from 'better-sqlite3';
import { StoreFailure } from '../store-failure.js';

/** Marks the file as ours: the letters G u d g. */
const APPLICATION_ID = 0x47756467;

const STEPS: readonly string[] = [
  `
  create table entry (
    sequence    integer primary key,
    id          text not null unique,
    job         text not null,
    device      text not null,
    counter     integer not null check (counter > 0),
    hash        text not null,
    received_at text not null,
    body        text not null,
    unique (job, device, counter)
  ) strict;
  create index entry_of_job on entry (job, sequence);
  create trigger entry_is_never_changed before update on entry
    begin select raise(abort, 'append only'); end;
  create trigger entry_is_never_removed before delete on entry
    begin select raise(abort, 'append only'); end;
  create trigger entry_is_never_replaced before insert on entry
    when exists (
      select 1 from entry
      where id = new.id or sequence = new.sequence
         or (job = new.job and device = new.device and counter = new.counter)
    )
    begin select raise(abort, 'append only'); end;
  `,
  `
  create table photo (
    place       integer primary key,
    job         text not null,
    hash        text not null,
    type        text not null,
    received_at text not null,
    bytes       blob not null,
    unique (job, hash)
  ) strict;
  create trigger photo_is_never_changed before update on photo
    begin select raise(abort, 'append only'); end;
  create trigger photo_is_never_removed before delete on photo
    begin select raise(abort, 'append only'); end;
  create trigger photo_is_never_replaced before insert on photo
    when exists (select 1 from photo where place = new.place or (job = new.job and hash = new.hash))
    begin select raise(abort, 'append only'); end;
  `,
];
export const SCHEMA_VERSION = STEPS.length;

/** Brings an opened file to the newest shape; throws a `StoreFailure` for a file that is not ours or is newer. */
export function migrate(db: Database, file: string): void {
  refuseStrangers(db, file);
  const take = db.transaction(() => {
    // Read again inside the transaction: another process may have taken the step while this one waited.
    for (let version = versionOf(db, file); version < SCHEMA_VERSION; version += 1) {
      db.exec(STEPS[version]!);
      db.pragma(`user_version = ${version + 1}`);
    }
    db.pragma(`application_id = ${APPLICATION_ID}`);
  });
  if (versionOf(db, file) < SCHEMA_VERSION) take.immediate();
}

function versionOf(db: Database, file: string): number {
  const version = db.pragma('user_version', { simple: true }) as number;
  if (version <= SCHEMA_VERSION) return version;
  throw new StoreFailure(
    'newer-schema',
    `${file} was written by a newer Gudgeon (file version ${version}, this program reads up to ${SCHEMA_VERSION}): start the newer program.`,
  );
}

function refuseStrangers(db: Database, file: string): void {
  const id = db.pragma('application_id', { simple: true }) as number;
  const tables = db.prepare('select count(*) from sqlite_schema').pluck().get() as number;
  if (id === APPLICATION_ID || (id === 0 && tables === 0)) return;
  throw new StoreFailure(
    'not-a-log',
    `${file} is a database of another program: name a file that Gudgeon made, or a new one.`,
  );
}
