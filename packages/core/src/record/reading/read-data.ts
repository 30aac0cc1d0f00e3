/** Reading entries that nobody has vouched for: from a network, a file, an old device. */
import { done, type Outcome, refused } from '../../quantity/outcome.js';
import type { EntryData, EntryKind, Envelope } from '../entry.js';
import type { ShapeFault } from './guards.js';
import { ENVELOPE, SHAPES } from './shapes.js';

export type { ShapeFault };
export type DataFault =
  | ShapeFault
  | { readonly code: 'unknown-kind'; readonly kind: string; readonly valid: readonly EntryKind[] };

/** Every kind of entry that this program knows. */
export const ENTRY_KINDS = Object.keys(SHAPES) as readonly EntryKind[];
/** Whether this program knows entries of that kind. */
export const isEntryKind = (kind: string): kind is EntryKind => Object.hasOwn(SHAPES, kind);

/** The data of an entry of version 1, or the first field that is not as it should be. */
export function readEntryData<K extends EntryKind>(kind: K, data: unknown): Outcome<EntryData[K], DataFault>;
export function readEntryData(kind: string, data: unknown): Outcome<EntryData[EntryKind], DataFault>;
export function readEntryData(kind: string, data: unknown): Outcome<EntryData[EntryKind], DataFault> {
  if (!isEntryKind(kind)) return refused({ code: 'unknown-kind', kind, valid: ENTRY_KINDS });
  const fault = SHAPES[kind].check(data, '');
  return fault === undefined ? done(data as EntryData[EntryKind]) : refused(fault);
}

/** The envelope of an entry; what its data holds is not looked at, so that a newer kind can be kept. */
export function readEnvelope(value: unknown): Outcome<Envelope, ShapeFault> {
  const fault = ENVELOPE.check(value, '');
  return fault === undefined ? done(value as Envelope) : refused(fault);
}
