/** Old entries are upgraded when they are read, never rewritten; newer ones are kept and not guessed at. */
import type { EntryData, EntryKind, Envelope } from './entry.js';
import { isEntryKind, readEntryData } from './reading/index.js';

/** Data of a kind this program knows, in the newest version. */
export type KnownData = { [K in EntryKind]: { readonly kind: K; readonly data: EntryData[K] } }[EntryKind];
export type NotUnderstood = {
  readonly why: 'unknown-kind' | 'newer-version' | 'unreadable';
  /** The field that could not be read. */
  readonly at?: string;
};
export type Understanding =
  | { readonly understood: true; readonly known: KnownData }
  | ({ readonly understood: false } & NotUnderstood);

/** Steps from version n to n + 1 of a kind's data: `steps[kind][n - 1]`. */
export type UpcastSteps = Readonly<Record<string, readonly ((data: unknown) => unknown)[]>>;
/** Every kind stands at version 1, so there is no step yet. */
export const STEPS: UpcastSteps = {};

/**
 * The data of an entry in the newest version of its kind, after all steps from the version it was written in. A newer
 * version, an unknown kind or data of another shape is not understood here: the entry stays in the log and says so.
 */
export function upcast(entry: Pick<Envelope, 'kind' | 'version' | 'data'>, steps: UpcastSteps = STEPS): Understanding {
  const { kind, version } = entry;
  if (!isEntryKind(kind)) return { understood: false, why: 'unknown-kind' };
  const own = steps[kind] ?? [];
  if (version > own.length + 1) return { understood: false, why: 'newer-version' };
  let data: unknown = entry.data;
  try {
    for (const step of own.slice(version - 1)) data = step(data);
  } catch {
    return { understood: false, why: 'unreadable' };
  }
  const read = readEntryData(kind as string, data);
  if (read.ok) return { understood: true, known: { kind, data: read.value } as KnownData };
  return { understood: false, why: 'unreadable', ...('at' in read.fault && { at: read.fault.at }) };
}
