/**
 * The log entry: one fact, written once, never changed. The envelope is all that a store knows; `kind`, `version` and
 * `data` belong to the record. Times, ids and people arrive from the edge, because the core has no clock and no chance.
 */
import type { ValveId } from '../engine/model.js';

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

/** A typed reading: as keyed, and its value in the SI unit named. */
export interface Reading {
  readonly text: string;
  readonly value: number;
  readonly unit: 'm' | 'N.m' | 'rad';
}
export type PartKind = 'lifter' | 'pushrod' | 'rocker';

/** Kind -> data of every entry of version 1. A new shape gets a new version and a step in `upcast.ts`. */
export interface EntryData {
  'sheet-adopted': { readonly name: string; readonly text: string; readonly reason: string };
  'gasket-checked': {
    readonly head: string;
    /** `way-up`, `faces`, `dowels`, `holes-dry` or `opening:<id>`. */
    readonly item: string;
    readonly result: 'good' | 'bad';
    readonly seen: string;
  };
  'fastener-placed': {
    readonly joint: string;
    readonly hole: string;
    /** Counts the fasteners that have been in this hole, from 1. */
    readonly instance: number;
    readonly fastener: string;
    readonly length?: Reading;
    readonly onThread: string;
    readonly underHead: string;
  };
  'act-done': {
    readonly joint: string;
    readonly stage: number;
    readonly hole: string;
    readonly instance: number;
    /** Counts the times that this stage has been gone round, from 1. */
    readonly round: number;
    /** The target that the person saw. */
    readonly target: string;
    readonly seen: 'reached' | 'turned-and-marked' | 'loosened' | 'held' | 'moved' | 'within' | 'short' | 'beyond' | 'renewed' | 'followed' | 'mark-found';
    readonly reading?: Reading;
  };
  'walk-resumed': {
    readonly joint: string;
    readonly stage: number;
    readonly why: 'opened-again' | 'paused' | 'other-person';
    /** Acts touched again on return, as `stage/hole`. */
    readonly verified: readonly string[];
    /** True when a stage by torque value starts again from its first fastener. */
    readonly roundAgain: boolean;
  };
  'fastener-doubted': { readonly joint: string; readonly stage: number; readonly hole: string; readonly instance: number; readonly why: string };
  'joint-opened': { readonly joint: string; readonly reason: string };
  'part-tagged': { readonly part: PartKind; readonly valve: ValveId; readonly end?: string; readonly face?: string; readonly condition: string };
  'part-fitted': {
    readonly part: PartKind;
    readonly to: ValveId;
    /** The place that a used part came from, or `new`. */
    readonly from: ValveId | 'new';
    readonly end?: string;
    readonly face?: string;
    readonly lubricant?: string;
  };
  'valve-set': {
    readonly valve: ValveId;
    readonly method: 'stop' | 'crank-here' | 'neighbour';
    readonly crankDegrees?: number;
    readonly adjustment: 'preload' | 'lash' | 'shim' | 'fixed';
    readonly turns?: number;
    readonly plungerTravel?: Reading;
    readonly lash?: Reading;
    readonly shim?: Reading;
    readonly condition: 'cold' | 'hot';
  };
  'valve-rechecked': { readonly valve: ValveId; readonly result: 'good' | 'bad'; readonly lash?: Reading; readonly seen: string };
  'shim-measured': { readonly valve: ValveId; readonly lash: Reading; readonly shim: Reading };
  note: { readonly about: string; readonly text: string };
  skipped: { readonly what: string; readonly reason: string };
  'struck-out': { readonly entry: string; readonly reason: string };
}
export type EntryKind = keyof EntryData;
export type EntryOf<K extends EntryKind> = StoredEnvelope & { readonly kind: K; readonly version: 1; readonly data: EntryData[K] };
export type KnownEntry = { [K in EntryKind]: EntryOf<K> }[EntryKind];
