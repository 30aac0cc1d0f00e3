import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { hashOfBytes } from '@gudgeon/core/record';
import Database from 'better-sqlite3';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { chainOf, receiveClock } from '../contract/made-entries.suite.js';
import { storeContract } from '../contract/store.suite.js';
import { StoreFailure } from '../index.js';
import { openSqliteStore } from './index.js';
import { SCHEMA_VERSION } from './schema.js';

const picture = new TextEncoder().encode('an invented picture');
const temporaryFolder = () => mkdtempSync(join(tmpdir(), 'gudgeon-store-'));

storeContract('SQLite', async () => {
  const folder = temporaryFolder();
  return {
    open: async (clock) => openSqliteStore(join(folder, 'log.sqlite'), clock),
    clear: async () => rmSync(folder, { recursive: true }),
  };
});

describe('SQLite store file', () => {
  let folder: string;
  let file: string;
  beforeEach(() => {
    folder = temporaryFolder();
    file = join(folder, 'log.sqlite');
  });
  afterEach(() => rmSync(folder, { recursive: true }));

  const open = () => openSqliteStore(file, receiveClock(), { patience: 50 });
  const openingFailure = () => {
    try {
      open();
    } catch (error) {
      if (error instanceof StoreFailure) return error;
      throw error;
    }
    throw new Error('the file was opened');
  };
  const filled = async () => {
    const store = open();
    await store.append(chainOf('v8', 'bench', 40));
    await store.close();
  };
  const withFile = <T>(work: (db: Database.Database) => T): T => {
    const db = new Database(file);
    try {
      return work(db);
    } finally {
      db.close();
    }
  };

  it('holds each commit on the disk before it is acknowledged', async () => {
    const store = open();
    await store.append(chainOf('v8', 'bench', 1));
    expect(withFile((db) => db.pragma('journal_mode', { simple: true }))).toBe('wal');
    // The second connection reads what the first has committed, though the first is still open.
    expect(withFile((db) => db.prepare('select count(*) from entry').pluck().get())).toBe(1);
    await store.close();
  });

  it('lets nobody change, remove or replace an entry, not even by hand', async () => {
    await filled();
    const attempts = [
      "update entry set body = '{}'",
      'delete from entry where sequence = 1',
      `insert or replace into entry select 1, 'x', job, device, 99, hash, received_at, body from entry where sequence = 1`,
    ];
    for (const sql of attempts) withFile((db) => expect(() => db.exec(sql)).toThrow('append only'));
    const store = open();
    expect(await store.entries('v8')).toHaveLength(40);
    await store.close();
  });

  it('lets nobody change, remove or replace a photo, not even by hand', async () => {
    await filled();
    const store = open();
    await store.keepPhoto('v8', hashOfBytes(picture), 'image/png', picture);
    const attempts = [
      "update photo set bytes = x'00'",
      'delete from photo',
      "insert or replace into photo select place, job, 'x', type, received_at, x'00' from photo",
      "insert or replace into photo select 99, job, hash, type, received_at, x'00' from photo",
    ];
    for (const sql of attempts) withFile((db) => expect(() => db.exec(sql)).toThrow('append only'));
    expect((await store.photo('v8', hashOfBytes(picture)))?.bytes).toEqual(picture);
    await store.close();
  });

  // The shape of a file before photos: its table and triggers stay as they were, the table of photos is added.
  it('opens a file from before there were photos, with all its entries, and keeps photos in it', async () => {
    await filled();
    withFile((db) => {
      db.exec('drop table photo');
      db.pragma('user_version = 1');
    });
    const store = open();
    expect(await store.entries('v8')).toHaveLength(40);
    expect(await store.photos('v8')).toEqual([]);
    expect((await store.keepPhoto('v8', hashOfBytes(picture), 'image/png', picture)).ok).toBe(true);
    await store.close();
  });

  it('copies itself while it works, and the copy opens with the same entries and photos', async () => {
    const store = open();
    await store.append(chainOf('v8', 'bench', 5));
    await store.keepPhoto('v8', hashOfBytes(picture), 'image/png', picture);
    const copy = join(folder, 'copy.sqlite');
    await store.backup(copy);
    await expect(store.backup(copy)).rejects.toThrow('exists already');
    const opened = openSqliteStore(copy, receiveClock());
    expect(await opened.entries('v8')).toEqual(await store.entries('v8'));
    expect((await opened.photo('v8', hashOfBytes(picture)))?.bytes).toEqual(picture);
    await opened.close();
    await store.close();
  });

  it('says in one line that a file is damaged, and leaves it as it was', async () => {
    await filled();
    const bytes = readFileSync(file);
    bytes.fill(0x5a, 4096, Math.min(bytes.length, 4096 * 3));
    writeFileSync(file, bytes);
    const failure = openingFailure();
    expect(failure.code).toBe('damaged');
    expect(failure.message).toMatch(/^[^\n]*log\.sqlite is damaged[^\n]*$/);
    expect(readFileSync(file).equals(bytes)).toBe(true);
  });

  it('says in one line that a file is no database at all', () => {
    writeFileSync(file, 'a shopping list\n'.repeat(100));
    expect(openingFailure()).toMatchObject({ code: 'damaged' });
    expect(openingFailure().message).not.toContain('\n');
  });

  it('says in one line that another program holds the file', async () => {
    await filled();
    const other = new Database(file);
    other.pragma('locking_mode = EXCLUSIVE');
    other.exec('begin exclusive');
    expect(openingFailure()).toMatchObject({ code: 'locked' });
    other.exec('commit');
    other.close();
    await open().close();
  });

  it('says in one line that a newer program wrote the file', async () => {
    await filled();
    withFile((db) => db.pragma(`user_version = ${SCHEMA_VERSION + 1}`));
    expect(openingFailure()).toMatchObject({ code: 'newer-schema' });
    expect(openingFailure().message).toContain(`up to ${SCHEMA_VERSION}`);
  });

  it('leaves a database of another program alone', () => {
    withFile((db) => db.exec('create table recipe (name text)'));
    const before = readFileSync(file);
    expect(openingFailure()).toMatchObject({ code: 'not-a-log' });
    expect(readFileSync(file).equals(before)).toBe(true);
  });

  it('says in one line that the folder is not there', () => {
    file = join(folder, 'nowhere', 'log.sqlite');
    expect(openingFailure()).toMatchObject({ code: 'cannot-open' });
  });

  it('gives entries of two programs on one file one order', async () => {
    const one = open();
    const two = open();
    const chain = chainOf('v8', 'bench', 10);
    for (const [index, entry] of chain.entries()) {
      expect(await (index % 2 === 0 ? one : two).append([entry])).toMatchObject({
        ok: true,
        value: [{ sequence: index + 1 }],
      });
    }
    expect(await one.entries('v8')).toEqual(await two.entries('v8'));
    await one.close();
    await two.close();
  });
});
