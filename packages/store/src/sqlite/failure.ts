/** Turns what SQLite throws into one clear line; anything that is not SQLite's is a defect and goes on unchanged. */
import { StoreFailure, type StoreFailureCode } from '../store-failure.js';

const KINDS: readonly (readonly [RegExp, StoreFailureCode, string])[] = [
  [/^SQLITE_(BUSY|LOCKED)/, 'locked', 'is locked by another program: close that program and try again'],
  [
    /^SQLITE_(CORRUPT|NOTADB)/,
    'damaged',
    'is damaged or is no log: put a backup in its place, and keep the damaged file',
  ],
  [/^SQLITE_FULL/, 'full', 'cannot grow because the disk is full: make room and try again'],
  [/^SQLITE_(READONLY|PERM|AUTH)/, 'read-only', 'may not be written: check the rights of the file and its folder'],
  [/^SQLITE_CANTOPEN/, 'cannot-open', 'cannot be opened: check that the folder exists and may be read'],
];

export function asStoreFailure(error: unknown, file: string): unknown {
  const code = error instanceof Error && 'code' in error ? String(error.code) : '';
  if (!code.startsWith('SQLITE_')) return error;
  const [, kind, text] = KINDS.find(([pattern]) => pattern.test(code)) ?? [
    undefined,
    'failed' as const,
    `failed (${code})`,
  ];
  return new StoreFailure(kind, `${file} ${text}.`, { cause: error });
}

/** Runs a piece of work on the file; what SQLite throws comes out as a `StoreFailure`. */
export function guarded<T>(file: string, work: () => T): T {
  try {
    return work();
  } catch (error) {
    throw asStoreFailure(error, file);
  }
}
