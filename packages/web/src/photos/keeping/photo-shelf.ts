/** Pictures in this browser's own database, which unlike its small storage takes bytes. Works on plain http too. */
import type { Photo, PhotoKey } from './photo.js';

export interface PhotoShelf {
  /** True only when the picture is on the disk of this device. */
  readonly keep: (job: string, photo: Photo) => Promise<boolean>;
  readonly one: (key: PhotoKey) => Promise<Photo | undefined>;
  /** Pictures that no other machine has confirmed yet. */
  readonly waiting: () => Promise<readonly PhotoKey[]>;
  /** Another machine holds the picture; here it stays as long as there is room. */
  readonly confirmed: (key: PhotoKey) => Promise<void>;
}

const PHOTOS = 'photo';
const WAITING = 'waiting';
interface Row extends Photo {
  readonly job: string;
  /** Only on rows that wait: an index leaves out the rows that lack its field. */
  readonly waits?: 1;
}

export function photoShelf(name = 'gudgeon.photos'): PhotoShelf {
  let opened: Promise<IDBDatabase> | undefined;
  const open = (): Promise<IDBDatabase> => {
    opened ??= openDatabase(name).catch((error: unknown) => {
      opened = undefined;
      throw error;
    });
    return opened;
  };
  const rows = async (mode: IDBTransactionMode) => {
    const deed = (await open()).transaction(PHOTOS, mode, { durability: 'strict' });
    return { store: deed.objectStore(PHOTOS), finished: finished(deed) };
  };
  const put = async (row: Row) => {
    const { store, finished } = await rows('readwrite');
    store.put(row);
    await finished;
  };
  const one = async ({ job, photo }: PhotoKey) => {
    const { store } = await rows('readonly');
    return answer<Row | undefined>(store.get([job, photo]));
  };
  const letGoOfCopies = async () => {
    const { store, finished } = await rows('readwrite');
    const waiting = new Set((await answer(store.index(WAITING).getAllKeys())).map(String));
    for (const key of await answer(store.getAllKeys())) if (!waiting.has(String(key))) store.delete(key);
    await finished;
  };
  return {
    keep: async (job, photo) => {
      const row: Row = { ...photo, job, waits: 1 };
      try {
        await put(row).catch(async () => {
          await letGoOfCopies();
          await put(row);
        });
        return true;
      } catch {
        return false;
      }
    },
    one,
    waiting: async () => {
      const { store } = await rows('readonly');
      const keys = (await answer(store.index(WAITING).getAllKeys())) as [string, string][];
      return keys.map(([job, photo]) => ({ job, photo }));
    },
    confirmed: async (key) => {
      const row = await one(key);
      if (row?.waits === undefined) return;
      const { waits, ...copy } = row;
      await put(copy);
    },
  };
}

function openDatabase(name: string): Promise<IDBDatabase> {
  const asked = indexedDB.open(name, 1);
  asked.onupgradeneeded = () => {
    const store = asked.result.createObjectStore(PHOTOS, { keyPath: ['job', 'photo'] });
    store.createIndex(WAITING, 'waits');
  };
  return answer(asked);
}

function answer<T>(asked: IDBRequest<T>): Promise<T> {
  return new Promise((done, fail) => {
    asked.onsuccess = () => done(asked.result);
    asked.onerror = () => fail(asked.error ?? new Error('the database of this browser gave no reason'));
  });
}

/** What was written counts from here on, not from the answers before. */
function finished(deed: IDBTransaction): Promise<void> {
  return new Promise((done, fail) => {
    deed.oncomplete = () => done();
    deed.onabort = () => fail(deed.error ?? new Error('the database of this browser gave no reason'));
  });
}
