/** What goes over the wire between the browser and the server: types only, no code. Paths stand beside each type. */
import type { Engine, SheetCaution } from '@gudgeon/core/engine';
import type { SheetFault } from '@gudgeon/core/engine/load';
import type { Envelope, StoredEnvelope } from '@gudgeon/core/record';

/** Every answer that is not a success has this shape; `error` is one line fit for a person. */
export interface ErrorReply {
  readonly error: string;
  /** Stable word for programs, e.g. `counter-gap`, `id-reused`, `too-large`, `not-json`, `no-such-job`. */
  readonly code: string;
}

/** GET /api/sheets */
export interface SheetsReply {
  readonly sheets: readonly SheetSummary[];
}
export interface SheetSummary {
  readonly id: string;
  readonly name: string;
  readonly invented: boolean;
  readonly description: string;
}
/** GET /api/sheets/:id */
export interface SheetReply {
  readonly id: string;
  readonly text: string;
}
/** POST /api/sheets/check. `engine` is present exactly when `faults` is empty. */
export interface CheckSheetRequest {
  readonly text: string;
}
export interface CheckSheetReply {
  readonly engine?: Engine;
  readonly faults: readonly SheetFault[];
  readonly cautions: readonly SheetCaution[];
}

/** GET /api/jobs, latest work first. */
export interface JobsReply {
  readonly jobs: readonly JobLine[];
}
export interface JobLine {
  readonly job: string;
  /** From the latest sheet of the job that counts; the job's id when there is none. */
  readonly name: string;
  readonly invented: boolean;
  readonly entries: number;
  /** When the server received the latest entry. */
  readonly lastAt: string;
  readonly sequence: number;
}

/** GET /api/jobs/:job */
export interface JobReply {
  readonly job: string;
  /** Read from the latest sheet of the job that is not struck out; absent when there is none or it has faults. */
  readonly engine?: Engine;
  readonly sheetText?: string;
  readonly sheetFaults: readonly SheetFault[];
  readonly entries: readonly StoredEnvelope[];
}

/** GET /api/jobs/:job/entries?after=N. An unknown job has no entries. */
export interface EntriesReply {
  readonly entries: readonly StoredEnvelope[];
}
/** POST /api/jobs/:job/entries: all are added or none. A first batch makes the job. */
export interface AppendRequest {
  readonly entries: readonly Envelope[];
}
export interface AppendReply {
  readonly accepted: readonly Accepted[];
}
export interface Accepted {
  readonly id: string;
  readonly sequence: number;
  readonly receivedAt: string;
  readonly duplicate: boolean;
}

/** GET /api/jobs/:job/photos: hashes of the pictures that the server holds, in the order in which they came. */
export interface PhotosReply {
  readonly photos: readonly string[];
}
/**
 * PUT /api/jobs/:job/photos/:hash with the bytes of a JPEG, PNG or WebP picture of at most 8 MB, whose SHA-256 is the hash: 201, or 200
 * when it was kept before. GET gives the bytes back. The job must have entries.
 */
export interface PhotoReply {
  readonly photo: string;
  readonly duplicate: boolean;
}

/**
 * GET /api/jobs/:job/live: server-sent events. Each message has the entry's sequence as its id and a `StoredEnvelope`
 * as JSON in its data; a browser's EventSource resumes by itself with Last-Event-ID. `?after=N` says where to begin.
 */
export type LiveMessage = StoredEnvelope;

/** GET /api/jobs/:job/verify */
export interface VerifyReply {
  readonly job: string;
  readonly sound: boolean;
  /** One line for each thing that is wrong; empty when the chain is sound. */
  readonly problems: readonly string[];
  readonly entries: number;
  /** First groups of the hash over the whole log, as printed on the record. */
  readonly headCode: string;
}
