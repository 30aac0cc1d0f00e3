/** What one line of the record says, and who writes it. */
import type { EntryData, EntryKind, PhotoTaken } from '../record/index.js';
import type { Bench } from './bench.js';

/** What a row says; who, when and strike are added from the envelope. */
export interface RowWords {
  readonly what: string;
  readonly value: string;
  readonly limit?: string;
  readonly origin?: string;
  /** The picture that the row shows. */
  readonly photo?: PhotoTaken;
}
export type Writer<K extends EntryKind> = (bench: Bench, data: EntryData[K]) => RowWords;
