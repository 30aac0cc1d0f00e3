/**
 * What a store promises: entries are added at the end and never changed, a batch goes in whole or not at all, sending
 * an entry twice is harmless, and the answer is the same after closing and opening again. `contract/` holds the suite
 * that every store passes. A store knows envelopes, and pictures by their hash; what an entry means is the record's business.
 */
import type { Envelope, PhotoType, StoredEnvelope } from '@gudgeon/core/record';
import type { AppendFault } from './append-fault.js';
import type { HeldPhoto, PhotoResult } from './photo.js';

/** Reads the time at which the store accepts an entry, RFC 3339. The caller owns the clock. */
export type ReceiveClock = () => string;

/** What the store says about one entry of an accepted batch, in the order of the batch. */
export interface Receipt {
  readonly id: string;
  readonly sequence: number;
  readonly receivedAt: string;
  /** True when the store held this entry before; `sequence` and `receivedAt` are then those of the first time. */
  readonly duplicate: boolean;
}

export interface JobSummary {
  readonly job: string;
  readonly count: number;
  readonly lastSequence: number;
  readonly lastReceivedAt: string;
}

export type AppendResult =
  | { readonly ok: true; readonly value: readonly Receipt[] }
  | { readonly ok: false; readonly fault: AppendFault };

/** Every method may throw a `StoreFailure` when the medium itself fails (full, locked, damaged). */
export interface Store {
  /** Adds a batch at the end: all of it or nothing. */
  append(batch: readonly Envelope[]): Promise<AppendResult>;
  /** The entries of one job in order of sequence; with `after`, only those with a greater sequence. */
  entries(job: string, after?: number): Promise<readonly StoredEnvelope[]>;
  /** One line for each job that has entries, in the order in which the jobs began. */
  jobs(): Promise<readonly JobSummary[]>;
  /** Keeps a picture of a job that has entries, under the SHA-256 of its bytes; it is never changed or removed. */
  keepPhoto(job: string, hash: string, type: PhotoType, bytes: Uint8Array): Promise<PhotoResult>;
  /** A picture that is kept; undefined where it is not. */
  photo(job: string, hash: string): Promise<HeldPhoto | undefined>;
  /** Hashes of the pictures of a job, in the order in which they came. */
  photos(job: string): Promise<readonly string[]>;
  close(): Promise<void>;
}
