/**
 * The log entry: one fact, written once, never changed. The envelope is all that a store knows; `kind`, `version` and
 * `data` belong to the record. Times, ids and people arrive from the edge, because the core has no clock and no chance.
 */
import type { ValveId } from '../engine/model.js';
import type { FactData, PartKind, Reading } from '../plan/facts.js';
import type { RunningFactData } from '../plan/running/facts.js';
import type { WorkFactData } from '../plan/work/facts.js';
import type { CombinationData } from './combination-data.js';
import type { MeasuringData } from './measuring-data.js';
import type { PhotoData } from './photo-data.js';

export type { PartKind, Reading };

export interface Envelope {
  /** UUIDv7 made on the device; appending the same id twice is one entry. */
  readonly id: string;
  readonly job: string;
  readonly device: string;
  /** Counts the entries of this device in this job from 1, without gaps. */
  readonly counter: number;
  /** Local time with offset, RFC 3339, as the device's clock read it. */
  readonly at: string;
  readonly person: string;
  readonly instrument?: string;
  readonly kind: string;
  readonly version: number;
  /** What the person keyed, untouched, where the entry holds a typed value. */
  readonly raw?: string;
  readonly data: unknown;
  /** Hash of this device's entry before this one in this job; 64 zeros for the first. */
  readonly previous: string;
  /** SHA-256 over the canonical text of all the fields above. */
  readonly hash: string;
}
/** What the store adds when it accepts an entry. */
export interface StoredEnvelope extends Envelope {
  readonly sequence: number;
  readonly receivedAt: string;
}

/**
 * Kind -> data of every entry of version 1; the shapes that plans read too stand in `plan/facts.ts`, those
 * of the whole work in `plan/work/facts.ts`, those of measuring in `measuring-data.ts`, those of the combination in `combination-data.ts`,
 * those of photos in `photo-data.ts`.
 * A new shape gets a new version and a step in `upcast.ts`.
 */
export interface EntryData extends FactData, WorkFactData, MeasuringData, CombinationData, PhotoData, RunningFactData {
  'sheet-adopted': { readonly name: string; readonly text: string; readonly reason: string };
  /** One loose shim in the box, besides those that come out of the engine. */
  'spare-shim': { readonly shim: Reading };
  'shim-measured': { readonly valve: ValveId; readonly lash: Reading; readonly shim: Reading };
  note: { readonly about: string; readonly text: string };
  'struck-out': { readonly entry: string; readonly reason: string };
}
export type EntryKind = keyof EntryData;
export type EntryOf<K extends EntryKind> = StoredEnvelope & {
  readonly kind: K;
  readonly version: 1;
  readonly data: EntryData[K];
};
export type KnownEntry = { [K in EntryKind]: EntryOf<K> }[EntryKind];
